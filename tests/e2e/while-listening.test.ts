// Screens that stand while the tablet listens: its notice takes a line of their room, at every size of letters and both ways round.
import { expect, it } from "vitest";
import { FIXED } from "#words/en/fixed.ts";
import { bench } from "./kit/bench.ts";
import { finger, voice } from "./kit/hands.ts";
import { answer, LUNCH, walkMeal } from "./kit/meal.ts";
import { screenFaults } from "./kit/screen-faults.ts";
import { LANDSCAPE, PORTRAIT, type Tablet } from "./kit/tablet.ts";

const open = bench();
/** A word longer than its line is broken, and nothing measures that: every line of a name must begin where a word does. */
const brokenWords = (t: Tablet): Promise<string[]> =>
  t.page.locator(".screen-actions .button-label").evaluateAll((labels) =>
    labels.flatMap((label) => {
      const walker = document.createTreeWalker(label, NodeFilter.SHOW_TEXT);
      const broken: string[] = [];
      for (let node = walker.nextNode(); node; node = walker.nextNode()) {
        for (const { 0: word, index } of (node.textContent ?? "").matchAll(/[\p{L}\p{N}]+/gu)) {
          const range = document.createRange();
          range.setStart(node, index);
          range.setEnd(node, index + word.length);
          if (range.getClientRects().length > 1) broken.push(`the word ${word} is broken`);
        }
      }
      return broken;
    }),
  );

const press = (t: Tablet, name: string) => finger(t).press({ shown: name, said: [] });

it.each([1, 1.4, 2] as const)("keeps the rules and the sizes while the tablet listens, letters of size %d", async (k) => {
  const faults: Record<string, string[]> = {};
  const look = async (t: Tablet, screen: string) => {
    for (const [turned, viewport] of [
      ["portrait", PORTRAIT],
      ["landscape", LANDSCAPE],
    ] as const) {
      await t.page.setViewportSize(viewport);
      const found = [...(await screenFaults(t)), ...(await brokenWords(t))];
      if (process.env.SHOTS) await t.page.screenshot({ path: `${process.env.SHOTS}/${screen}-${k}-${turned}.png` });
      if (found.length > 0) faults[`${screen}, ${turned}`] = found;
    }
  };
  const listens = async (t: Tablet) => {
    await t.run(8000);
    expect(await t.words()).toContain(FIXED.listening);
  };
  const t = await open({ voice: "speaks and listens", prefs: { k } });
  await listens(t);
  await look(t, "kitchen");
  await press(t, FIXED.wrong);
  await look(t, "something is wrong");
  await press(t, FIXED.back);
  await walkMeal(t, finger(t), LUNCH, "reading");
  await voice(t).press({ shown: "", said: ["one hundred twelve"] });
  await listens(t);
  await look(t, "read-back");
  await press(t, "Yes, 112");
  await walkMeal(t, finger(t), LUNCH, "eat", "exercise");
  await answer(t, finger(t), { do: "cannot eat" });
  await look(t, "sugar");
  expect(faults).toEqual({});
});
