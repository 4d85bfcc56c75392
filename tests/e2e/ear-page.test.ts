// The keeper's page of the ear, on the glass: what the browser's ear heard, and that its language is fetched only when that is pressed.
import { describe, expect, it } from "vitest";
import { DEMO_PIN } from "#demo-data/household.ts";
import { EAR } from "#words/en/drawer/ear.ts";
import { DRAWER } from "#words/en/drawer.ts";
import { FIXED } from "#words/en/fixed.ts";
import { axe } from "./kit/axe.ts";
import { bench } from "./kit/bench.ts";
import { finger, named, voice } from "./kit/hands.ts";
import { textSizes } from "./kit/measure-mm.ts";
import { LANDSCAPE, PORTRAIT, type Tablet, type Wanted } from "./kit/tablet.ts";

const open = bench();
const press = (t: Tablet, name: string) => finger(t).press({ shown: name, said: [] });
const say = (t: Tablet, text: string) => voice(t).press({ shown: "", said: [text] });
/** Letters of the drawer are at least so high. */
const LETTERS_MM = 6.4;

async function toEar(more: Partial<Wanted> = {}): Promise<Tablet> {
  const t = await open({ voice: "speaks and listens", ...more });
  await press(t, FIXED.help);
  await press(t, FIXED.drawer);
  // The short past has no keeper yet: the first one is made here.
  await t.page.getByLabel("Your name", { exact: true }).fill("Ines");
  await t.page.getByLabel("PIN", { exact: true }).fill(DEMO_PIN);
  await t.page.getByLabel("PIN again", { exact: true }).fill(DEMO_PIN);
  await press(t, DRAWER.keeperSave);
  await named(t, EAR.title).waitFor({ timeout: 30_000 });
  await press(t, EAR.title);
  await t.page
    .getByText(/listens/)
    .first()
    .waitFor();
  return t;
}

describe("the page of the ear", () => {
  it.each([
    ["landscape", { viewport: LANDSCAPE }],
    ["portrait, twice the text, dark", { viewport: PORTRAIT, prefs: { k: 2, theme: "dark" } }],
  ] as const)("tells three tries, what was heard in each, and the score: %s", async (name, look) => {
    const t = await toEar(look);
    expect(await t.words()).toContain("The ear of this browser listens.");
    for (const text of ["one hundred twelve", "two hundred twelve", "one one two"]) {
      await press(t, EAR.listen);
      await say(t, text);
      await t.page.getByText(`“${text}”`).first().waitFor();
    }
    const words = await t.words();
    expect(words).toContain(EAR.score(2, 3));
    expect(words).toContain("That is wrong.");
    expect(await axe(t.page)).toEqual([]);
    expect((await textSizes(t.page)).filter(({ mm }) => mm < LETTERS_MM - 0.06)).toEqual([]);
    if (process.env.SHOTS) await t.page.screenshot({ path: `${process.env.SHOTS}/ear-${name.replace(/[ ,]+/g, "-")}.png`, fullPage: true });
    // Nothing was said aloud: a keeper reads here.
    expect((await t.said()).map(({ text }) => text).filter((text) => text.includes("twelve"))).toEqual([]);
  });

  it("tells that nobody chose listening, and opens no ear", async () => {
    const t = await toEar({ voice: "screen reader" });
    expect(await t.words()).toContain("Nobody chose listening.");
    await t.run(5000);
    expect(
      await t.page.evaluate(() => (globalThis as typeof globalThis & { fakeSpeech: { listening(): boolean } }).fakeSpeech.listening()),
    ).toBe(false);
  });
});
