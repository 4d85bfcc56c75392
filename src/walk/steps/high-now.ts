// Is the newest reading of this walk high? Then no screen may call it good, whatever it was taken for.
import { highBy } from "#rules/glucose/high.ts";
import type { Ctx } from "#walk/context.ts";

export const isHighNow = ({ card, walk }: Ctx): boolean =>
  walk.reading?.word === "HI" || highBy(card, walk.reading?.glucose ?? null) !== null;
