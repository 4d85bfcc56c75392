import { readFile } from "node:fs/promises";
import { describe, expect, it } from "vitest";
import { spokenOffers } from "#app/spoken-offers.ts";
import { expected } from "#speech/ear/answers.ts";
import { lexiconOf } from "#speech/ear/lexicon.ts";
import { readManifest } from "#speech/ear/manifest.ts";
import { understand } from "#speech/understand.ts";
import { GUARDS } from "#walk/guards.ts";
import { offers } from "#walk/offers.ts";
import { sayInjected } from "#words/en/daybook.ts";
import { PRACTICE } from "#words/en/practice.ts";
import { sayWalk } from "#words/en/steps.ts";
import { bring, me, odileAt, walk } from "../../kit/explore/at-table.ts";
import type { Table } from "../../kit/table.ts";

const atWindow = (t: Table = odileAt("inject")): Table => {
  t.send({ do: "button is down" });
  t.pass(10);
  return t.send({ do: "wait is over" });
};
const said = (t: Table): string => (sayWalk(t.state, t.now, GUARDS)?.lines ?? []).join(" ");
const hears = (t: Table, text: string) => understand({ text, alternatives: [] }, spokenOffers(offers(t.state, t.now), t.state).offers);
const stored = (t: Table) => t.facts.flatMap((f) => (f.readable && f.event.type === "injected" ? [f.event] : []));
const left = (text: string, via: "touch" | "voice" = "touch") =>
  ({ do: "give number", slot: "left in window", text, via, helper: null }) as const;

describe("pressing", () => {
  it("goes on until the button stops, and names the window to nobody who does not see it", () => {
    expect(said(odileAt("inject"))).toBe("Straight in. Press until 0 and hold.");
    const t = odileAt("dial", {}, { dialBy: "counts twice" });
    const count = { do: "give number", slot: "dial", text: "6", via: "touch", helper: null } as const;
    t.send(count, { do: "agree number" }, count);
    if (t.step() === "dial") t.send({ do: "agree number" });
    expect(said(bring(t, "inject"))).toBe("Straight in. Press until it stops and hold.");
  });
});

describe("the window after the needle", () => {
  it("is asked for its number, and neither the question nor a yes gives it away", () => {
    const t = atWindow();
    expect(said(t)).toBe("What does the window show?");
    expect(said(t)).not.toMatch(/zero|\b0\b|nought/i);
    for (const word of ["yes", "yes it is", "that is right", "correct"]) expect(hears(t, word).kind).toBe("nothing");
  });

  it("takes nought in one press", () => {
    const t = atWindow().send({ do: "window is at zero" });
    expect(t.step()).toBe("put away");
    expect(stored(t)).toMatchObject([{ units: 6, left: 0, certain: true, known: "read" }]);
  });

  it("hears nought as a number, and reads it back before anything is stored", () => {
    const t = atWindow();
    for (const word of ["zero", "zero units", "0"]) expect(hears(t, word)).toMatchObject({ kind: "number", text: "0" });
    t.send(left("0", "voice"));
    expect(said(t)).toBe("0 units. Right?");
    expect(stored(t)).toEqual([]);
    t.send({ do: "agree number" });
    expect(stored(t)).toMatchObject([{ units: 6, left: 0, certain: true, known: "read" }]);
  });

  it("takes another number off the dose and tells what to do; a number above the dose is asked again", () => {
    const t = atWindow().send(left("8"));
    expect(t.try({ do: "agree number" }).refusal).toEqual({ no: "window shows more than was dialled", left: 8, dialled: 6 });
    expect(said(t)).toBe("What does the window show?");
    t.send(left("2"), { do: "agree number" });
    expect(stored(t)).toMatchObject([{ units: 4, left: 2, certain: true, known: "read" }]);
    expect(walk(t).mishap).toBe("number left in the window");
  });
});

describe("the answers at the window", () => {
  it("are words that the ear knows, and so are those of practice", async () => {
    const folder = new URL("../../../public/ear/", import.meta.url);
    const { phones } = readManifest(JSON.parse(await readFile(new URL("ear.json", folder), "utf8")));
    const lexicon = lexiconOf(await readFile(new URL("words.tsv", folder), "utf8"), phones);
    const heard = (t: Table) => spokenOffers(offers(t.state, t.now), t.state).offers;
    const practice = { id: "practice", phrases: [PRACTICE.title.toLowerCase(), PRACTICE.start.toLowerCase()] };
    for (const list of [heard(atWindow()), heard(atWindow().send({ do: "window not seen" })), [practice]])
      expect(expected({ offers: list }, lexicon).unheard).toEqual([]);
  });
});

describe("a window that nobody sees", () => {
  const unseen = () => atWindow().send({ do: "window not seen" });

  it("has its button felt, by a question with two answers", () => {
    expect(said(unseen())).toBe("Is the button flat, or does it stand out?");
  });

  it("is the whole dose where the button is flat, and the book says how that is known", () => {
    const t = unseen().send({ do: "button feels", how: "flat" });
    expect(t.step()).toBe("put away");
    const [event] = stored(t);
    expect(event).toMatchObject({ units: 6, left: 0, certain: true, known: "felt" });
    expect(event && sayInjected(event, null)).toContain("The button was felt, the window not read.");
  });

  it.each([
    ["standing out", "number left in the window"],
    ["not sure", "not sure"],
  ] as const)("counts as a dose of unknown size where it is %s, with the advice for it", (how, mishap) => {
    const t = unseen().send({ do: "button feels", how });
    expect(stored(t)).toMatchObject([{ units: null, left: null, certain: false }]);
    expect(walk(t).mishap).toBe(mishap);
    expect(said(t)).toContain("Do not inject again.");
    expect(me(t).doses).toHaveLength(1);
  });

  it("is not asked for at all of somebody who dials by clicks alone", () => {
    const t = odileAt("dial", {}, { dialBy: "counts twice" });
    const dialled = { do: "give number", slot: "dial", text: "6", via: "touch", helper: null } as const;
    t.send(dialled, { do: "agree number" }, dialled, { do: "take spot" }, { do: "skin cleaned", how: "clean without a wipe" });
    expect(said(atWindow(t))).toBe("Is the button flat, or does it stand out?");
  });

  it("is felt again, and not asked for, when the walk was left and taken up", () => {
    const t = unseen();
    t.send({ do: "leave" }, { do: "turn to", person: "odile" }, { do: "needle went in", answer: "yes" });
    expect(said(t)).toBe("Is the button flat, or does it stand out?");
  });
});
