// When the tablet reminds, proved over every move in every state that has a key of its own; and the faults that this must meet.
import { describe, expect, it } from "vitest";
import { explore } from "../../kit/explore/explore.ts";
import { REMINDER_EXPLORATIONS } from "../../kit/explore/households-reminders.ts";
import { PLANTED_REMINDERS } from "../../kit/explore/planted-reminders.ts";
import { prove } from "../../kit/explore/prove.ts";

prove(REMINDER_EXPLORATIONS);

describe("a fault planted in the engine", () => {
  it.each(PLANTED_REMINDERS.map((p) => [p.fault, p] as const))("is caught: %s", (_fault, { promise, exploration, engine }) => {
    const x = REMINDER_EXPLORATIONS.find((e) => e.name === exploration);
    if (!x) throw new Error(`no exploration is called ${exploration}`);
    expect(explore(x, engine, { stopAt: promise }).violations.map((v) => v.promise)).toContain(promise);
  });
});
