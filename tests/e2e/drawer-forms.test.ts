// The form for high glucose and ill days on the glass: boxes wide enough to read what was typed, letters and contrast, in every size and both ways round.
import { describe, expect, it } from "vitest";
import { DEMO_PIN } from "#demo-data/household.ts";
import { PARTS } from "#words/en/drawer/fields.ts";
import { DRAWER } from "#words/en/drawer.ts";
import { FIXED } from "#words/en/fixed.ts";
import { axe } from "./kit/axe.ts";
import { bench } from "./kit/bench.ts";
import { finger, named } from "./kit/hands.ts";
import { clipped, textSizes } from "./kit/measure-mm.ts";
import { LANDSCAPE, PORTRAIT, type Tablet } from "./kit/tablet.ts";

const open = bench();
const press = (t: Tablet, name: string) => finger(t).press({ shown: name, said: [] });
/** Letters of the drawer are at least so high (mm). */
const LETTERS_MM = 6.4;
/** Our choice, no source: a few words of the card can be read in a box while they are typed. */
const BOX_MM = 40;

const narrowBoxes = (t: Tablet): Promise<string[]> =>
  t.page.evaluate((least) => {
    const mm = Number.parseFloat(getComputedStyle(document.documentElement).getPropertyValue("--mm"));
    const boxes = [...document.querySelectorAll<HTMLElement>("main textarea, main input[type=text], main input:not([type])")];
    if (boxes.length === 0) throw new Error("no box was seen");
    return boxes.flatMap((box) => {
      const wide = box.getBoundingClientRect().width / mm;
      return wide < least ? [`${document.querySelector(`label[for="${box.id}"]`)?.textContent}: ${wide.toFixed(1)} mm`] : [];
    });
  }, BOX_MM);

describe("the form for ill days", () => {
  it.each([1, 1.4, 2] as const)("has room for the card's own words, letters of size %s", async (k) => {
    const t = await open({ only: "marta", prefs: { k } });
    await press(t, FIXED.help);
    await press(t, FIXED.drawer);
    await t.page.getByLabel("Your name", { exact: true }).fill("Ines");
    await t.page.getByLabel("PIN", { exact: true }).fill(DEMO_PIN);
    await t.page.getByLabel("PIN again", { exact: true }).fill(DEMO_PIN);
    await press(t, DRAWER.keeperSave);
    await named(t, DRAWER.card("Marta")).waitFor({ timeout: 30_000 });
    await press(t, DRAWER.card("Marta"));
    await press(t, "Type a new card");
    await t.page.locator("main section", { hasText: PARTS.ill }).getByText("Urine strip with words").tap();
    await t.page.getByLabel("Ketones, line 1: what the card says").waitFor();
    for (const viewport of [LANDSCAPE, PORTRAIT]) {
      await t.page.setViewportSize(viewport);
      expect(await narrowBoxes(t)).toEqual([]);
      expect(await clipped(t.page)).toEqual([]);
      expect((await textSizes(t.page)).filter(({ mm }) => mm < LETTERS_MM - 0.06)).toEqual([]);
      expect(await axe(t.page)).toEqual([]);
    }
  });
});
