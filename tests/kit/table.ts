// A kitchen table for tests: sends intents, folds facts, keeps every row, moves the clock by hand.

import type { DoseCard } from "#events/card.ts";
import type { Happened } from "#events/happened.ts";
import type { Intent } from "#events/intent.ts";
import type { Pen } from "#events/pen.ts";
import type { Person } from "#events/person.ts";
import type { Stamp } from "#events/stamp.ts";
import { type Decision, decide, type NewFact } from "#walk/decide.ts";
import { type Fact, fold } from "#walk/fold.ts";
import { GUARDS, type Guards } from "#walk/guards.ts";
import { frontPerson, offers } from "#walk/offers.ts";
import { emptyHouse, type HouseState, stepOf } from "#walk/state.ts";

/** 3 June 2026, 12:00 in a zone five hours behind UTC. */
export const NOON = Date.UTC(2026, 5, 3, 17, 0, 0);

export interface Placed {
  person: Person;
  card: DoseCard;
  pens: Pen[];
}

export class Table {
  state: HouseState = emptyHouse;
  facts: Fact[] = [];
  now: Stamp = { wall: NOON, mono: 1000, boot: "boot-1", zone: "America/Chicago", offset: -300 };
  private walks = 0;

  constructor(
    people: readonly Placed[],
    private readonly guards: Guards = GUARDS,
  ) {
    const begin: NewFact[] = [
      { person: null, walk: null, event: { type: "household begun", household: { kind: "home", emergencyNumber: "911", country: "US" } } },
    ];
    for (const { person, card, pens } of people) {
      const own = (event: Happened): NewFact => ({ person: person.id, walk: null, event });
      begin.push(own({ type: "person added", person }));
      begin.push(
        own({
          type: "card signed",
          card,
          cardHash: `hash-of-${person.id}`,
          signature: { keeper: "k1", keeperName: "Ines", signedOn: "2026-01-02", typedTwice: true, readBack: true },
        }),
      );
      for (const pen of pens) begin.push(own({ type: "pen added", pen }));
    }
    this.store(begin);
    this.pass(42 * 60 * 60);
    // An entry a few hours ago, so that the log is clear for the whole window.
    this.store([{ person: null, walk: null, event: { type: "clock agreed" } }]);
    this.pass(6 * 60 * 60);
  }

  private store(facts: readonly NewFact[]) {
    for (const f of facts) {
      const fact: Fact = { readable: true, seq: this.state.lastSeq + 1, at: this.now, ...f };
      this.facts.push(fact);
      this.state = fold(this.state, fact);
    }
  }

  /** Moves both clocks. */
  pass(seconds: number) {
    this.now = { ...this.now, wall: this.now.wall + seconds * 1000, mono: this.now.mono + seconds * 1000 };
  }

  try(intent: Intent): Decision {
    this.walks += 1;
    const decision = decide(this.state, intent, this.now, `walk-${this.walks}`, this.guards);
    this.store(decision.facts);
    return decision;
  }

  /** Sends an intent that must be accepted. */
  send(...intents: Intent[]): this {
    for (const intent of intents) {
      const { refusal } = this.try(intent);
      if (refusal)
        throw new Error(
          `${JSON.stringify(intent)} at ${this.step()}: refused ${JSON.stringify(refusal)}; offered ${JSON.stringify(offers(this.state, this.now, this.guards))}`,
        );
    }
    return this;
  }

  /** Gives a number and agrees to the read-back. */
  number(slot: Extract<Intent, { do: "give number" }>["slot"], text: string): this {
    return this.send({ do: "give number", slot, text, via: "touch", helper: null }, { do: "agree number" });
  }

  step(): string {
    const me = frontPerson(this.state);
    return me?.walk ? stepOf(me.walk) : "kitchen";
  }

  types(): string[] {
    return this.facts.flatMap((f) => (f.readable ? [f.event.type] : []));
  }

  /** A new start of the app: monotonic time begins again. */
  restart(afterSeconds = 5) {
    this.pass(afterSeconds);
    this.now = { ...this.now, mono: 10, boot: `boot-${Number(this.now.boot.split("-")[1]) + 1}` };
    this.store([{ person: null, walk: null, event: { type: "tablet started" } }]);
  }
}
