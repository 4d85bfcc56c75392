// Rings what is due, and says what for once the tone has ended.
import type { Stamp } from "#events/stamp.ts";
import type { Turns } from "#speech/turns.ts";
import { alertOf } from "#walk/alerts.ts";
import { contextOf } from "#walk/context.ts";
import { GUARDS } from "#walk/guards.ts";
import { standingReminder } from "#walk/reminders.ts";
import type { HouseState } from "#walk/state.ts";
import { sayIllCall, sayLowCall } from "#words/en/kitchen.ts";
import { sayReminder } from "#words/en/reminders.ts";
import type { Held } from "./held.ts";
import { Ringer } from "./ringer.ts";
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
    for (const { person, level } of this.ringer.due(house, now, edge)) this.ring(house, now, person, level);
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

  private ring(house: HouseState, now: Stamp, person: string, level: "calling" | "insistent" | "loud"): void {
    const me = house.people[person];
    if (!me?.walk) return;
    const text = me.walk.low
      ? sayLowCall(house, me, now)
      : me.walk.ill?.callRaised
        ? sayIllCall(house, me, now)
        : this.parts.walkPart.here.value?.sayEat(contextOf(house, me, me.walk, now, GUARDS)).lines[0];
    const lang = me.person.language;
    void this.parts.ring(level).then(() => (text ? this.turns.interrupt({ text, lang }) : false));
  }
}
