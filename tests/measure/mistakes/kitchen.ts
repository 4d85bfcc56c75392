// One household on one day: the real loop, walk and log, and beside them what is physically true, which no tablet knows.
import { House } from "#app/house.ts";
import { Recorder } from "#app/recorder.ts";
import type { DoseCard } from "#events/card.ts";
import type { Happened } from "#events/happened.ts";
import type { Intent } from "#events/intent.ts";
import type { Pen } from "#events/pen.ts";
import { units } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { memoryLog } from "#log/memory-log.ts";
import { bellNow } from "#walk/bell.ts";
import type { NewFact } from "#walk/decide.ts";
import { GUARDS } from "#walk/guards.ts";
import { frontPerson, offers } from "#walk/offers.ts";
import { type PersonState, stepOf, type Walk } from "#walk/state.ts";
import { sayWalk } from "#words/en/steps.ts";
import { bandsCard, bram, bramPen, odile, odileNight, odilePen } from "../../kit/people.ts";
import { NOON } from "../../kit/table.ts";
import type { Perception } from "./chances.ts";

const correction = { target: { low: 120, high: 120 }, perUnit: 50, mode: "linear", mayReduce: false } as const;

/** A table for breakfast, a ratio for lunch and dinner, a correction alone between meals. */
export const CARD: DoseCard = {
  ...bandsCard,
  bedtime: { from: "23:00", until: "05:00", correction: true },
  meals: {
    breakfast: bandsCard.meals.breakfast ?? null,
    lunch: { kind: "ratio", gramsPerUnit: 10, correction, roundParts: "none" },
    dinner: { kind: "ratio", gramsPerUnit: 15, correction, roundParts: "none" },
    snack: { kind: "correction only", correction, roundParts: "none" },
  },
  largestDose: units(25),
};
/** Bram goes by the same card for his lunch. */
const BRAM_CARD: DoseCard = { ...CARD, person: "bram" };

export interface InBody {
  units: number;
  pen: string;
  person: string;
  at: Stamp;
}

export interface Household {
  card?: DoseCard;
  pens?: readonly Pen[];
}

const signed = (person: string, card: DoseCard): NewFact => ({
  person,
  walk: null,
  event: {
    type: "card signed",
    card,
    cardHash: `card of ${person}`,
    signature: { keeper: "k1", keeperName: "Ines", signedOn: "2026-01-02", typedTwice: true, readBack: true },
  },
});

export class Kitchen {
  now: Stamp = { wall: NOON - 48 * 3_600_000, mono: 1000, boot: "boot-1", zone: "America/Chicago", offset: -300 };
  /** Everything that was stored, in order. */
  readonly events: Happened[] = [];
  readonly body: InBody[] = [];
  private ids = 0;
  private recorder: Recorder;
  private house: House;

  private constructor(
    readonly chance: () => number,
    readonly who: Perception,
    recorder: Recorder,
  ) {
    this.recorder = recorder;
    this.house = this.houseOf(recorder);
  }

  /** Set up two days ago, looked at each morning, so that the log can vouch for the hours before. */
  static async open(
    chance: () => number,
    who: Perception,
    { card = CARD, pens = [odilePen, odileNight] }: Household = {},
  ): Promise<Kitchen> {
    let first = 0;
    const recorder = await Recorder.open({
      log: memoryLog(),
      newId: () => `trial-row-${first++}`,
      appVersion: "trial",
      wordsVersion: "en",
    });
    const k = new Kitchen(chance, who, recorder);
    await k.keep([
      { person: null, walk: null, event: { type: "household begun", household: { kind: "home", emergencyNumber: "911", country: "US" } } },
      { person: "odile", walk: null, event: { type: "person added", person: odile } },
      signed("odile", card),
      ...pens.map((pen): NewFact => ({ person: "odile", walk: null, event: { type: "pen added", pen } })),
      {
        person: "bram",
        walk: null,
        event: { type: "person added", person: { ...bram, language: "en-US", glucoseUnit: "mg/dL", usualBand: odile.usualBand } },
      },
      signed("bram", BRAM_CARD),
      { person: "bram", walk: null, event: { type: "pen added", pen: { ...bramPen, unitsPerClick: "1" } } },
    ]);
    k.move(30 * 3600);
    await k.keep([{ person: null, walk: null, event: { type: "clock agreed" } }]);
    k.move(18 * 3600);
    return k;
  }

  private houseOf(recorder: Recorder): House {
    return new House({
      recorder,
      now: () => this.now,
      newId: () => `trial-id-${this.ids++}`,
      onChange: ({ events }) => this.events.push(...events),
    });
  }

  /** True with this probability. */
  may(share: number): boolean {
    return this.chance() < share;
  }

  private move(seconds: number): void {
    this.now = { ...this.now, wall: this.now.wall + seconds * 1000, mono: this.now.mono + seconds * 1000 };
  }

  /** Time passes, and the tablet sees it pass each half minute, as it does each second. */
  async pass(seconds: number): Promise<void> {
    for (let left = seconds; left > 0; left -= 30) {
      this.move(Math.min(30, left));
      if (frontPerson(this.state) || Object.values(this.state.people).some((p) => p.bell)) await this.send({ do: "pass time" });
    }
  }

  /** Only the wall clock: somebody set it, or a time signal was wrong. */
  jump(seconds: number): void {
    this.now = { ...this.now, wall: this.now.wall + seconds * 1000 };
  }

  /** The power goes and comes again: monotonic time begins anew. */
  async restart(afterSeconds: number): Promise<void> {
    this.move(afterSeconds);
    this.now = { ...this.now, mono: 10, boot: `${this.now.boot}+` };
    await this.keep([{ person: null, walk: null, event: { type: "tablet started" } }]);
  }

  keep(facts: readonly NewFact[]) {
    return this.house.keep(facts);
  }

  /** An answer; false where it was refused. */
  async send(intent: Intent): Promise<boolean> {
    const sent = await this.house.send(intent);
    if (sent.notStored !== null) throw new Error(sent.notStored);
    return sent.refusal === null;
  }

  get state() {
    return this.recorder.state;
  }

  me(id = "odile"): PersonState {
    const found = this.state.people[id];
    if (!found) throw new Error(`nobody is called ${id}`);
    return found;
  }

  walk(): Walk | null {
    return frontPerson(this.state)?.walk ?? null;
  }

  step(): string {
    const walk = this.walk();
    return walk ? stepOf(walk) : "kitchen";
  }

  offered(intent: Intent["do"]): boolean {
    return offers(this.state, this.now).some((o) =>
      o.offer === "press" ? o.intent.do === intent : o.offer === "number" && intent === "give number",
    );
  }

  /** What the tablet says and shows now. */
  said(): string {
    return this.walk() ? (sayWalk(this.state, this.now, GUARDS)?.lines ?? []).join(" ") : "";
  }

  /** How often something of this kind was stored. */
  seen(type: Happened["type"], what?: string): number {
    return this.events.filter((e) => e.type === type && (what === undefined || ("what" in e && e.what === what))).length;
  }

  /** The person is elsewhere in the house: each call of the bell or of a low is heard or not, until one is, or the minutes are over. */
  async hearsCall(id: string, mostMinutes: number): Promise<boolean> {
    for (let minute = 0; minute < mostMinutes; minute++) {
      await this.pass(60);
      const { bell, walk } = this.me(id);
      const rings = bell !== null && bellNow(bell, this.now, this.state.doubt === null).level !== "quiet";
      const low = walk?.low != null && (walk.low.callRaised || walk.wait === null || this.now.mono - walk.wait.began.mono >= walk.wait.ms);
      if ((rings || low) && this.may(this.who.hearsBell)) return true;
    }
    return false;
  }
}
