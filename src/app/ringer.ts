// When the meal bell sounds. Computed afresh each second from stored times; only "when did I last ring" is remembered here.
import type { Stamp } from "#events/stamp.ts";
import { type BellLevel, bellNow, CALL_EVERY_SECONDS } from "#walk/bell.ts";
import { callers, frontPerson } from "#walk/offers.ts";
import { type HouseState, stepOf } from "#walk/state.ts";

export interface Ring {
  person: string;
  level: Exclude<BellLevel, "quiet">;
}

export class Ringer {
  private readonly rang = new Map<string, { mono: number; level: BellLevel }>();

  /**
   * Whom to ring for now. Another person's bell waits for the edge of a step: `edge` says that a new screen has just come up.
   * A new level rings at once.
   */
  due(house: HouseState, now: Stamp, edge: boolean): Ring[] {
    const front = frontPerson(house);
    const sure = house.doubt === null;
    const others = callers(house, now);
    return Object.values(house.people).flatMap((p): Ring[] => {
      const id = p.person.id;
      if (!p.bell) {
        this.rang.delete(id);
        return [];
      }
      const { level } = bellNow(p.bell, now, sure);
      if (level === "quiet") return [];
      // The bell rings for the person whose walk is on the screen from the step of eating on, not over their own needle.
      if (front === p && p.walk && !["eat", "done"].includes(stepOf(p.walk))) return [];
      if (front && front !== p && !(edge && others.includes(p))) return [];
      const last = this.rang.get(id);
      const every = CALL_EVERY_SECONDS[level] ?? Number.POSITIVE_INFINITY;
      if (last && last.level === level && now.mono - last.mono < every * 1000) return [];
      this.rang.set(id, { mono: now.mono, level });
      return [{ person: id, level }];
    });
  }
}
