import { describe, expect, it } from "vitest";
import { type Trial, trialOf } from "#keeping/trial.ts";
import { answerWords, askedWords } from "#words/en/drawer/trial.ts";
import { EVERY_KIND, gridCard, servingsCard } from "../../kit/cards.ts";
import { bandsCard, fixedCard, ratioCard } from "../../kit/people.ts";

const asked = (trials: readonly Trial[], meal: string) => trials.filter((t) => t.meal === meal);
const units = (t: Trial) => (t.answer.told ? t.answer.units : t.answer.why);

describe("the trial sheet", () => {
  it("asks at every edge of a table, at the low, and on every day that is not as usual", () => {
    const breakfast = asked(trialOf(bandsCard), "breakfast");
    expect(breakfast.filter((t) => t.day === "as usual").map((t) => [t.reading, units(t)])).toEqual([
      [70, "reading is low"],
      [71, 4],
      [140, 4],
      [141, 6],
      [180, 6],
      [181, 8],
      [220, 8],
      [221, 10],
      [400, 10],
    ]);
    expect(breakfast.filter((t) => t.day !== "as usual").map((t) => [t.day, units(t)])).toEqual([
      ["just after a dose", 4],
      ["at bedtime", 4],
      ["after a low", 4],
      ["after hard exercise", 4],
    ]);
  });

  it("asks for several meals where the card counts them, and every column of a grid", () => {
    const meals = (card: typeof gridCard) =>
      [...new Set(asked(trialOf(card), "breakfast").map((t) => t.grams))].sort((a, b) => (a ?? 0) - (b ?? 0));
    expect(meals(gridCard)).toEqual([30, 31, 60, 61]);
    expect(meals(servingsCard)).toEqual([30, 45, 60]);
    expect(meals(fixedCard)).toEqual([null]);
    expect(
      asked(trialOf(gridCard), "breakfast")
        .filter((t) => t.grams === 61)
        .map(units),
    ).toContain(7);
  });

  it("has no line for a meal without a dose, and asks nothing twice", () => {
    for (const [, card] of [...EVERY_KIND, ["a ratio", ratioCard] as const]) {
      const trials = trialOf(card);
      expect(asked(trials, "snack")).toEqual([]);
      const lines = trials.map((t) => askedWords(t, card.glucoseUnit));
      expect(new Set(lines).size).toBe(lines.length);
      expect(trials.some((t) => t.answer.told)).toBe(card.meals.breakfast !== null);
    }
  });

  it("says the question and the answer in sentences", () => {
    const trial = trialOf(servingsCard).find((t) => t.reading === 350 && t.day === "after a low");
    if (!trial) throw new Error("no such case");
    expect(askedWords(trial, "mg/dL")).toBe("350 mg/dL before breakfast, with 45 grams, after a low");
    expect(answerWords(trial)).toBe("5 units. 4.5 units are for 45 grams of food. No correction, because a low was treated.");
    const silent = trialOf({ ...fixedCard, largestDose: null })[1];
    expect(silent && answerWords(silent)).toBe("No dose. The card does not say the largest dose.");
  });
});
