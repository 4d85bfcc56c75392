import { describe, expect, it } from "vitest";
import { fold, foldPhrase } from "#speech/fold.ts";

describe("what was heard, made plain", () => {
  it("loses case, hyphens, punctuation and fillers at the ends", () => {
    expect(fold("Um, Forty-Two, please.")).toEqual(["forty", "two"]);
    expect(fold("  ")).toEqual([]);
    expect(fold("...")).toEqual([]);
  });

  it("keeps one mark where somebody took a breath inside", () => {
    expect(fold("fifty... fifteen")).toEqual(["fifty", "|", "fifteen"]);
    expect(fold("fifty, um, fifteen")).toEqual(["fifty", "|", "fifteen"]);
    expect(fold("150…15")).toEqual(["150", "|", "15"]);
  });

  it("never takes a figure apart", () => {
    for (const odd of [".5", "-5", "5,5", "1/2", "180mg", "7½", "5%", "1,000"]) expect(fold(odd)).toEqual([odd]);
    expect(fold("7 ½")).toEqual(["7", "½"]);
    expect(fold("5.5.")).toEqual(["5.5"]);
  });

  it("compares phrases without their breaths", () => {
    expect(foldPhrase("Something is, um, wrong!")).toEqual(["something", "is", "wrong"]);
    expect(foldPhrase("I’m not sure")).toEqual(["i'm", "not", "sure"]);
  });
});
