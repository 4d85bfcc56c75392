// The place step on real glass, every part of the body at the largest letters, in the dark, both ways round; and what keeps the needle off.
import { mkdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { henk } from "#demo-data/household.ts";
import type { Happened } from "#events/happened.ts";
import { units } from "#events/quantity.ts";
import type { Region, Spot } from "#events/spot.ts";
import { denseSpots } from "#rules/body/dense.ts";
import { directions } from "#rules/body/directions.ts";
import { siteCode } from "#rules/body/site-code.ts";
import { BODY_SHEET } from "#words/en/body-sheet.ts";
import { DAY_BOOK } from "#words/en/daybook.ts";
import { TODAY } from "#words/en/due.ts";
import { FIXED } from "#words/en/fixed.ts";
import { fromLabel, LUMPS, partLabel } from "#words/en/lumps.ts";
import { sayPlace } from "#words/en/places.ts";
import { bench } from "./kit/bench.ts";
import { finger } from "./kit/hands.ts";
import { answer, type Meal, walkMeal, walkOf } from "./kit/meal.ts";
import { type Past, remember } from "./kit/more-log.ts";
import { screenFaults } from "./kit/screen-faults.ts";
import { LANDSCAPE, PORTRAIT, type Tablet } from "./kit/tablet.ts";

const open = bench();
const LUNCH: Meal = { person: "henk", meal: "lunch", reading: "6.4", plate: { grams: "40" } };
const REGIONS: readonly Region[] = ["belly", "thigh", "arm", "buttock"];
/** Set to a folder, the screens are kept there to be looked at. */
const LOOK = process.env.PLACES_LOOK;

const own = (event: Happened, walk: string | null, hoursAgo: number): Past => ({ person: "henk", walk, event, hoursAgo });
const only = (region: Region): Past =>
  own({ type: "person changed", person: { ...henk, leftOutRegions: REGIONS.filter((one) => one !== region) }, keeper: "ines" }, null, 40);

/** An injection at this spot, from its walk's beginning to its end. */
function given(spot: Spot, place: number): Past[] {
  const walk = `before-${place}`;
  const hoursAgo = 40 - place;
  const events: Happened[] = [
    { type: "walk opened", kind: "meal", meal: "lunch" },
    { type: "spot chosen", spot, code: siteCode(spot) },
    { type: "inject opened" },
    { type: "injected", units: units(1), left: null, insulinId: "lispro-100", pen: null, spot, certain: true },
    { type: "pen put away" },
    { type: "eating" },
    { type: "walk ended", how: "whole walk" },
    { type: "meal answered", ate: "all" },
  ];
  return events.map((event) => own(event, walk, hoursAgo));
}

async function faultsOf(t: Tablet, name: string): Promise<Record<string, string[]>> {
  const found: Record<string, string[]> = {};
  for (const [turned, viewport] of [
    ["landscape", LANDSCAPE],
    ["portrait", PORTRAIT],
  ] as const) {
    await t.page.setViewportSize(viewport);
    const faults = await screenFaults(t);
    if (LOOK) {
      mkdirSync(LOOK, { recursive: true });
      await t.page.screenshot({ path: `${LOOK}/${name}-${turned}.png` });
    }
    if (faults.length > 0) found[turned] = faults;
  }
  return found;
}

const toThePlace = async (past: readonly Past[]): Promise<Tablet> => {
  const t = await open({ prefs: { k: 2, theme: "dark" } });
  await remember(t, past);
  await walkMeal(t, finger(t), LUNCH, "place");
  return t;
};

/** Every sentence of the screen, over all its pages. */
async function sentences(t: Tablet): Promise<string> {
  return (await t.page.locator(".caption").allTextContents()).join(" ");
}

describe("the place, at the largest letters in the dark", () => {
  it.each(REGIONS)("keeps the rules and the sizes, and tells the spot that is stored: %s", async (region) => {
    const t = await toThePlace([only(region)]);
    const spot = walkOf(t).offered?.spot;
    expect(spot?.region).toBe(region);
    expect(await faultsOf(t, region)).toEqual({});
    expect(await sentences(t)).toContain(sayPlace(directions(spot as Spot, henk.body)).join(" "));
  });

  it("keeps the rules and the sizes for the longest words: a spot of the dense pattern on the arm", async () => {
    // So many injections in two days that the easy spots would not rest: the dense pattern comes in. Of it, one spot is left free.
    const words = (spot: Spot) => sayPlace(directions(spot, henk.body)).join(" ");
    const [first, ...right] = denseSpots("arm", "right", henk.body, henk.body.fingerMm);
    const left = denseSpots("arm", "left", henk.body, henk.body.fingerMm);
    if (!first) throw new Error("no spot");
    const longest = right.reduce((most, spot) => (words(spot).length > words(most).length ? spot : most), first);
    const past = Array.from({ length: 14 }, (_, i) => given(left[0] ?? first, i)).flat();
    const marks = [first, ...right, ...left].flatMap((spot, i) =>
      spot === longest ? [] : [own({ type: "no-go place marked", noGo: { id: `m${i}`, spot, radiusMm: 5, kind: "mole" } }, null, 25)],
    );
    const t = await toThePlace([only("arm"), ...past, ...marks]);
    expect(walkOf(t).offered?.spot).toEqual(longest);
    expect(words(longest)).toMatch(/and a half fingers .+ and a half fingers/);
    expect(await faultsOf(t, "dense")).toEqual({});
    expect(await sentences(t)).toContain(words(longest));
  });
});

const press = (t: Tablet, name: string) => finger(t).press({ shown: name, said: [] });

describe("the question about lumps", () => {
  it("keeps the rules and the sizes on every screen, and marks the place that was told", async () => {
    const t = await open({ only: "henk", prefs: { k: 2, theme: "dark" } });
    const found: Record<string, unknown> = {};
    const look = async (name: string) => {
      const faults = await faultsOf(t, `lumps ${name}`);
      if (Object.keys(faults).length > 0) found[name] = faults;
    };
    await t.pass(27 * 24 * 3600);
    // A start of the app asks for day and time first, which a walk does.
    await press(t, FIXED.meal);
    await answer(t, finger(t), { do: "open meal", person: "henk", meal: "lunch" });
    await answer(t, finger(t), { do: "agree clock" });
    await answer(t, finger(t), { do: "answer taken", answer: "do not know" });
    await press(t, FIXED.ok);
    await look("kitchen");
    await press(t, FIXED.lumps);
    await look("question");
    await press(t, LUMPS.found);
    await look("part");
    await press(t, partLabel({ region: "arm", side: "right" }));
    await look("from");
    await press(t, fromLabel({ landmark: "elbow", way: "up" }));
    await look("fingers");
    await press(t, "8");
    await press(t, FIXED.ok);
    await press(t, "2");
    await press(t, FIXED.ok);
    await look("read back");
    await press(t, LUMPS.yesThere);
    await t.stored("the lump");
    await look("saved");
    const { fingerMm, armLengthMm } = henk.body;
    const spot = { region: "arm", side: "right", outMm: 2 * fingerMm, downMm: armLengthMm - 8 * fingerMm };
    expect(t.state.people.henk?.noGo.map((mark) => [mark.kind, mark.spot])).toEqual([["lump", spot]]);
    expect(found).toEqual({});
  });
});

/** Millimetres of CSS to its pixels. */
const px = (mm: number): number => (mm * 96) / 25.4;
const PAPERS = { A4: [210, 297], Letter: [215.9, 279.4] } as const;

describe("the body chart on paper", () => {
  it.each(["A4", "Letter"] as const)(
    "holds the whole sheet and nothing of the screen, black on white, within the margins of %s",
    async (format) => {
      const t = await open({ only: "henk", prefs: { k: 2, theme: "dark" } });
      const spots = denseSpots("belly", "left", henk.body, henk.body.fingerMm);
      const lump: Happened = {
        type: "no-go place marked",
        noGo: { id: "l", spot: { region: "thigh", side: "left", outMm: 40, downMm: 150 }, radiusMm: 15, kind: "lump" },
      };
      const past = [0, 1, 2, 3, 4, 5].flatMap((i) => given(spots[(i % 4) * 7] as Spot, i));
      await remember(t, [...past, own(lump, null, 30)]);
      await press(t, TODAY.title);
      await press(t, FIXED.dayBook);
      await press(t, DAY_BOOK.chart);
      await press(t, BODY_SHEET.showWeeks(4));
      expect(await t.page.locator(".leaf").isVisible()).toBe(true);
      expect(await t.page.locator(".chart-paper").isVisible()).toBe(false);
      await t.page.emulateMedia({ media: "print" });
      const [width] = PAPERS[format];
      await t.page.setViewportSize({ width: Math.floor(px(width - 30)), height: 900 });
      expect(await t.page.locator(".leaf").isVisible()).toBe(false);
      const paper = t.page.locator(".chart-paper");
      expect(await paper.isVisible()).toBe(true);
      const text = await paper.innerText();
      for (const words of ["Body chart of Henk", "Used 2 times in 4 weeks.", "Noted on", "LLAQ", "lets each spot rest 28 days"])
        expect(text).toContain(words);
      const look = await paper.evaluate((sheet) => ({
        wide: sheet.scrollWidth - sheet.clientWidth,
        colours: [
          ...new Set(
            [sheet, ...sheet.querySelectorAll("*")].flatMap((e) => [getComputedStyle(e).color, getComputedStyle(e).backgroundColor]),
          ),
        ],
        small: Math.min(...[...sheet.querySelectorAll("p, li, td, th")].map((e) => Number.parseFloat(getComputedStyle(e).fontSize))),
      }));
      expect(look.wide).toBe(0);
      expect(look.colours.filter((colour) => !["rgb(0, 0, 0)", "rgb(255, 255, 255)", "rgba(0, 0, 0, 0)"].includes(colour))).toEqual([]);
      // 14 pt in the long table, 18 pt elsewhere.
      expect(look.small).toBeGreaterThanOrEqual((14 * 96) / 72 - 0.1);
      if (LOOK) {
        await t.page.screenshot({ path: `${LOOK}/paper-${format}.png`, fullPage: true });
        await t.page.pdf({ format, path: `${LOOK}/paper-${format}.pdf`, preferCSSPageSize: false });
      }
    },
  );
});
