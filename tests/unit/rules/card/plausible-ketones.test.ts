import { describe, expect, it } from "vitest";
import type { DoseCard } from "#events/card.ts";
import type { KetoneRule } from "#events/ill-rules.ts";
import { alarmsOf } from "#rules/card/plausible.ts";
import { sayAlarm } from "#words/en/drawer/alarms.ts";
import { ketoneCard, plusCard, stripCard } from "../../../kit/cards.ts";
import { fixedCard, ratioCard } from "../../../kit/people.ts";

const said = (card: DoseCard) => alarmsOf(card, null).map(sayAlarm);
const blood = (over: Partial<KetoneRule>, card: DoseCard = fixedCard): DoseCard => ({
  ...card,
  ketones: { test: "blood", from: null, whenIll: true, lines: [{ from: 1.5, says: null, call: "clinic" }], ...over },
});

describe("ketones on a card that was typed in", () => {
  it("are asked about in nothing where they are as published sheets print them", () => {
    for (const card of [fixedCard, ketoneCard, stripCard, plusCard, blood({ from: 14 }, ratioCard)]) expect(said(card)).toEqual([]);
  });

  it("at a glucose in the other unit, or one that no sheet names, are asked about", () => {
    expect(said(blood({ from: 14 }))).toContain("The ketone check at 14 looks like the other glucose unit.");
    expect(said(blood({ from: 140 }))).toEqual(["Ketones: a test from 140 is unusual."]);
    expect(said(blood({ from: 240 }, ratioCard))).toContain("The ketone check at 240 looks like the other glucose unit.");
  });

  // Sheets print 240 mg/dL to 15 mmol/L; how far around them nothing is asked is our choice, no source.
  it("are asked about from 179 mg/dL down and 361 up, 9.9 mmol/L down and 20.1 up", () => {
    const of = (from: number, card?: DoseCard) => said(blood({ from }, card));
    expect([of(180), of(360), of(10, ratioCard), of(20, ratioCard)]).toEqual([[], [], [], []]);
    const unusual = [of(179), of(361), of(9.9, ratioCard), of(20.1, ratioCard)].flat();
    expect(unusual).toEqual([179, 361, 9.9, 20.1].map((from) => `Ketones: a test from ${from} is unusual.`));
  });

  it("whose point was forgotten are asked about: 0.6 typed as 6", () => {
    const lines = [{ from: 6, says: null, call: "clinic" as const }];
    expect(said(blood({ lines }))).toContain("Ketones: a line from 6. Is a point missing?");
    expect(said(blood({ lines: [{ from: 1.5, says: null, call: "clinic" }, ...lines] }))).toEqual([
      "Ketones: a line from 6. Is a point missing?",
    ]);
  });

  it("whose lines do not rise are asked about", () => {
    const lines = [
      { from: 1.5, says: null, call: "clinic" as const },
      { from: 0.6, says: "Drink.", call: "no" as const },
    ];
    expect(said(blood({ lines }))).toEqual(["Ketones: a line from 0.6 millimoles follows 1.5 millimoles."]);
    const twice = lines.map((line) => ({ ...line, from: 1.5, call: "clinic" as const }));
    expect(said(blood({ lines: twice }))).toEqual(["Ketones: a line from 1.5 millimoles follows 1.5 millimoles."]);
  });

  // Every published sheet with a number calls somebody at 1.5 mmol/L; with a strip at moderate.
  it("that call nobody where every published sheet does are asked about", () => {
    expect(said(blood({ lines: [{ from: 0.6, says: "Drink.", call: "no" }] }))).toEqual(["Ketones: nobody is called at 1.5 millimoles."]);
    expect(said(blood({ lines: [{ from: 2, says: null, call: "clinic" }] }))).toEqual(["Ketones: nobody is called at 1.5 millimoles."]);
    expect(
      said({
        ...stripCard,
        ketones: { ...blood({}).ketones, test: "urine words", from: 240, whenIll: true, lines: [{ from: 4, says: null, call: "clinic" }] },
      }),
    ).toEqual(["Ketones: nobody is called at Moderate."]);
  });
});
