import { describe, expect, it } from "vitest";
import { bench } from "./kit/bench.ts";
import { finger } from "./kit/hands.ts";
import { LUNCH, openMeal, walkMeal } from "./kit/meal.ts";

const open = bench();

describe("a tablet without a network", () => {
  it("opens once it was opened before, and a whole walk is done on it", async () => {
    const t = await open({ offline: true });
    await t.page.waitForFunction(async () => (await navigator.serviceWorker.ready) && navigator.serviceWorker.controller !== null);
    await t.context.setOffline(true);
    await t.killAndOpen();
    await walkMeal(t, finger(t), LUNCH);
    expect(t.eventsAfter(0).at(-1)).toEqual({ type: "walk ended", how: "whole walk" });
    expect(t.complaints).toEqual([]);
  });

  it("asks nobody for anything while a walk runs", async () => {
    const t = await open({ offline: true });
    await t.page.waitForFunction(async () => (await navigator.serviceWorker.ready) && navigator.serviceWorker.controller !== null);
    await t.page.waitForLoadState("networkidle");
    const left: string[] = [];
    await openMeal(t, finger(t), LUNCH);
    // What the tablet answers itself from what it keeps does not count; the browser asks it for the icon when a tone sounds.
    t.context.on("response", (answer) => (answer.fromServiceWorker() ? 0 : left.push(answer.url())));
    t.context.on("requestfailed", (request) => left.push(request.url()));
    await walkMeal(t, finger(t), LUNCH, undefined, "clock");
    expect(left).toEqual([]);
    // The watch itself works: a request that leaves is seen.
    await t.page.evaluate(() => fetch("./not-kept-on-the-tablet").then((answer) => answer.text()));
    expect(left).toEqual([`${t.baseUrl}not-kept-on-the-tablet`]);
  });
});
