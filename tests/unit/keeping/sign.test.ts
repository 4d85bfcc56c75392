import { describe, expect, it } from "vitest";
import { canonical } from "#events/canonical.ts";
import type { DoseCard } from "#events/card.ts";
import { units } from "#events/quantity.ts";
import { EMPTY_CARD, readCard } from "#keeping/card-draft.ts";
import { differences } from "#keeping/differences.ts";
import type { Draft } from "#keeping/problem.ts";
import { alarmKey, type Signing, signCard } from "#keeping/sign.ts";
import { alarmsOf } from "#rules/card/plausible.ts";
import { EVERY_KIND, fixedPlusCard, fixedTableCard, gridCard } from "../../kit/cards.ts";
import { bandsCard, fixedCard, odile, ratioCard } from "../../kit/people.ts";
import { typed } from "./typing.ts";

const hash = (card: DoseCard) => `hash of ${canonical(card).length}`;
const signing = (over: Partial<Signing> = {}): Signing => ({
  first: fixedCard,
  second: structuredClone(fixedCard),
  readBack: true,
  agreed: [],
  person: odile,
  keeper: { id: "k1", name: "Ines" },
  today: "2026-06-03",
  hash,
  ...over,
});
const refusal = (over: Partial<Signing>) => {
  const signed = signCard(signing(over));
  return signed.ok ? "signed" : signed.refused;
};

type Path = readonly string[];
const isParts = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null;
/** The way to everything that stands on a card. */
const pathsOf = (value: unknown, at: Path = []): Path[] =>
  isParts(value) ? Object.entries(value).flatMap(([name, below]) => pathsOf(below, [...at, name])) : [at];
const valueAt = (value: unknown, path: Path): unknown => path.reduce<unknown>((v, name) => (isParts(v) ? v[name] : undefined), value);
const otherThan = (value: unknown): unknown => {
  if (typeof value === "boolean") return !value;
  return typeof value === "number" ? value + 1 : `${value ?? ""}x`;
};
function changedAt(card: DoseCard, path: Path, change: (value: unknown) => unknown): unknown {
  const copy: unknown = structuredClone(card);
  const holder = valueAt(copy, path.slice(0, -1));
  const last = path.at(-1) ?? "";
  if (isParts(holder)) holder[last] = change(holder[last]);
  return copy;
}

describe("signing a card", () => {
  it("brings a card into force that was typed twice alike and read back", () => {
    const signed = signCard(signing());
    expect(signed).toEqual({
      ok: true,
      events: [
        {
          type: "card signed",
          card: fixedCard,
          cardHash: hash(fixedCard),
          signature: { keeper: "k1", keeperName: "Ines", signedOn: "2026-06-03", typedTwice: true, readBack: true },
        },
      ],
    });
  });

  it("refuses two typings that differ in one field, and names the field", () => {
    const second = { ...fixedCard, largestDose: units(2) };
    const signed = signCard(signing({ second }));
    expect(signed).toEqual({ ok: false, refused: "typings differ", differences: [{ field: "largestDose", first: 20, second: 2 }] });
  });

  it("finds a difference in any field at all", () => {
    const paths: [string, DoseCard][] = [
      ["meals.breakfast.units", { ...fixedCard, meals: { ...fixedCard.meals, breakfast: { kind: "fixed units", units: units(7) } } }],
      ["meals.snack", { ...fixedCard, meals: { ...fixedCard.meals, snack: { kind: "fixed units", units: units(1) } } }],
      ["low.counts", { ...fixedCard, low: { value: 70, counts: "below" } }],
      ["bedtime.correction", { ...fixedCard, bedtime: { from: "21:00", until: "05:00", correction: true } }],
      ["spacingMinutes", { ...fixedCard, spacingMinutes: null }],
      ["care.restDays", { ...fixedCard, care: { ...fixedCard.care, restDays: 14 } }],
      ["clinic.phone", { ...fixedCard, clinic: { ...fixedCard.clinic, phone: "555 0143" } }],
      ["validUntil", { ...fixedCard, validUntil: null }],
      ["onBoard.model", { ...fixedCard, onBoard: { model: "linear", hours: 4 } }],
    ];
    for (const [field, second] of paths) {
      const signed = signCard(signing({ second }));
      expect(!signed.ok && signed.refused === "typings differ" && signed.differences.map((d) => d.field)).toEqual([field]);
    }
  });

  it("finds each number, word and yes of a card that differs, whatever its kind, and each part that is missing", () => {
    for (const [name, card] of [["bands", bandsCard] as const, ["a ratio", ratioCard] as const, ...EVERY_KIND]) {
      const paths = pathsOf(card);
      expect(paths.length, name).toBeGreaterThan(40);
      for (const path of paths) {
        const changed = changedAt(card, path, otherThan);
        expect(
          differences(card, changed).map((d) => d.field),
          name,
        ).toEqual([path.join(".")]);
        // What only one typing has is found from either side.
        const without = changedAt(card, path, () => undefined);
        for (const both of [differences(card, without), differences(without, card)])
          expect(both.map((d) => d.field).includes(path.join(".")), `${name}: ${path}`).toBe(valueAt(card, path) !== null);
      }
    }
  });

  it("refuses a card that was not read back, and one without a keeper", () => {
    expect(refusal({ readBack: false })).toBe("not read back");
    expect(refusal({ keeper: null })).toBe("no keeper");
  });

  it("refuses what is not a card, in either typing", () => {
    expect(signCard(signing({ first: { ...fixedCard, low: undefined } }))).toEqual({ ok: false, refused: "not a card", typing: "first" });
    expect(signCard(signing({ second: null }))).toEqual({ ok: false, refused: "not a card", typing: "second" });
    const grid = gridCard.meals.breakfast;
    if (grid?.kind !== "grid") throw new Error("no grid");
    const short = { ...gridCard, meals: { ...gridCard.meals, breakfast: { ...grid, foodOnly: [units(1)] } } };
    expect(refusal({ first: short, second: short })).toBe("not a card");
    const torn = { ...gridCard, meals: { ...gridCard.meals, breakfast: { ...grid, columns: grid.columns.slice(1) } } };
    expect(refusal({ first: torn, second: torn })).toBe("not a card");
    const both = {
      ...fixedPlusCard,
      meals: { ...fixedPlusCard.meals, breakfast: { ...fixedTableCard.meals.breakfast, ...fixedPlusCard.meals.breakfast } },
    };
    expect(refusal({ first: both, second: both })).toBe("not a card");
    const noDay = { ...fixedCard, validFrom: "2026-02-30" };
    expect(refusal({ first: noDay, second: noDay })).toBe("not a card");
  });

  it("refuses dates in the wrong order and a card whose days are over", () => {
    const turned = { ...fixedCard, reviewBy: null, validFrom: "2026-06-10", validUntil: "2026-06-09" };
    expect(refusal({ first: turned, second: turned })).toBe("dates in the wrong order");
    const over = { ...fixedCard, reviewBy: null, validUntil: "2026-06-02" };
    expect(refusal({ first: over, second: over })).toBe("already over");
    const lastDay = { ...fixedCard, reviewBy: null, validFrom: "2026-06-03", validUntil: "2026-06-03" };
    expect(refusal({ first: lastDay, second: lastDay })).toBe("signed");
  });

  it("refuses a card of somebody else, and one in another unit than the meter's", () => {
    expect(refusal({ first: { ...fixedCard, person: "bram" }, second: { ...fixedCard, person: "bram" } })).toBe("another person's card");
    const other = { ...ratioCard, person: "odile" };
    expect(refusal({ first: other, second: other })).toBe("another unit than the meter's");
  });

  it("refuses a card for days on which another holds, until the keeper confirms that the clinic ends the old one", () => {
    const old = { card: { ...fixedCard, validFrom: "2026-01-01", validUntil: "2026-06-30" }, hash: "old" };
    const from = (validFrom: string, validUntil: string | null = null) => ({ ...fixedCard, reviewBy: null, validFrom, validUntil });
    const next = from("2026-06-30");
    const asked = { first: next, second: next, held: [old] };
    expect(signCard(signing(asked))).toEqual({ ok: false, refused: "overlaps", from: "2026-06-30", old: [old.card] });
    const signed = signCard(signing({ ...asked, endsOld: true }));
    expect(signed.ok && signed.events).toMatchObject([{ type: "card signed", waits: true, ends: ["old"] }]);
    const after = from("2026-07-01");
    const beside = signCard(signing({ first: after, second: after, held: [old] }));
    expect(beside.ok && beside.events).toEqual([expect.not.objectContaining({ ends: expect.anything() })]);
    expect(beside.ok && beside.events).toMatchObject([{ waits: true }]);
  });

  it("lets a card that begins today take the place of the old one at once, and waits for none where none holds", () => {
    const today = { ...fixedCard, validFrom: "2026-06-03" };
    const old = { card: fixedCard, hash: "old" };
    const signed = signCard(signing({ first: today, second: today, held: [old], endsOld: true }));
    expect(signed.ok && signed.events[0]).toMatchObject({ ends: ["old"] });
    expect(signed.ok && signed.events[0]).not.toHaveProperty("waits");
    const tomorrow = { ...fixedCard, validFrom: "2026-06-04" };
    const alone = signCard(signing({ first: tomorrow, second: tomorrow }));
    expect(alone.ok && alone.events[0]).not.toHaveProperty("waits");
    const later = { card: { ...fixedCard, validFrom: "2026-08-01" }, hash: "later" };
    const before = { ...fixedCard, reviewBy: null, validFrom: "2026-06-04", validUntil: "2026-07-31" };
    const ahead = signCard(signing({ first: before, second: before, held: [later] }));
    expect(ahead.ok && ahead.events[0]).not.toHaveProperty("waits");
  });

  it("holds the ratios against the units of a whole day, where the card has them", () => {
    const many = { ...ratioCard, unitsADay: 200, person: "odile" };
    const signed = signCard(signing({ first: many, second: many, person: { ...odile, glucoseUnit: "mmol/L" } }));
    expect(!signed.ok && signed.refused === "alarms not confirmed" && signed.alarms.map((a) => a.alarm)).toContain(
      "grams per unit far from the rule of thumb",
    );
  });

  it("signs a card of every kind", () => {
    for (const [, card] of EVERY_KIND) {
      const agreed = alarmsOf(card, null).map(alarmKey);
      expect(refusal({ first: card, second: structuredClone(card), agreed })).toBe("signed");
    }
  });

  it("asks about every oddity, and never blocks one that a keeper confirmed", () => {
    const odd: DoseCard = { ...fixedCard, meals: { ...fixedCard.meals, dinner: { kind: "fixed units", units: units(80) } } };
    const alarms = alarmsOf(odd, null);
    expect(alarms.length).toBeGreaterThan(1);
    const signed = signCard(signing({ first: odd, second: odd }));
    expect(signed).toEqual({ ok: false, refused: "alarms not confirmed", alarms });
    const [one, ...others] = alarms.map(alarmKey);
    expect(refusal({ first: odd, second: odd, agreed: others })).toBe("alarms not confirmed");
    expect(refusal({ first: odd, second: odd, agreed: one === undefined ? [] : [one, ...others] })).toBe("signed");
  });
});

describe("a typed card", () => {
  it("is read as it was typed, for every kind of rule", () => {
    for (const card of [fixedCard, bandsCard, ratioCard, { ...fixedCard, unitsADay: 38 }, ...EVERY_KIND.map(([, card]) => card)]) {
      expect(readCard(typed(card), card.person)).toEqual({ ok: true, card });
    }
  });

  it("keeps every blank dosing field blank", () => {
    const blank: DoseCard = {
      ...bandsCard,
      largestDose: null,
      spacingMinutes: null,
      windowMinutes: null,
      onBoard: null,
      bedtime: null,
      afterExercise: null,
      afterLow: null,
      high: null,
      reviewBy: null,
      validUntil: null,
    };
    expect(readCard(typed(blank), "odile")).toEqual({ ok: true, card: blank });
  });

  it("lists every field that was left unanswered, and guesses none", () => {
    const read = readCard(EMPTY_CARD, "odile");
    const fields = read.ok ? [] : read.problems.map((problem) => problem.field);
    expect(fields).toEqual(
      expect.arrayContaining([
        "insulin.name",
        "insulin.unitsPerMl",
        "glucoseUnit",
        "carbohydrate",
        "rounding.step",
        "low.value",
        "low.counts",
        "timing.when",
        "telephonedDose",
        "clinic.name",
        "clinic.phone",
        "validFrom",
      ]),
    );
    expect(fields).not.toContain("largestDose");
  });

  it("wants units in a row that has edges, and at least one row", () => {
    const noUnits = readCard({ ...typed(bandsCard), "meals.breakfast.bands.1.units": "" }, "odile");
    expect(!noUnits.ok && noUnits.problems).toEqual([{ field: "meals.breakfast.bands.1.units", got: "", why: "empty" }]);
    const draft = { ...typed(fixedCard), "meals.lunch.kind": "bands", "meals.lunch.edges": "as printed" };
    const noRows = readCard(draft, "odile");
    expect(!noRows.ok && noRows.problems.map((p) => p.field)).toEqual(["meals.lunch.bands.0.units"]);
  });

  it("wants every cell of a grid, and an edge for every column that has cells", () => {
    const fields = (change: Draft) => {
      const read = readCard({ ...typed(gridCard), ...change }, "odile");
      return read.ok ? [] : read.problems.map((p) => [p.field, p.why]);
    };
    expect(fields({ "meals.breakfast.rows.1.units.2": "" })).toEqual([["meals.breakfast.rows.1.units.2", "empty"]]);
    expect(fields({ "meals.breakfast.foodOnly.0": "" })).toEqual([["meals.breakfast.foodOnly.0", "empty"]]);
    expect(fields({ "meals.breakfast.rows.0.units.4": "9" })).toEqual([["meals.breakfast.columns.4.from", "empty"]]);
    const bare = {
      ...typed(fixedCard),
      "meals.lunch.kind": "grid",
      "meals.lunch.edges": "as printed",
      "meals.lunch.columnEdges": "as printed",
    };
    const read = readCard(bare, "odile");
    expect(!read.ok && read.problems.map((p) => p.field)).toEqual(["meals.lunch.columns.0.from", "meals.lunch.rows.0.units.0"]);
  });

  it("wants all of a background dose that has a name, and none where nothing is typed", () => {
    const read = readCard({ ...typed(fixedCard), "background.0.insulin.name": "insulin glargine" }, "odile");
    expect(!read.ok && read.problems.map((p) => p.field)).toEqual([
      "background.0.insulin.unitsPerMl",
      "background.0.insulin.kind",
      "background.0.units",
      "background.0.at",
    ]);
  });

  it("passes over a row in which nothing was typed", () => {
    const draft = { ...typed(bandsCard), "meals.breakfast.bands.6.from": "", "meals.breakfast.bands.6.call": "no" };
    expect(readCard(draft, "odile")).toEqual({ ok: true, card: bandsCard });
  });

  it("refuses a hundred and more units beyond any pen", () => {
    const read = readCard({ ...typed(fixedCard), "meals.lunch.units": "500" }, "odile");
    expect(!read.ok && read.problems).toEqual([{ field: "meals.lunch.units", got: "500", why: "too large", most: 160 }]);
  });
});

describe("differences", () => {
  it("are none between a card and its copy, whatever the order of its fields", () => {
    const turned = Object.fromEntries(Object.entries(bandsCard).reverse());
    expect(differences(bandsCard, turned)).toEqual([]);
  });

  it("name a missing row by its place", () => {
    const breakfast = bandsCard.meals.breakfast;
    if (breakfast?.kind !== "bands") throw new Error("no bands");
    const shorter = { ...bandsCard, meals: { ...bandsCard.meals, breakfast: { ...breakfast, bands: breakfast.bands.slice(0, 3) } } };
    expect(differences(bandsCard, shorter)).toEqual([{ field: "meals.breakfast.bands.3", first: "filled in", second: null }]);
  });
});
