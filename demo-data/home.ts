// The simulated kitchen: the real decide and fold, a tablet with two clocks that agree, and every fact kept with its stamp.
import type { Happened } from "#events/happened.ts";
import type { Intent } from "#events/intent.ts";
import type { Stamp } from "#events/stamp.ts";
import { decide, type NewFact } from "#walk/decide.ts";
import { fold } from "#walk/fold.ts";
import { emptyHouse, type HouseState, type PersonState } from "#walk/state.ts";
import type { Place } from "./days.ts";

export interface TimedFact extends NewFact {
  at: Stamp;
}

/** Monotonic milliseconds at which the first event of a start of the app is written. */
const FIRST_MONO = 900;

/** Intents that may begin a walk. */
const BEGINS = /^(open |answer meal$)/;

export class Home {
  state: HouseState = emptyHouse;
  readonly facts: TimedFact[] = [];
  private boot = 1;
  private booted: number;

  constructor(
    private readonly place: Place,
    /** The instant it is in this kitchen. */
    public wall: number,
    private readonly newWalkId: (wall: number) => string,
  ) {
    this.booted = wall;
  }

  stamp(): Stamp {
    return {
      wall: this.wall,
      mono: FIRST_MONO + this.wall - this.booted,
      boot: `demo-start-${this.boot}`,
      zone: this.place.now.zone,
      offset: this.place.offsetAt(this.wall),
    };
  }

  /** Both clocks go on. */
  pass(seconds: number): void {
    this.wall += Math.round(seconds * 1000);
  }

  passTo(wall: number): void {
    this.wall = Math.max(this.wall, Math.round(wall));
  }

  /** The app starts again: monotonic time begins anew. */
  startAgain(): void {
    this.boot += 1;
    this.booted = this.wall;
    this.keep([{ person: null, walk: null, event: { type: "tablet started" } }]);
  }

  person(id: string): PersonState {
    const found = this.state.people[id];
    if (!found) throw new Error(`Nobody is called ${id}`);
    return found;
  }

  /** What a keeper or the tablet writes down, outside any walk. */
  note(person: string | null, ...events: Happened[]): void {
    this.keep(events.map((event) => ({ person, walk: null, event })));
  }

  /** An intent that the walk accepts. Anything else is a defect of this script. */
  send(...intents: Intent[]): void {
    for (const intent of intents) {
      const { facts, refusal } = decide(this.state, intent, this.stamp(), BEGINS.test(intent.do) ? this.newWalkId(this.wall) : "");
      if (refusal) throw new Error(`The demo script was refused: ${JSON.stringify({ intent, refusal, at: this.stamp() })}`);
      this.keep(facts);
    }
  }

  /** A slip: the walk has to refuse it. */
  slip(intent: Intent): void {
    const { facts, refusal } = decide(this.state, intent, this.stamp(), "");
    if (!refusal || refusal.no === "not offered here") throw new Error(`The demo's slip was not caught: ${JSON.stringify(intent)}`);
    this.keep(facts);
  }

  private keep(facts: readonly NewFact[]): void {
    const at = this.stamp();
    for (const fact of facts) {
      this.state = fold(this.state, { readable: true, seq: this.state.lastSeq + 1, at, ...fact });
      this.facts.push({ ...fact, at });
    }
  }
}
