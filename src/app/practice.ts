// Practice: a walk on a log in memory, over the house as it stands. The real house is looked after meanwhile, and wins whenever it calls.
import { signal } from "@preact/signals";
import { MINUTE } from "#events/quantity.ts";
import { mayPractise } from "#walk/may-practise.ts";
import { frontPerson } from "#walk/offers.ts";
import type { HouseState } from "#walk/state.ts";
import { PRACTICE } from "#words/en/practice.ts";
import type { Desk, DeskParts } from "./desk.ts";

/** Our choice: then whoever began it has gone, and the kitchen screen is wanted back. */
const ASLEEP_MS = 30 * MINUTE;

/** left: the walk ended or was stopped. called: something of the house is due. wrong: somebody says that something is wrong. */
type Why = "left" | "asleep" | "low" | "called" | "wrong";

export interface PracticeParts extends Omit<DeskParts, "recorder"> {
  real: Desk;
  /** The tablet's tones: all of them for the house, and for practice the short one at the end of a wait. */
  ring: DeskParts["ring"];
}

export class Practice {
  /** What stands on the glass while it lasts; null: the real house does. */
  readonly desk = signal<Desk | null>(null);
  /** Between the press and the first question; false again as soon as the house calls. */
  private beginning = false;
  private stopWatching: () => void = () => undefined;

  constructor(private readonly parts: PracticeParts) {}

  /** Does nothing where a walk is open or a bell waits. */
  async begin(person: string): Promise<void> {
    const { real, walkPart } = this.parts;
    if (this.beginning || this.desk.value || !mayPractise(real.state.value)) return;
    this.beginning = true;
    const part = await walkPart.need();
    real.rest(true);
    const desk = await part.practiceDesk({ ...this.parts, prefs: real.prefs.value }, real.state.value, person, () => this.end("wrong"));
    // The house may have called in this moment.
    if (desk === null || !this.beginning || !mayPractise(real.state.value)) {
      desk?.end();
      this.beginning = false;
      return real.rest(false);
    }
    this.beginning = false;
    this.desk.value = desk;
    desk.sayLabel(PRACTICE.banner);
    this.stopWatching = desk.state.subscribe((practised) => this.watch(practised));
  }

  /** Back to the real house. Nothing is left of what was practised. */
  end(why: Why): void {
    const desk = this.desk.value;
    if (!desk) return;
    this.desk.value = null;
    this.stopWatching();
    desk.end();
    const { real } = this.parts;
    const lines = why === "low" ? PRACTICE.low : why === "asleep" ? PRACTICE.asleep : why === "left" ? PRACTICE.over : null;
    if (lines) real.noted.value = { title: PRACTICE.title, lines, mono: real.now.value.mono };
    real.rest(false, desk.prefs.value);
    if (why === "wrong") real.open("wrong");
  }

  /** For the house: whatever it calls for comes before practice. */
  ring: DeskParts["ring"] = (level) => {
    this.beginning = false;
    this.end("called");
    return this.parts.ring(level);
  };

  /** Once a second, after the real house was looked after. */
  tick(): void {
    this.desk.value?.tick();
    this.look();
  }

  private look(): void {
    const walk = this.desk.value && frontPerson(this.desk.value.state.value)?.walk;
    if (walk && this.parts.now().mono - walk.touchedAt.mono >= ASLEEP_MS) this.end("asleep");
  }

  private watch(house: HouseState): void {
    const walk = frontPerson(house)?.walk;
    if (!walk) this.end("left");
    // A number so low may be a real one: the real house asks, and there the sugar and the calls are real.
    else if (walk.low) this.end(walk.low.because === "reading" || walk.low.because === "meter word" ? "low" : "left");
  }
}
