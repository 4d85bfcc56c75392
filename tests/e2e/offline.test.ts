import { describe, expect, it } from "vitest";
import { emptyHouse } from "#walk/state.ts";
import { FIXED } from "#words/en/fixed.ts";
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

  it("answers the first press with the scripts alone that the measure of weight counts", async () => {
    const t = await open({ prefs: { chose: false } });
    const refused: string[] = [];
    await t.context.route(/\.(js|css)$/, (route) => {
      if (/\/assets\/(kitchen|demo)-[\w-]{8}\.(js|css)$/.test(route.request().url())) return route.continue();
      refused.push(route.request().url());
      return route.abort();
    });
    // As on a new tablet: nothing is stored, and the demo household is made.
    await t.page.goto(`${t.baseUrl}icon.svg`);
    await t.page.evaluate(async () => {
      for (const { name } of await indexedDB.databases()) if (name) indexedDB.deleteDatabase(name);
    });
    t.rows = [];
    t.state = emptyHouse;
    await t.open();
    expect(t.lastSeq).toBeGreaterThan(1000);
    await finger(t).press({ shown: FIXED.appSpeaksOnly, said: [] });
    await finger(t).press({ shown: FIXED.meal, said: [] });
    expect(await t.words()).toContain(FIXED.who);
    // The watch itself works: what a walk needs was asked for, and not let through.
    expect(refused.some((url) => url.includes("walk-part"))).toBe(true);
  });

  it("opens no walk before all that a walk needs is in memory, and fetches nothing after", async () => {
    const t = await open();
    let come = () => {};
    const mayCome = new Promise<void>((done) => (come = done));
    const asked: string[] = [];
    // The first try fails as a lost network does; the next ones wait in the air.
    await t.context.route(/walk-part-.*\.js$/, async (route) => {
      asked.push(route.request().url());
      if (asked.length === 1) return route.abort();
      await mayCome;
      return route.continue();
    });
    await t.reload();
    await finger(t).press({ shown: FIXED.low, said: [] });
    await finger(t).press({ shown: "● Marta", said: [] });
    await t.page.getByText(FIXED.walkComes).waitFor();
    await expect.poll(() => asked.length, { timeout: 20_000 }).toBeGreaterThan(1);
    const { lastSeq } = t;
    await t.page.waitForTimeout(500);
    await t.readOn();
    expect(t.eventsAfter(lastSeq)).toEqual([]);
    const left: string[] = [];
    t.page.on("request", (request) => left.push(request.url()));
    come();
    await t.stored("the low");
    expect(t.eventsAfter(lastSeq).map(({ type }) => type)).toContain("walk opened");
    await t.page.getByText(FIXED.walkComes).waitFor({ state: "detached" });
    expect(await t.words()).not.toContain(FIXED.meal);
    // Help and "Something is wrong" lie in memory too.
    await finger(t).press({ shown: FIXED.help, said: [] });
    await finger(t).press({ shown: FIXED.close, said: [] });
    await finger(t).press({ shown: FIXED.wrong, said: [] });
    // Voice and ear come by themselves after the first screen; on a first visit they may still be on their way.
    expect(left.filter((url) => !/\/voice\/|\/ear\/|worker/.test(url))).toEqual([]);
    expect(t.complaints).toEqual([]);
  });
});
