import { describe, expect, it } from "vitest";
import { verifyChain } from "#log/chain.ts";
import { frontPerson } from "#walk/offers.ts";
import { stepOf } from "#walk/state.ts";
import { sayClock } from "#words/en/clock-question.ts";
import { labelOf } from "#words/en/labels.ts";
import { sayNeedleQuestion } from "#words/en/steps/after-needle.ts";
import { bench } from "./kit/bench.ts";
import { finger, named } from "./kit/hands.ts";
import { answer, LUNCH, typesOf, walkMeal } from "./kit/meal.ts";
import type { Tablet } from "./kit/tablet.ts";

const open = bench();

/** Two ways to lose the page: it is loaded again, or its window is killed and another opened. */
const LOSSES = [(t: Tablet) => t.reload(), (t: Tablet) => t.killAndOpen()] as const;

const step = (t: Tablet) => {
  const walk = frontPerson(t.state)?.walk;
  return walk ? stepOf(walk) : null;
};
const offered = (t: Tablet, intent: Parameters<typeof labelOf>[0]) => named(t, labelOf(intent, t.state).shown);
const asksDayAndTime = async (t: Tablet) => {
  const at = t.state.last;
  if (!at) throw new Error("an empty log");
  const [line = ""] = sayClock(at).lines;
  // The minute may have turned meanwhile: the day is enough.
  expect(await t.words()).toContain(line.split(",").slice(0, 2).join(","));
};
const agree = (t: Tablet) => answer(t, finger(t), { do: "agree clock" });

describe("a walk that was interrupted", () => {
  it("comes back to the reading's read-back, after day and time were asked", async () => {
    const t = await open();
    await walkMeal(t, finger(t), LUNCH, "read back");
    for (const lose of LOSSES) {
      await lose(t);
      await asksDayAndTime(t);
      expect(await offered(t, { do: "agree number" }).count()).toBe(0);
      await agree(t);
      await offered(t, { do: "agree number" }).waitFor();
      expect(await t.words()).toContain(LUNCH.reading);
    }
    await walkMeal(t, finger(t), LUNCH, undefined, "read back");
    expect(t.eventsAfter(0).at(-1)).toEqual({ type: "walk ended", how: "whole walk" });
    expect(verifyChain(t.rows).ok).toBe(true);
  });

  it("goes on with the drying wait where it was, and lets nobody past it early", async () => {
    const t = await open();
    await walkMeal(t, finger(t), LUNCH, "drying");
    for (const lose of LOSSES) {
      await t.pass(4);
      await lose(t);
      await asksDayAndTime(t);
      await agree(t);
      await t.page.getByRole("timer").waitFor();
      expect(await offered(t, { do: "wait is over" }).count()).toBe(0);
    }
    const left = Number.parseInt(await t.page.getByRole("timer").locator("span").first().innerText(), 10);
    expect(left).toBeLessThanOrEqual(12);
    expect(left).toBeGreaterThan(5);
    await t.pass(left + 1);
    await answer(t, finger(t), { do: "wait is over" });
    expect(typesOf(t.eventsAfter(0)).at(-1)).toBe("inject opened");
  });

  it("asks whether the needle went in before anything else, once the needle step was opened", async () => {
    const t = await open();
    await walkMeal(t, finger(t), LUNCH, "inject");
    for (const lose of LOSSES) {
      await lose(t);
      for (const line of sayNeedleQuestion().lines) expect(await t.words()).toContain(line);
      expect(await offered(t, { do: "button is down" }).count()).toBe(0);
      expect(t.state.people.marta?.doses[0]).toMatchObject({ certain: false });
    }
    await answer(t, finger(t), { do: "needle went in", answer: "yes" });
    await walkMeal(t, finger(t), LUNCH, undefined, "window");
    expect(t.eventsAfter(0).filter((e) => e.type === "injected")).toHaveLength(1);
    expect(t.eventsAfter(0).at(-1)).toEqual({ type: "walk ended", how: "whole walk" });
  });

  it("takes the dose for not taken only after a no, and then dials again before the needle", async () => {
    const t = await open();
    await walkMeal(t, finger(t), LUNCH, "inject");
    await t.reload();
    await answer(t, finger(t), { do: "needle went in", answer: "no" });
    expect(t.state.people.marta?.doses).toEqual([]);
    await asksDayAndTime(t);
    await agree(t);
    expect(step(t)).toBe("dial");
  });

  it("never injects again on a not sure", async () => {
    const t = await open();
    await walkMeal(t, finger(t), LUNCH, "inject");
    await t.reload();
    await answer(t, finger(t), { do: "needle went in", answer: "not sure" });
    expect(step(t)).toBe("mishap");
    expect(await t.words()).toContain("Do not inject again.");
    expect(t.state.people.marta?.doses).toHaveLength(1);
  });

  it("still rings the bell, and at once as due, until day and time are known", async () => {
    const t = await open();
    await walkMeal(t, finger(t), LUNCH, "eat");
    for (const lose of LOSSES) {
      await t.pass(60);
      await lose(t);
      expect(step(t)).toBe("eat");
      expect(t.state.people.marta?.bell).not.toBeNull();
      // A touch, so that the browser lets the tablet sound.
      await t.page.touchscreen.tap(640, 400);
      await t.page.waitForTimeout(300);
      await t.run(31_000);
      expect(await t.tones()).toContain(880);
      expect(await t.words()).toContain("eat now");
    }
    await answer(t, finger(t), { do: "eating" });
    expect(t.state.people.marta?.bell).toBeNull();
  });
});
