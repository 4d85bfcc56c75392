// A needle that was fitted and tested long ago, on a pen that lay there: pen and skin are made ready again before it goes in.
import type { Happened } from "#events/happened.ts";
import { MINUTE } from "#events/quantity.ts";
import { oldestAge } from "#rules/time/elapsed.ts";
import type { Ctx } from "#walk/context.ts";
import { type Step, stepOf } from "#walk/state.ts";

/** Our choice, no source: a needle is for one injection, and the stream was seen just before it. */
const NEEDLE_MS = 30 * MINUTE;

const WITH_THE_PEN: readonly Step[] = ["pen", "dial", "place", "skin", "inject"];

/** At its worst: not known how long ago counts as too long. Once the needle step was opened its own question comes first. */
export function oldNeedle(c: Ctx): Happened[] {
  const { fitted } = c.walk.penCheck;
  if (fitted === null || c.walk.injectOpened || !WITH_THE_PEN.includes(stepOf(c.walk))) return [];
  const ms = oldestAge(fitted, c.now, c.sure);
  return ms === null || ms > NEEDLE_MS ? [{ type: "pen check grew old" }] : [];
}
