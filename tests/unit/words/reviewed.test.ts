// The sentences of the walks for when it goes wrong. Limits: 12 words and one action (access facts, own style), syllables and grade are ours;
// a patient's text is asked for at a sixth-grade level (US health agencies' guides, from memory).
import { describe, expect, it } from "vitest";
import { GUARDS } from "#walk/guards.ts";
import { frontPerson } from "#walk/offers.ts";
import { stepOf } from "#walk/state.ts";
import { sayWalk } from "#words/en/steps.ts";
import { runByChance } from "../../kit/explore/explore.ts";
import { EXPLORATIONS } from "../../kit/explore/households.ts";
import { engine } from "../../kit/explore/world.ts";
import { grade, syllables, twoActions, wordsOf } from "../../kit/plain-language.ts";
import { CLINIC_WORDS, reviewedScreens, sentencesOf } from "../../kit/reviewed-screens.ts";

const screens = reviewedScreens();
const sentences = sentencesOf(screens);
const NUMBER = /555 0142|911|999/;

describe("the measure of plain language", () => {
  it("counts syllables of the words that matter", () => {
    const known = {
      insulin: 3,
      take: 1,
      meal: 1,
      measure: 2,
      glucagon: 3,
      emergency: 4,
      watched: 1,
      needle: 2,
      pricked: 1,
      inject: 2,
      minutes: 2,
    };
    expect(Object.fromEntries(Object.keys(known).map((word) => [word, syllables(word)]))).toEqual(known);
  });

  it("finds two actions in one sentence, and takes two ways of one for one", () => {
    expect(twoActions("Wash your hands and measure again.")).toBe(true);
    expect(twoActions("Say or press the number.")).toBe(false);
  });
});

describe("every sentence for when it goes wrong", () => {
  it("there are many of them", () => expect(sentences.length).toBeGreaterThan(90));
  it.each(sentences)("is plain: %s", (sentence) => {
    expect(wordsOf(sentence).length).toBeLessThanOrEqual(12);
    for (const word of wordsOf(sentence)) expect(syllables(word), word).toBeLessThanOrEqual(4);
    expect(twoActions(sentence)).toBe(false);
    expect(sentence).not.toMatch(/\b(please|sorry|oops|invalid|valid|just|simply|should|try|IU|U|error)\b/);
  });
  it("asks for four years of school at most", () => expect(grade(sentences)).toBeLessThan(4));
});

describe("where it goes wrong", () => {
  it("there is a number to call on each screen that leads nowhere else", () => {
    const ends = screens.filter(
      ({ part, answers }) =>
        ["A low", "Something is wrong", "Insulin is in, and no meal comes", "After the meal", "An ill day"].includes(part) &&
        answers.every((a) => ["a number", "It shows HI", "It shows LO", "I understand", "Done", "Help was called"].includes(a)),
    );
    expect(ends.length).toBeGreaterThan(20);
    const overWell = (line: string) => /^The low is over|^How much of the meal|^Reading \d/.test(line);
    expect(ends.filter(({ lines }) => !lines.some(overWell) && !NUMBER.test(lines.join(" "))).map(({ when }) => when)).toEqual([]);
  });

  it("the card's own words are said wherever it has some", () => {
    const kinds = ["too much", "wrong insulin", "pen ran out", "not sure", "half eaten", "vomiting", "eaten, not injected", "cannot eat"];
    for (const kind of kinds) {
      const own = screens.filter(({ when }) => when.startsWith(`${kind}, `) && when.endsWith("the card has its own words"));
      expect(own.length, kind).toBeGreaterThan(0);
      for (const { lines, when } of own)
        expect(
          lines.some((line) => line.includes(CLINIC_WORDS)),
          when,
        ).toBe(true);
    }
  });
});

describe("the list of sentences", () => {
  const numbers = (line: string) => line.replace(/\d+/g, "#");
  const listed = new Set(screens.flatMap(({ lines }) => lines).map(numbers));

  it.each(["low", "low after insulin", "mishaps", "told in the kitchen"])("leaves out none that a run by chance says: %s", (name) => {
    const x = EXPLORATIONS.find((e) => e.name === name);
    if (!x) throw new Error(`no exploration is called ${name}`);
    const said = new Set<string>();
    for (let seed = 1; seed <= 12; seed++)
      runByChance(x, engine, seed, 200, new Set(), ({ after }) => {
        const walk = frontPerson(after.house)?.walk;
        if (!walk || walk.draft || !["low", "ill", "mishap", "needle question"].includes(stepOf(walk))) return;
        for (const line of sayWalk(after.house, after.now, GUARDS)?.lines ?? []) said.add(numbers(line));
      });
    expect(said.size).toBeGreaterThan(5);
    expect([...said].filter((line) => !listed.has(line))).toEqual([]);
  });
});
