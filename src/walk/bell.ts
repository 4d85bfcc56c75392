// The meal bell: computed from stored times, so that nothing can lose it (promise 7).
import { MINUTE } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { oldestAge } from "#rules/time/elapsed.ts";
import type { Bell } from "./doses.ts";
import type { PersonState } from "./state.ts";

export type BellLevel = "quiet" | "calling" | "insistent" | "loud";

export interface BellNow {
  level: BellLevel;
  /** Whole minutes since the injection; null while the clocks cannot say. */
  minutes: number | null;
  /** Milliseconds until the first call; 0 when it calls. */
  untilCallMs: number;
  /** Whole minutes past the latest minute; -1 before. */
  pastLatest: number;
}

/** Quiet until the earliest minute, then calling, insistent in the second half, loud from the latest minute on. Doubtful time: due. */
export function bellNow(bell: Bell, now: Stamp, sure: boolean): BellNow {
  // At its worst: after a sleep of the tablet the bell may come early, never late.
  const ms = sure ? oldestAge(bell.from, now, sure) : null;
  if (ms === null) return { level: "loud", minutes: null, untilCallMs: 0, pastLatest: 0 };
  const minutes = Math.floor(ms / MINUTE);
  const pastLatest = ms >= bell.latestMs ? Math.floor((ms - bell.latestMs) / MINUTE) : -1;
  if (pastLatest >= 0) return { level: "loud", minutes, untilCallMs: 0, pastLatest };
  if (ms < bell.earliestMs) return { level: "quiet", minutes, untilCallMs: bell.earliestMs - ms, pastLatest };
  const half = bell.earliestMs + (bell.latestMs - bell.earliestMs) / 2;
  return { level: ms < half ? "calling" : "insistent", minutes, untilCallMs: 0, pastLatest };
}

/** Did the pen give nothing of the dose that the bell is for? Then nobody can say that insulin is working. */
export const bellOfNothing = ({ bell, doses }: Pick<PersonState, "bell" | "doses">): boolean =>
  bell !== null && doses.some(({ walk, units }) => walk === bell.walk && units === 0);

/** Minutes past the latest at which the silence is written down. */
export const SILENCE_WRITTEN_AT = [0, 5, 15, 30, 60] as const;

/** The mark that is due to be written now and has not been; null when none is. */
export function silenceDue(bell: Bell, now: Stamp, sure: boolean): number | null {
  const { pastLatest } = bellNow(bell, now, sure);
  const due = SILENCE_WRITTEN_AT.filter((mark) => mark <= pastLatest).at(-1);
  return due !== undefined && due > bell.unansweredMinutes ? due : null;
}
