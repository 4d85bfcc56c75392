import { describe, expect, it } from "vitest";
import { TODAY } from "#words/en/due.ts";
import { FIXED, PAD_BUTTON } from "#words/en/fixed.ts";
import { AT_ONE, signed } from "./kit/background.ts";
import { bench } from "./kit/bench.ts";
import { finger } from "./kit/hands.ts";
import { remember } from "./kit/more-log.ts";
import { screenFaults } from "./kit/screen-faults.ts";
import { LANDSCAPE, PORTRAIT, type Tablet } from "./kit/tablet.ts";

const open = bench();
const press = (t: Tablet, ...names: string[]) =>
  names.reduce(async (before, shown) => {
    await before;
    await finger(t).press({ shown, said: [] });
  }, Promise.resolve());

/** The screen that holds most, in every size of letters and both ways round; of the others one look. */
async function everyWay(t: Tablet, found: string[]): Promise<void> {
  for (const [size, viewport] of [
    [2, LANDSCAPE],
    [2, PORTRAIT],
    [1.4, PORTRAIT],
    [1, PORTRAIT],
    [1, LANDSCAPE],
  ] as const) {
    await t.page.setViewportSize(viewport);
    await t.page.evaluate((k) => {
      document.documentElement.dataset.size = String(k);
      document.documentElement.style.setProperty("--k", String(k));
    }, size);
    found.push(...(await screenFaults(t)));
  }
}

describe("background insulin", () => {
  it("is walked by touch from the kitchen to its end, and the mealtime pen stops loudly", async () => {
    const t = await open({ only: "marta" });
    await remember(t, [signed([AT_ONE])]);
    const found: string[] = [];
    await press(t, TODAY.title, TODAY.right, FIXED.background, "Already washed");
    await everyWay(t, found);
    await press(t, "No reading now");
    found.push(...(await screenFaults(t)));
    expect(await t.words()).toContain("your card says 14 units");
    await press(t, "Go on", "One rubber band");
    expect((await t.stored("the wrong pen")).at(-1)).toMatchObject({ event: { type: "near miss", what: "not background insulin" } });
    expect(await t.words()).toContain("Stop. This pen holds insulin lispro.");
    found.push(...(await screenFaults(t)));
    await press(t, "Smooth, no band");
    found.push(...(await screenFaults(t)));
    await press(t, "Yes, that name", "Yes, it is", "Both caps off", "Yes, a stream", PAD_BUTTON.dial, "1", "4", FIXED.ok, "Yes, 14");
    await press(t, "Use this place", "No wipe", "It is down");
    await t.pass(10.5);
    await press(t, "It is out", "0", "Put away");
    found.push(...(await screenFaults(t)));
    await press(t, "Done");
    await t.stored("the end");
    expect(t.state.people.marta).toMatchObject({ doses: [], bell: null, walk: null, backgroundDoses: [{ units: 14, certain: true }] });
    expect(found).toEqual([]);
  });
});
