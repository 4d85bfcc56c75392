import { describe, expect, it } from "vitest";
import { FIXED, PAD_BUTTON } from "#words/en/fixed.ts";
import { PRACTICE } from "#words/en/practice.ts";
import { AT_ONE, signed } from "./kit/background.ts";
import { bench } from "./kit/bench.ts";
import { finger } from "./kit/hands.ts";
import { type Past, remember } from "./kit/more-log.ts";
import { screenFaults } from "./kit/screen-faults.ts";

const open = bench();

/** Marta's lunch, button by button. A number stands for seconds that pass. */
const LUNCH: readonly (string | number)[] = [
  ...["Already washed", PAD_BUTTON.reading, "1", "3", "2", FIXED.ok, "Yes, 132", "No", "Yes", "Go on"],
  ...["One rubber band", "Yes, it is", "Both caps off", "Yes, a stream", PAD_BUTTON.dial, "4", FIXED.ok, "Yes, 4"],
  ...["Use this place", "No wipe", "It is down", 10.5, "It is out", "0", "Put away", "I am eating", "Done"],
];

/** The same of a card that has a long-acting dose and no meal. */
const BY_THE_CLOCK: readonly (string | number)[] = [
  ...["Already washed", "No reading now", "Go on", "Smooth, no band", "Yes, that name", "Yes, it is", "Both caps off", "Yes, a stream"],
  ...[
    PAD_BUTTON.dial,
    "1",
    "4",
    FIXED.ok,
    "Yes, 14",
    "Use this place",
    "No wipe",
    "It is down",
    10.5,
    "It is out",
    "0",
    "Put away",
    "Done",
  ],
];
/** After these stands what practice adds to the words of the walk. */
const LOOKED_AT: readonly (string | number)[] = ["No reading now", "Smooth, no band"];
const NO_MEAL = { meals: { breakfast: null, lunch: null, dinner: null, snack: null } };

describe("practice in the browser", () => {
  const walks: readonly [string, readonly (string | number)[], readonly Past[]][] = [
    ["a meal", LUNCH, []],
    ["a background dose of the person's own card, hours before it is due", BY_THE_CLOCK, [signed([{ ...AT_ONE, at: "21:30" }], NO_MEAL)]],
  ];
  it.each(walks)("is walked to its end under its strip, and not one row is written: %s", async (_what, buttons, past) => {
    const t = await open({ only: "marta" });
    if (past.length > 0) await remember(t, past);
    await t.readOn();
    const before = JSON.stringify(t.rows);
    const { press } = finger(t);
    const go = (name: string) => press({ shown: name, said: [] });
    await go(FIXED.help);
    await go(FIXED.practice);
    await go(PRACTICE.start);
    const found: string[] = [];
    for (const what of buttons) {
      await t.page.locator(".screen-mark", { hasText: PRACTICE.banner }).waitFor({ timeout: 8000 });
      if (typeof what === "number") await t.pass(what);
      else await go(what);
      if (LOOKED_AT.includes(what)) found.push(...(await screenFaults(t)));
    }
    await t.page.getByText(PRACTICE.over[0]).waitFor({ timeout: 8000 });
    expect(await t.page.locator(".screen-mark").count()).toBe(0);
    await go(FIXED.ok);
    await t.readOn();
    expect(JSON.stringify(t.rows)).toBe(before);
    expect(t.state.front).toBeNull();
    expect(found).toEqual([]);
    expect(t.complaints).toEqual([]);
  });
});
