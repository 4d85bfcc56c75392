// Rings what is due, and says what for once the tone has ended.
import type { Stamp } from "#events/stamp.ts";
import type { Turns } from "#speech/turns.ts";
import { type AlertKind, alertOf } from "#walk/alerts.ts";
import { contextOf } from "#walk/context.ts";
import { GUARDS } from "#walk/guards.ts";
import { standingReminder } from "#walk/reminders.ts";
import type { HouseState, PersonState } from "#walk/state.ts";
import { sayInsulinWatchCall } from "#words/en/insulin-watch.ts";
import { sayIllCall, sayLowCall } from "#words/en/kitchen.ts";
import { sayReminder } from "#words/en/reminders.ts";
import type { Held } from "./held.ts";
import { type Ring, Ringer } from "./ringer.ts";
import type { WalkPart } from "./walk-part.ts";

export interface BellParts {
  /** Rings a tone; resolves when it has ended. */
  ring(level: "calling" | "insistent" | "loud" | "note"): Promise<void>;
  walkPart: Held<WalkPart>;
}

export class Bells {
  private readonly ringer = new Ringer();

  constructor(
    private readonly parts: BellParts,
    private readonly turns: Turns,
  ) {}

  /** edge: another screen stands than a moment ago. */
  look(house: HouseState, now: Stamp, edge: boolean): void {
    for (const ring of this.ringer.due(house, now, edge)) this.ring(house, now, ring);
    if (this.ringer.waitEnded(house, now)) this.note();
  }

  note(): void {
    void this.parts.ring("note");
  }

  /** Once, when the call was stored: a tone, and then its words, which stand on the kitchen screen too. */
  remind(house: HouseState, now: Stamp): void {
    const called = Object.values(house.people).flatMap((me) => {
      const standing = standingReminder(me, now);
      return standing ? [{ me, standing }] : [];
    });
    const newest = called.toSorted((a, b) => b.standing.at.wall - a.standing.at.wall)[0];
    if (!newest || alertOf("reminder").tone === "note") return;
    const lang = newest.me.person.language;
    void this.parts.ring(alertOf("reminder").tone).then(() => {
      for (const text of sayReminder(newest.me, newest.standing.reminder)) this.turns.interrupt({ text, lang });
    });
  }

  private ring(house: HouseState, now: Stamp, { person, kind, level }: Ring): void {
    const me = house.people[person];
    if (!me) return;
    const text = this.wordsOf(house, me, now, kind);
    const lang = me.person.language;
    void this.parts.ring(level).then(() => (text ? this.turns.interrupt({ text, lang }) : false));
  }

  private wordsOf(house: HouseState, me: PersonState, now: Stamp, kind: AlertKind): string | undefined {
    switch (kind) {
      case "low, call raised":
        return sayLowCall(house, me, now);
      case "danger sign, call raised":
        return sayIllCall(house, me, now);
      case "insulin watch":
      case "insulin watch, no answer":
        return sayInsulinWatchCall(house, me, now);
      default:
        return me.walk ? this.parts.walkPart.here.value?.sayEat(contextOf(house, me, me.walk, now, GUARDS)).lines[0] : undefined;
    }
  }
}
