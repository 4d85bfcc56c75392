// One turn judged by every promise. What is stored is frozen and the network throws, so that touching either is seen as the promise it breaks.

import { illPromise } from "./promises/ill.ts";
import { reminderPromise } from "./promises/reminders.ts";
import type { PromiseCheck } from "./promises/shape.ts";
import { watchPromise } from "./promises/watch.ts";
import { PROMISES } from "./promises.ts";
import type { Engine, Move, Turn, World } from "./world.ts";
import { go } from "./world.ts";

/** Numbers above 14 are promises that design section 5 has no number for. */
export const JUDGED: readonly PromiseCheck[] = [...PROMISES, reminderPromise, illPromise, watchPromise];

export interface Violation {
  /** Number of the promise; 0: the walk broke down, which is a defect and no promise. */
  promise: number;
  what: string;
}

const NETWORK = "the network was called";

/** Everything a page can call out with, made to throw for as long as `work` runs. */
export function withoutNetwork<T>(work: () => T): T {
  const kept = globalThis.fetch;
  globalThis.fetch = () => {
    throw new Error(NETWORK);
  };
  try {
    return work();
  } finally {
    globalThis.fetch = kept;
  }
}

/** Freezes what is new; what was frozen before is not walked through again. */
export function freeze<T>(value: T): T {
  if (typeof value === "object" && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const inner of Object.values(value)) freeze(inner);
  }
  return value;
}

export type Judged = { turn: Turn; violations: Violation[] } | { turn: null; violations: Violation[] };

export function judge(before: World, move: Move, engine: Engine): Judged {
  try {
    freeze(before.house);
    const turn = go(before, move, engine);
    freeze(turn.after.house);
    freeze(turn.decision);
    const violations = JUDGED.flatMap((p): Violation[] => {
      const what = p.broken(turn);
      return what === null ? [] : [{ promise: p.number, what }];
    });
    const notOffered = turn.decision.refusal?.no === "not offered here" && (move.kind === "pass" || move.kind === "set clock");
    return { turn, violations: notOffered ? [...violations, { promise: 0, what: "time may not pass" }] : violations };
  } catch (error) {
    const text = error instanceof Error ? error.message : String(error);
    if (text === NETWORK) return { turn: null, violations: [{ promise: 12, what: text }] };
    const changed = error instanceof TypeError && /read only|not extensible|Cannot (delete|assign|add|define)/i.test(text);
    return { turn: null, violations: [{ promise: changed ? 9 : 0, what: text }] };
  }
}
