import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type SpokenOffer, type Understood, understand, vocabularyOf } from "#speech/understand.ts";

const yes: SpokenOffer = { id: "agree", phrases: ["yes", "that is right"] };
const no: SpokenOffer = { id: "change", phrases: ["no", "change it", "no change it"], refuses: true };
const wrong: SpokenOffer = { id: "something-wrong", phrases: ["something is wrong"] };
const again: SpokenOffer = { id: "again", phrases: ["again", "say it again"] };
const reading: SpokenOffer = { id: "reading", number: true };
const dial: SpokenOffer = { id: "dial", number: true, unit: "units" };
const hear = (text: string, offers: readonly SpokenOffer[], alternatives: string[] = []): Understood =>
  understand({ text, alternatives }, offers);
const nothing = { kind: "nothing" };

describe("a phrase of a present offer", () => {
  it("is taken whatever the case, the punctuation and the fillers", () => {
    for (const text of ["yes", "Yes.", "um, YES please", "yes yes"])
      expect(hear(text, [yes, no])).toEqual({ kind: "offer", id: "agree", phrase: "yes" });
    expect(hear("Something is, um, wrong!", [wrong])).toEqual({ kind: "offer", id: "something-wrong", phrase: "something is wrong" });
    expect(hear("the again", [again])).toMatchObject({ kind: "offer", id: "again" });
  });

  it("is taken as the longest phrase that was said", () => {
    expect(hear("no change it", [yes, no])).toEqual({ kind: "offer", id: "change", phrase: "no change it" });
  });
});

describe("what is not a whole phrase of a present offer", () => {
  it("is turned away, also when a phrase is part of it", () => {
    for (const text of [
      "yesterday",
      "yes I think so",
      "not yes",
      "oh no it is not that",
      "yeah",
      "y e s",
      "agai",
      "nothing is wrong",
      "something wrong is",
    ]) {
      expect([text, hear(text, [yes, no, wrong, again])]).toEqual([text, nothing]);
    }
  });

  it("is turned away when the offer is not there at this step", () => {
    expect(hear("say it again", [yes, no])).toEqual(nothing);
    expect(hear("one eighty", [yes, no])).toEqual(nothing);
    expect(hear("yes", [])).toEqual(nothing);
  });

  it("never becomes an answer out of silence", () => {
    for (const text of ["", "  ", "...", "um", "please"]) expect(hear(text, [yes, no, reading], ["yes"])).toEqual(nothing);
  });

  it("never becomes an answer through a phrase that is all filler", () => {
    expect(hear("um", [{ id: "empty", phrases: ["the", ""] }])).toEqual(nothing);
  });
});

describe("no", () => {
  const refused = { kind: "offer", id: "change" };
  it("wins over yes, in any order", () => {
    for (const text of ["yes no", "no yes", "yes, no, yes", "yes yes change it", "that is right no"])
      expect(hear(text, [yes, no])).toMatchObject(refused);
  });

  it("wins over a number", () => {
    for (const text of ["no fifty", "fifty no", "one fifty, no, fifteen", "six units no"])
      expect(hear(text, [yes, no, dial])).toMatchObject(refused);
  });

  it("wins in every order of yes, no and numbers", () => {
    const words = fc.array(fc.constantFrom("yes", "that is right", "one eighty", "again"), { maxLength: 4 });
    fc.assert(
      fc.property(words, words, (before, after) => {
        expect(hear([...before, "no", ...after].join(" "), [yes, no, again, reading])).toMatchObject(refused);
      }),
    );
  });

  it("makes a yes doubtful when the recogniser also guessed no", () => {
    expect(hear("yes", [yes, no], ["yes", "no"])).toEqual({ kind: "ask which", ids: ["agree", "change"] });
    expect(hear("no", [yes, no], ["yes"])).toMatchObject(refused);
  });
});

describe("a number", () => {
  it("is taken where a number is asked for", () => {
    expect(hear("one eighty", [yes, no, reading])).toEqual({ kind: "number", id: "reading", text: "180" });
    expect(hear("seven and a half", [dial])).toEqual({ kind: "number", id: "dial", text: "7.5" });
  });

  it("is taken with its unit only where that unit is asked for", () => {
    expect(hear("six units", [dial])).toEqual({ kind: "number", id: "dial", text: "6" });
    expect(hear("six grams", [dial])).toEqual(nothing);
    expect(hear("six units", [reading])).toEqual(nothing);
  });

  it("is not taken out of two", () => {
    expect(hear("one fifty ... fifteen", [reading])).toEqual({ kind: "two numbers", texts: ["150", "15"] });
    expect(hear("one fifty, no, fifteen", [reading])).toEqual({ kind: "two numbers", texts: ["150", "15"] });
    expect(hear("fifty or fifteen", [yes, no, reading])).toEqual({ kind: "two numbers", texts: ["50", "15"] });
  });

  it("is doubtful when the recogniser also guessed another", () => {
    expect(hear("fifteen", [reading], ["fifty", "fifteen"])).toEqual({ kind: "two numbers", texts: ["15", "50"] });
    expect(hear("one eighty", [reading], ["180", "one eight zero", "one ate tea"])).toEqual({ kind: "number", id: "reading", text: "180" });
  });

  it("is never found among the other guesses alone", () => {
    expect(hear("fiftee", [reading], ["fifteen"])).toEqual(nothing);
  });

  it("with another answer beside it asks which is meant", () => {
    expect(hear("yes fifty", [yes, no, reading])).toEqual({ kind: "ask which", ids: ["agree", "reading"] });
  });

  it("is never near: whatever salad is heard, a number comes out only if the number grammar reads it", () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...vocabularyOf([yes, again, reading]), "oh", "fiftee"), { maxLength: 5 }), (salad) => {
        const found = hear(salad.join(" "), [yes, again, reading]);
        if (found.kind === "number") expect(hear(salad.join(" "), [reading])).toEqual(found);
      }),
    );
  });
});

describe("two answers at once", () => {
  it("ask which is meant", () => {
    expect(hear("yes again", [yes, again])).toEqual({ kind: "ask which", ids: ["agree", "again"] });
  });

  it("ask which, also when one phrase belongs to two offers", () => {
    expect(
      hear("next", [
        { id: "a", phrases: ["next"] },
        { id: "b", phrases: ["Next"] },
      ]),
    ).toEqual({ kind: "ask which", ids: ["a", "b"] });
    expect(hear("half", [{ id: "ate", phrases: ["half"] }, reading])).toEqual({ kind: "offer", id: "ate", phrase: "half" });
    expect(hear("fifty", [{ id: "spoken-fifty", phrases: ["fifty"] }, reading])).toEqual({
      kind: "ask which",
      ids: ["spoken-fifty", "reading"],
    });
  });
});

describe("the vocabulary of the present offers", () => {
  it("holds every phrase, and the number words only where a number is asked for", () => {
    expect(vocabularyOf([yes, no])).toEqual(["yes", "that is right", "no", "change it", "no change it"]);
    expect(vocabularyOf([yes, reading])).toContain("hundred");
  });
});
