import { describe, expect, it } from "vitest";
import { verifyChain } from "#log/chain.ts";
import { SECOND_WINDOW } from "#words/en/first.ts";
import { labelOf } from "#words/en/labels.ts";
import { bench } from "./kit/bench.ts";
import { finger, named } from "./kit/hands.ts";
import { answer, LUNCH, type Stop, walkMeal } from "./kit/meal.ts";
import { Tablet } from "./kit/tablet.ts";

const open = bench();

/** Another window of the same tablet, opened beside the first. */
async function beside(t: Tablet): Promise<Tablet> {
  const other = new Tablet(t.context, await t.context.newPage(), t.baseUrl);
  await other.open();
  return other;
}

const MOMENTS: readonly [Stop, Parameters<typeof labelOf>[0]][] = [
  ["read back", { do: "agree number" }],
  ["drying", { do: "jump wait", reason: "the skin is dry" }],
  ["inject", { do: "needle went in", answer: "yes" }],
  ["eat", { do: "eating" }],
];

describe("a second window", () => {
  it("says that the tablet is in use in another window, and writes nothing", async () => {
    const t = await open();
    await walkMeal(t, finger(t), LUNCH, "reading");
    const before = t.lastSeq;
    const other = await beside(t);
    for (const line of SECOND_WINDOW.lines) expect(await other.words()).toContain(line);
    await t.readOn();
    expect(t.lastSeq).toBe(before);
    await walkMeal(t, finger(t), LUNCH, "exercise", "reading");
  });

  it.each(MOMENTS)("taken into use at '%s' goes on at the same place, and the first one stops writing", async (stop, intent) => {
    const t = await open();
    await walkMeal(t, finger(t), LUNCH, stop);
    const other = await beside(t);
    const hand = finger(other);
    await hand.press({ shown: SECOND_WINDOW.here, said: [] });
    await named(other, SECOND_WINDOW.here).waitFor({ state: "detached" });
    await other.stored("Use here");
    if (stop === "read back" || stop === "drying") await answer(other, hand, { do: "agree clock" });
    await answer(other, hand, intent);
    // The first window is told, and its buttons of the walk are gone.
    for (const line of SECOND_WINDOW.lines) expect(await t.words()).toContain(line);
    expect(await named(t, labelOf(intent, t.state).shown).count()).toBe(0);
    await other.readOn();
    expect(verifyChain(other.rows)).toEqual({ ok: true, count: other.rows.length });
  });
});
