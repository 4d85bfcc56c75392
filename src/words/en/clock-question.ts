// The question that ends a doubt about the tablet's clock.
import type { Stamp } from "#events/stamp.ts";
import type { Say } from "#words/say.ts";
import { dayAndMonth, timeOfDay } from "./when.ts";

export const sayClock = (now: Stamp, before: readonly string[] = []): Say => ({
  title: "Day and time",
  lines: [...before, `It is ${dayAndMonth(now)}.`, `The time is ${timeOfDay(now)}.`, "Is that right?"],
});
