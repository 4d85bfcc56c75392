// Whatever may be said in a low and on an ill day is heard: a phrase with a word that nobody wrote down is left to the buttons, and a strip is read at the basin.
import { readFile } from "node:fs/promises";
import { describe, expect, it } from "vitest";
import type { Intent } from "#events/intent.ts";
import { lexiconOf, waysToSay } from "#speech/ear/lexicon.ts";
import { readManifest } from "#speech/ear/manifest.ts";
import { offers } from "#walk/offers.ts";
import { labelOf } from "#words/en/labels.ts";
import { inWords } from "#words/numbers.ts";
import { reviewedTables } from "../../kit/reviewed-ill.ts";

const folder = new URL("../../../public/ear/", import.meta.url);
const manifest = readManifest(JSON.parse(await readFile(new URL("ear.json", folder), "utf8")));
const lexicon = lexiconOf(await readFile(new URL("words.tsv", folder), "utf8"), manifest.phones);
const OWN: readonly Intent["do"][] = [
  "danger signs",
  "read strip",
  "no ketone strips",
  "heard ill advice",
  "finish ill",
  "no meter",
  "took sugar",
  "read word",
];
const wordsOf = (text: string) =>
  text
    .replace(/\d+/g, (n) => inWords(n, "en-US"))
    .toLowerCase()
    .replace(/-/g, " ")
    .replace(/[^a-z' ]/g, "")
    .split(" ")
    .filter(Boolean);

const tables = reviewedTables();
const said = tables.flatMap((t) =>
  offers(t.state, t.now).flatMap((o) =>
    o.offer === "press" && OWN.includes(o.intent.do) ? [{ intent: o.intent, label: labelOf(o.intent, t.state) }] : [],
  ),
);

describe("what may be said in a low and on an ill day", () => {
  it("is every answer of both", () => expect(new Set(said.map(({ intent }) => intent.do)).size).toBe(OWN.length));
  it.each([...new Set(said.map(({ label }) => label.shown))])("has a phrase whose every word is known: %s", (shown) => {
    const phrases = said.find(({ label }) => label.shown === shown)?.label.said ?? [];
    expect(phrases.some((phrase) => waysToSay(wordsOf(phrase), lexicon).length > 0)).toBe(true);
  });
  it("never means two things on one screen", () => {
    for (const t of tables) {
      const here = offers(t.state, t.now).flatMap((o) =>
        o.offer === "press" && OWN.includes(o.intent.do) ? labelOf(o.intent, t.state).said : [],
      );
      expect(here.filter((phrase, i) => here.indexOf(phrase) !== i)).toEqual([]);
    }
  });
});
