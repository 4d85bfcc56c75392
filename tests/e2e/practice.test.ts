import { describe, expect, it } from "vitest";
import { FIXED, PAD_BUTTON } from "#words/en/fixed.ts";
import { PRACTICE } from "#words/en/practice.ts";
import { bench } from "./kit/bench.ts";
import { finger } from "./kit/hands.ts";

const open = bench();

/** Marta's lunch, button by button. A number stands for seconds that pass. */
const LUNCH: readonly (string | number)[] = [
  ...["Already washed", PAD_BUTTON.reading, "1", "3", "2", FIXED.ok, "Yes, 132", "No", "Yes", "Go on"],
  ...["One rubber band", "Yes, it is", "Both caps off", "Yes, a stream", PAD_BUTTON.dial, "4", FIXED.ok, "Yes, 4"],
  ...["Use this place", "No wipe", "It is down", 10.5, "It is out", "0", "Put away", "I am eating", "Done"],
];

describe("practice in the browser", () => {
  it("is walked to its end under its strip, and not one row is written", async () => {
    const t = await open({ only: "marta" });
    await t.readOn();
    const before = JSON.stringify(t.rows);
    const { press } = finger(t);
    const go = (name: string) => press({ shown: name, said: [] });
    await go(FIXED.help);
    await go(FIXED.practice);
    await go(PRACTICE.start);
    for (const what of LUNCH) {
      await t.page.locator(".screen-mark", { hasText: PRACTICE.banner }).waitFor({ timeout: 8000 });
      if (typeof what === "number") await t.pass(what);
      else await go(what);
    }
    await t.page.getByText(PRACTICE.over[0]).waitFor({ timeout: 8000 });
    expect(await t.page.locator(".screen-mark").count()).toBe(0);
    await go(FIXED.ok);
    await t.readOn();
    expect(JSON.stringify(t.rows)).toBe(before);
    expect(t.state.front).toBeNull();
    expect(t.complaints).toEqual([]);
  });
});
