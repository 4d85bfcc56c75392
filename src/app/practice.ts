// Practice: a walk on a log in memory, over the house as it stands. The real house is looked after meanwhile, and wins whenever it calls.
import { signal } from "@preact/signals";
import { demoPen, henkCard, martaCard } from "#demo-data/household.ts";
import type { Intent } from "#events/intent.ts";
import { MINUTE } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { memoryLog } from "#log/memory-log.ts";
import { addDays, localParts } from "#rules/time/local.ts";
import { frontPerson } from "#walk/offers.ts";
import { type MadeUp, mayPractise, practiceStart } from "#walk/practice.ts";
import { FOLD_VERSION, type HouseState } from "#walk/state.ts";
import { PRACTICE, sayPractice } from "#words/en/practice.ts";
import type { Say } from "#words/say.ts";
import { Desk, type DeskParts } from "./desk.ts";
import type { Sent } from "./house.ts";
import { Recorder } from "./recorder.ts";
import type { ChromeAct } from "./spoken-offers.ts";
import { APP_VERSION } from "./version.ts";

/** Our choice: then whoever began it has gone, and the kitchen screen is wanted back. */
const ASLEEP_MS = 30 * MINUTE;

/** left: the walk ended or was stopped. called: something of the house is due. wrong: somebody says that something is wrong. */
type Why = "left" | "asleep" | "low" | "called" | "wrong";

export interface PracticeParts extends Omit<DeskParts, "recorder"> {
  real: Desk;
  /** The tablet's tones: all of them for the house, and for practice the short one at the end of a wait. */
  ring: DeskParts["ring"];
}

const NOTHING: Sent = { events: [], refusal: null, notStored: null };

/** A desk whose words are marked, and at which nothing that is wrong is ever practised. */
class PracticeDesk extends Desk {
  constructor(
    parts: DeskParts,
    private readonly madeUp: boolean,
    private readonly wrong: () => void,
  ) {
    super(parts);
  }

  override say(): Say {
    return sayPractice(super.say(), this.state.value, this.madeUp);
  }

  override async send(intent: Intent): Promise<Sent> {
    if (intent.do !== "report" && intent.do !== "open low") return super.send(intent);
    this.wrong();
    return NOTHING;
  }

  override chrome(act: ChromeAct): void {
    if (act === "wrong") this.wrong();
    else super.chrome(act);
  }
}

/** An invented card and pen in the unit that the person measures in. */
function invented(unit: "mg/dL" | "mmol/L", now: Stamp): MadeUp {
  const today = localParts(now.wall, now.offset).date;
  const days = { validFrom: today, reviewBy: addDays(today, 90), validUntil: addDays(today, 180) };
  return unit === "mg/dL"
    ? { card: martaCard(days), pens: [demoPen("marta-meal", 1, today, addDays(today, 90))] }
    : { card: henkCard(days), pens: [demoPen("henk-meal", 1, today, addDays(today, 90))] };
}

export class Practice {
  /** What stands on the glass while it lasts; null: the real house does. */
  readonly desk = signal<Desk | null>(null);
  private stopWatching: () => void = () => undefined;

  constructor(private readonly parts: PracticeParts) {}

  /** Does nothing where a walk is open or a bell waits. */
  async begin(person: string): Promise<void> {
    const { real } = this.parts;
    const house = real.state.value;
    const me = house.people[person];
    if (this.desk.value || !me || !mayPractise(house)) return;
    const now = this.parts.now();
    const start = practiceStart(house, person, now, invented(me.person.glucoseUnit, now));
    if (!start) return;
    real.rest(true);
    const desk = await this.deskOn(start.house, start.madeUp);
    await desk.send({ do: "open meal", person, meal: start.meal });
    this.desk.value = desk;
    desk.sayLabel(PRACTICE.banner);
    this.stopWatching = desk.state.subscribe((practised) => this.watch(practised));
    this.look();
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

  private async deskOn(house: HouseState, madeUp: boolean): Promise<Desk> {
    const log = memoryLog();
    await log.saveCheckpoint({ seq: 0, foldVersion: FOLD_VERSION, state: house });
    const recorder = await Recorder.open({ log, newId: this.parts.newId, appVersion: APP_VERSION, wordsVersion: "practice" });
    // No bell and no call sounds, and so nothing is said after one.
    const ring: DeskParts["ring"] = (level) => (level === "note" ? this.parts.ring(level) : new Promise(() => undefined));
    return new PracticeDesk({ ...this.parts, recorder, ring, prefs: this.parts.real.prefs.value }, madeUp, () => this.end("wrong"));
  }
}
