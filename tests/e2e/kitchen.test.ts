import { describe, expect, it } from "vitest";
import { TODAY } from "#words/en/due.ts";
import { FIXED } from "#words/en/fixed.ts";
import { labelOf } from "#words/en/labels.ts";
import { bench } from "./kit/bench.ts";
import { finger, named, voice } from "./kit/hands.ts";
import { answer, LUNCH, openMeal, walkMeal } from "./kit/meal.ts";
import { screenFaults } from "./kit/screen-faults.ts";
import type { Tablet } from "./kit/tablet.ts";

const open = bench();
const press = (t: Tablet, name: string) => finger(t).press({ shown: name, said: [] });
const carryOn = (t: Tablet) => labelOf({ do: "turn to", person: "marta" }, t.state).shown;

/** Every button of the kitchen screen, over all turns of More, in order. */
async function kitchenButtons(t: Tablet): Promise<string[]> {
  const seen: string[] = [];
  for (let turn = 0; turn < 5; turn++) {
    const shown = await t.page.locator(".screen-actions button").allInnerTexts();
    const fresh = shown.filter((label) => label !== FIXED.more && !seen.includes(label));
    if (fresh.length === 0) break;
    seen.push(...fresh);
    if (!shown.includes(FIXED.more)) break;
    await press(t, FIXED.more);
  }
  return seen;
}

describe("the kitchen screen", () => {
  it("keeps everything in reach with a walk open, the walk and the low on its first page", async () => {
    const t = await open();
    await walkMeal(t, finger(t), LUNCH, "reading");
    await press(t, FIXED.wrong);
    await answer(t, finger(t), { do: "leave" });
    await named(t, carryOn(t)).waitFor();
    expect(await screenFaults(t)).toEqual([]);
    const all = await kitchenButtons(t);
    expect(all.slice(0, 2)).toEqual([carryOn(t), FIXED.low]);
    expect(all.toSorted()).toEqual([carryOn(t), FIXED.low, FIXED.didI, FIXED.meal, TODAY.title, FIXED.reading, FIXED.ill].toSorted());
  });

  it("asks about the meal on its first page, with the day book and the rest behind Today", async () => {
    const t = await open();
    await walkMeal(t, finger(t), LUNCH);
    await t.pass(40 * 60);
    await named(t, FIXED.answerMeal).waitFor();
    const all = await kitchenButtons(t);
    expect(all.indexOf(FIXED.answerMeal)).toBeLessThan(3);
    expect(all).toEqual(expect.arrayContaining([FIXED.low, FIXED.meal, TODAY.title]));
    await press(t, TODAY.title);
    expect(await kitchenButtons(t)).toEqual(expect.arrayContaining([FIXED.didI, FIXED.dayBook, FIXED.reading]));
  });
});

describe("in a house of two", () => {
  it("no voice goes on with a person's walk, though it says the name", async () => {
    const t = await open({ voice: "speaks and listens" });
    await walkMeal(t, finger(t), LUNCH, "reading");
    await press(t, FIXED.wrong);
    await answer(t, finger(t), { do: "leave" });
    await named(t, carryOn(t)).waitFor();
    for (const phrase of ["carry on marta", "carry on circle marta", "carry on"]) {
      await voice(t).press({ shown: "", said: [phrase] });
      await t.run(2000);
    }
    expect(t.state.front).toBeNull();
    await press(t, carryOn(t));
    await t.stored("turn to");
    expect(t.state.front).toBe("marta");
  });

  it("a walk carries the name and the shape of its person on every screen, and on the button that carries on", async () => {
    const t = await open();
    const who = t.page.locator(".five-who");
    expect(await who.count()).toBe(0);
    await walkMeal(t, finger(t), LUNCH, "reading");
    expect(await who.innerText()).toBe("Marta");
    expect(await who.locator("svg").count()).toBe(1);
    await press(t, FIXED.wrong);
    expect(await who.innerText()).toContain("Marta");
    await answer(t, finger(t), { do: "leave" });
    await named(t, "Carry on: ● Marta").waitFor();
  });
});

describe("a walk that ends at its first question", () => {
  it.each([
    ["yes", "Saved. Marta, you took that dose."],
    ["do not know", "Saved. Marta, you do not know if you took it."],
  ] as const)("says and shows what was noted, once it is stored: %s", async (taken, line) => {
    const t = await open({ voice: "speaks and listens" });
    await walkMeal(t, finger(t), LUNCH);
    await openMeal(t, finger(t), LUNCH);
    await answer(t, finger(t), { do: "answer taken", answer: taken });
    expect(t.eventsAfter(0).at(-1)).toMatchObject({ type: "walk ended" });
    await t.page.getByText(line).waitFor();
    await t.run(2500);
    const said = await t.said();
    expect(said.map(({ text }) => text)).toContain(line);
    expect(said.filter(({ shown }) => shown === false)).toEqual([]);
    await voice(t).press({ shown: FIXED.ok, said: ["ok"] });
    await named(t, FIXED.meal).or(named(t, FIXED.more)).first().waitFor();
    expect(await t.words()).not.toContain(line);
  });
});
