import { readFile } from "node:fs/promises";
import { isDeepStrictEqual } from "node:util";
import { describe, expect, it } from "vitest";
import { FOODS } from "#rules/food/foods.ts";
import { expected, type Hearing, numberOfKey, numberTrie } from "#speech/ear/answers.ts";
import { decide, LIMITS } from "#speech/ear/decide.ts";
import { lexiconOf } from "#speech/ear/lexicon.ts";
import { readManifest } from "#speech/ear/manifest.ts";
import { readNumber } from "#speech/numbers.ts";
import { within } from "#speech/range.ts";
import { digitsOf, soundAlike } from "#words/numbers.ts";

const folder = new URL("../../../../public/ear/", import.meta.url);
const manifest = readManifest(JSON.parse(await readFile(new URL("ear.json", folder), "utf8")));
const lexicon = lexiconOf(await readFile(new URL("words.tsv", folder), "utf8"), manifest.phones);
const reading: Hearing = {
  offers: [
    { id: "help", phrases: ["help"] },
    { id: "number", number: true, unit: "units" },
  ],
  range: { low: 1, high: 60, step: 0.5 },
};

describe("what the ear expects", () => {
  it("writes every number so that it is read back as that number", () => {
    const ends = [...numberTrie(lexicon).ends.values()].flat();
    expect(new Set(ends.map((e) => e.key)).size).toBe(1000 + 340 - 34 + 99 - 33);
    expect(
      ends.filter(({ key, text }) => !isDeepStrictEqual(readNumber(text), { kind: "number", text: String(numberOfKey(key)) })),
    ).toEqual([]);
  });

  it("knows every answer to its question which of two, spelled as it spells them", () => {
    const texts = new Set([...numberTrie(lexicon).ends.values()].flat().map((e) => e.text));
    const ranges = [
      { low: 1.1, high: 33.3, step: 0.1 },
      { low: 0, high: 80, step: 0.5 },
      { low: 20, high: 600, step: 1 },
    ] as const;
    for (const range of ranges) {
      for (let n = range.low; n <= range.high + 1e-6; n += range.step) {
        const text = String(Math.round(n * 10) / 10);
        const partner = soundAlike(text);
        if (partner === null || !within(Number(partner), range)) continue;
        for (const one of [text, partner]) expect(texts, one).toContain(digitsOf(one).join(" "));
      }
    }
  });

  it("hears a number with its unit in every form in which it hears it without", () => {
    const grams: Hearing = { offers: [{ id: "number", number: true, unit: "grams" }], range: { low: 0, high: 250, step: 1 } };
    const said = [...expected(grams, lexicon).phrases.ends.values()].flat().filter((e) => e.text.endsWith(" grams"));
    const texts = said.map((e) => e.text);
    for (const form of ["one hundred twelve", "one hundred and twelve", "one twelve", "one one two"])
      expect(texts).toContain(`${form} grams`);
    const wanted = (key: string) => ({ kind: "number", text: String(numberOfKey(key)), unit: "grams" });
    expect(said.filter(({ key, text }) => !isDeepStrictEqual(readNumber(text), wanted(key)))).toEqual([]);
    expect(texts).not.toContain("six hundred grams");
  });

  it("gives a number with its unit that is out of range a place of its own, so that it is not heard as the one that sounds like it", () => {
    const units: Hearing = { offers: [{ id: "number", number: true, unit: "units" }], range: { low: 0, high: 80, step: 0.5 } };
    const what = expected(units, lexicon);
    const ends = [...what.phrases.ends.values()].flat();
    for (const [text, key] of [
      ["ninety units", "number 90"],
      ["eighty and a half units", "number 80.5"],
    ]) {
      expect(ends).toContainEqual({ key, text });
      expect(what.answers(key ?? "")).toBe(false);
    }
  });

  it("gives it one too where it sounds like no answer, and above a hundred where it sounds like one", () => {
    const to = (high: number): Hearing => ({ ...reading, range: { low: 0, high, step: 0.5 } });
    const ends = (high: number) => [...expected(to(high), lexicon).phrases.ends.values()].flat();
    expect(ends(80)).toContainEqual({ key: "number 91.5", text: "ninety one and a half units" });
    expect(ends(118)).toContainEqual({ key: "number 180", text: "one hundred eighty units" });
    expect(expected(to(118), lexicon).answers("number 180")).toBe(false);
  });

  it("has a place for a number where none is asked, and takes none there for an answer", () => {
    const what = expected({ offers: [{ id: "agree", phrases: ["yes"] }], range: { low: 0, high: 80, step: 0.5 } }, lexicon);
    const keys = [...what.phrases.ends.values()].flat().map((e) => e.key);
    for (const n of [0, 6, 15, 20, 50]) {
      expect(keys).toContain(`number ${n}`);
      expect(what.answers(`number ${n}`)).toBe(false);
    }
    expect(what.numbers).toBe(false);
  });

  it("takes no number with another unit for an answer", () => {
    const what = expected(reading, lexicon);
    const others = [...what.phrases.ends.values()].flat().filter((e) => /(grams?|minutes?|clicks?)$/.test(e.text));
    expect(others.map((e) => e.text)).toContain("forty two minutes");
    expect(others.filter((e) => what.answers(e.key))).toEqual([]);
  });

  it("hears half a unit, and writes it so that it is read as a half", () => {
    const ends = expected(reading, lexicon).phrases.ends;
    expect([...ends.values()].flat().some((e) => e.key === "number 0.5")).toBe(false);
    const half: Hearing = { ...reading, range: { low: 0.5, high: 60, step: 0.5 } };
    const what = expected(half, lexicon);
    const found = [...what.phrases.ends.values()].flat().filter((e) => e.key === "number 0.5");
    expect(found.length).toBeGreaterThan(0);
    for (const { text } of found) expect(readNumber(text)).toEqual({ kind: "number", text: "0.5", unit: "units" });
    const way = ["half", "a", "unit"].flatMap((word) => lexicon(word)?.[0] ?? []);
    const node = way.reduce((at, phone) => what.phrases.children[at]?.find((c) => what.phrases.phone[c] === phone) ?? -1, 0);
    expect(what.phrases.ends.get(node)?.map((e) => e.key)).toEqual(["number 0.5"]);
  });

  it("takes a number of the range for an answer and no other", () => {
    const what = expected(reading, lexicon);
    expect(["number 15", "number 4.5", "number 60", "help"].map(what.answers)).toEqual([true, true, true, true]);
    expect(["number 0", "number 61", "number 4.2", "number 150", "elsewhere yes"].map(what.answers)).toEqual([
      false,
      false,
      false,
      false,
      false,
    ]);
  });

  it("says which phrases hold a word that nobody wrote down, and hears the rest", () => {
    const what = expected({ offers: [{ id: "x", phrases: ["carry on qwertz", "carry on"] }] }, lexicon);
    expect(what.unheard).toEqual(["carry on qwertz"]);
    expect([...what.phrases.ends.values()].flat().some((e) => e.key === "x")).toBe(true);
  });

  it("gives a word that means what an answer means no place of its own beside it", () => {
    const keysOf = (phrases: string[]) =>
      [...expected({ offers: [{ id: "x", phrases }] }, lexicon).phrases.ends.values()].flat().map((e) => e.key);
    const beside = keysOf(["yes", "stop here"]);
    expect(beside).toContain("elsewhere no");
    for (const same of ["yeah", "okay", "stop"]) {
      expect(beside).not.toContain(`elsewhere ${same}`);
      expect(keysOf(["done"])).toContain(`elsewhere ${same}`);
    }
  });

  it("can hear nearly every food of the table by name", () => {
    const names = FOODS.flatMap((f) => [f.us, f.uk]);
    const { unheard } = expected({ offers: [], foods: names }, lexicon);
    expect(unheard.length / names.length).toBeLessThan(0.02);
  });
});

describe("the decision", () => {
  const what = expected(reading, lexicon);
  const heard = (key: string, score: number, text = key) => ({ key, score, text });
  const free = { score: -10, phones: 6 };
  const listened = (...together: ReturnType<typeof heard>[]) => ({ together, each: [together[0]?.key, together[0]?.key], free });

  it("understands what fits far better than anything else", () => {
    expect(decide(listened(heard("number 12", -11, "twelve"), heard("number 20", -30)), what)).toEqual({
      kind: "understood",
      text: "twelve",
    });
  });

  it("never bends a number outside the range to one inside it", () => {
    expect(decide(listened(heard("number 150", -11, "one fifty"), heard("number 15", -30)), what)).toEqual({
      kind: "turned away",
      why: "another answer",
    });
  });

  it("takes no teen for a ten outside the range, nor asks about either, however near they are", () => {
    for (const [said, near] of [
      ["number 70", "number 17"],
      ["number 80.5", "number 18.5"],
      ["number 0", "number 1"],
    ]) {
      const close = listened(heard(said ?? "", -11), heard(near ?? "", -11.1));
      expect(decide(close, what), said).toEqual({ kind: "turned away", why: "another answer" });
    }
  });

  it("offers no number outside the range when it asks which", () => {
    const near = listened(heard("number 12", -11, "twelve"), heard("number 70", -11 - LIMITS.askMargin, "seventy"));
    expect(decide(near, what)).toEqual({ kind: "ask again", texts: ["twelve"] });
  });

  it("asks which, where a teen and its ten are both possible, however sure it is", () => {
    expect(decide(listened(heard("number 15", -11, "fifteen"), heard("number 50", -90, "fifty")), what)).toEqual({
      kind: "ask again",
      texts: ["fifteen", "fifty"],
    });
  });

  it("takes a teen that was said digit by digit, since that is the answer to the question which", () => {
    for (const text of ["one five", "one five units"])
      expect(decide(listened(heard("number 15", -11, text), heard("number 50", -90, "five zero")), what)).toEqual({
        kind: "understood",
        text,
      });
    expect(decide(listened(heard("number 15", -11, "fifteen units"), heard("number 50", -90, "five zero")), what).kind).toBe("ask again");
    const wide = { answers: () => true, refuses: () => false };
    expect(decide(listened(heard("number 115", -11, "one fifteen"), heard("number 150", -90, "one fifty")), wide).kind).toBe("ask again");
    expect(decide(listened(heard("number 13.6", -11, "one three point six"), heard("number 30.6", -90)), wide).kind).toBe("understood");
    expect(decide(listened(heard("number 13.6", -11, "thirteen point six"), heard("number 30.6", -90)), wide).kind).toBe("ask again");
    expect(decide(listened(heard("number 215", -11, "two one five"), heard("number 250", -90, "two fifty")), wide).kind).toBe("understood");
  });

  it("takes nothing where the question's no may have been said, and takes the no as any other answer", () => {
    const readBack = expected(
      {
        offers: [
          { id: "yes", phrases: ["yes"] },
          { id: "no", phrases: ["no"], refuses: true },
        ],
      },
      lexicon,
    );
    const of = (best: string, other: string, margin: number) =>
      decide(listened(heard(best, -11, best), heard("elsewhere now", -11 - LIMITS.wordMargin), heard(other, -11 - margin, other)), readBack)
        .kind;
    expect(of("yes", "no", LIMITS.refusalMargin - 0.1)).toBe("ask again");
    expect(of("yes", "no", LIMITS.refusalMargin)).toBe("understood");
    expect(of("no", "yes", LIMITS.wordMargin)).toBe("understood");
  });

  it("asks again when the members differ or the margin is small", () => {
    const near = listened(heard("number 12", -11, "twelve"), heard("number 20", -11 - LIMITS.numberMargin / 2, "twenty"));
    expect(decide(near, what)).toEqual({ kind: "ask again", texts: ["twelve", "twenty"] });
    const differ = { ...listened(heard("number 12", -11, "twelve"), heard("number 20", -30, "twenty")), each: ["number 12", "number 20"] };
    expect(decide(differ, what).kind).toBe("ask again");
  });

  it("turns away other talk, other answers and nothing at all", () => {
    const talk = { ...listened(heard("help", -10 - 6 * (LIMITS.gapPerPhone + 0.1))), free };
    expect(decide(talk, what)).toEqual({ kind: "turned away", why: "other speech" });
    expect(decide(listened(heard("elsewhere yes", -11), heard("help", -30)), what)).toEqual({ kind: "turned away", why: "another answer" });
    expect(decide({ together: [], each: [], free: { score: 0, phones: 0 } }, what)).toEqual({ kind: "turned away", why: "nothing said" });
  });
});
