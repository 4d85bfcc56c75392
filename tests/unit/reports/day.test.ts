import { describe, expect, it } from "vitest";
import type { LogRow } from "#events/log-port.ts";
import { HOUR, MINUTE, units } from "#events/quantity.ts";
import { dayPage } from "#reports/day.ts";
import { timeOfDay } from "#words/en/when.ts";
import { bandsCard, bram, bramPen, fixedCard, odile, odileNight, odilePen, ratioCard } from "../../kit/people.ts";
import { NOON, Table } from "../../kit/table.ts";
import { rowOf, rowsOf, unreadable } from "./rows.ts";

const table = (card = bandsCard) =>
  new Table([
    { person: odile, card, pens: [odilePen, odileNight] },
    { person: bram, card: ratioCard, pens: [bramPen] },
  ]);

/** Rows since the walk was opened, set-up left out. */
const since = (t: Table, from: number): LogRow[] => rowsOf(t.facts).filter((row) => row.seq > from);

function upToNeedle(t: Table, reading = "132") {
  t.send({ do: "open meal", person: "odile", meal: "breakfast" }, { do: "begin wait" });
  t.pass(25);
  t.send({ do: "wait is over" })
    .number("reading", reading)
    .send({ do: "exercise", hard: false }, { do: "meal is ready" }, { do: "heard dose" });
  t.send(
    { do: "pick pen", pen: "odile-meal", how: "mark" },
    { do: "insulin looks", look: "as it should be" },
    { do: "needle fitted" },
    { do: "primed", stream: true },
  );
  return t;
}

function inject(t: Table, dial = "4") {
  t.number("dial", dial);
  if (t.step() === "dial") t.send({ do: "give number", slot: "dial", text: dial, via: "touch", helper: null });
  t.send({ do: "take spot" }, { do: "skin cleaned", how: "wiped" });
  t.pass(25);
  if (t.step() === "skin") t.send({ do: "wait is over" });
  return t;
}

function clean(t: Table) {
  inject(upToNeedle(t)).send({ do: "button is down" });
  t.pass(12);
  t.send({ do: "wait is over" }, { do: "window is at zero" }, { do: "put away" });
  t.pass(6 * 60);
  return t.send({ do: "eating" }, { do: "finish" });
}

describe("a day of the book", () => {
  it("tells a clean walk in one line, with the unit of the reading", () => {
    const t = table();
    const before = t.state.lastSeq;
    const began = timeOfDay(t.now);
    clean(t);
    const { lines } = dayPage(since(t, before), "odile", t.state);
    expect(lines).toHaveLength(1);
    expect(lines[0]?.time).toBe(began);
    expect(lines[0]?.text).toMatch(/^Breakfast\. Reading 132 mg\/dL\. 4 units, (left|right) side of the belly\. Ate after 6 minutes\.$/);
  });

  it("keeps every step beneath, each in words", () => {
    const t = table();
    const before = t.state.lastSeq;
    clean(t);
    const [line] = dayPage(since(t, before), "odile", t.state).lines;
    const texts = line?.steps.map((step) => step.text) ?? [];
    expect(texts).toContain("Reading 132 mg/dL, finger, pressed.");
    expect(texts).toContain("Dialed 4 units, read on the dial.");
    expect(texts).toContain("Pen in hand: one rubber band, insulin lispro.");
    expect(texts.some((text) => text.startsWith("The card says 4 units."))).toBe(true);
    expect(texts.every((text) => !text.includes("undefined") && !text.includes("null"))).toBe(true);
  });

  it("writes no reading without its unit, in either unit", () => {
    const t = table();
    clean(t);
    const all = dayPage(rowsOf(t.facts), "odile", t.state).lines.flatMap((line) => [line.text, ...line.steps.map((step) => step.text)]);
    const readings = all.flatMap((text) => text.match(/Reading \d+(\.\d+)?[^.]*\./g) ?? []);
    expect(readings.length).toBeGreaterThan(1);
    for (const text of readings) expect(text).toMatch(/Reading [\d.]+ (mg\/dL|mmol\/L)/);
  });

  it("leaves the other person's walk off the page", () => {
    const t = table();
    const before = t.state.lastSeq;
    clean(t);
    expect(dayPage(since(t, before), "bram", t.state).lines).toEqual([]);
  });

  it("shows a row nobody can read to everybody, as possibly a dose", () => {
    const t = table();
    for (const person of ["odile", "bram"]) {
      const { lines } = dayPage([unreadable(900, NOON), unreadable(901, null)], person, t.state);
      expect(lines.map((line) => line.text)).toEqual(Array(2).fill("A row could not be read. It may hold a dose."));
      expect(lines[0]?.time).toBe("12:00 in the afternoon");
      expect(lines[1]?.time).toBe("Time not known");
    }
  });

  it("keeps a walk and an unreadable row in the order of the log", () => {
    const t = table();
    const before = t.state.lastSeq;
    clean(t);
    const rows = [...since(t, before), unreadable(t.state.lastSeq + 1, t.now.wall)];
    expect(dayPage(rows, "odile", t.state).lines.map((line) => line.kind)).toEqual(["walk", "unreadable"]);
  });

  it("puts a telephoned number before everything else", () => {
    const t = table({
      ...bandsCard,
      meals: {
        ...bandsCard.meals,
        breakfast: { kind: "bands", edges: "as printed", foodOnly: units(4), bands: [{ from: 71, to: 140, units: units(4), call: false }] },
      },
    });
    const before = t.state.lastSeq;
    t.send({ do: "open meal", person: "odile", meal: "breakfast" }, { do: "already washed" }).number("reading", "200");
    t.send({ do: "exercise", hard: false }, { do: "meal is ready" });
    t.send({ do: "give number", slot: "telephoned number", text: "5", via: "touch", helper: "Nurse Ode" });
    for (let i = 0; i < 3 && t.step() === "card" && t.state.people.odile?.walk?.told === null; i++) {
      if (t.state.people.odile?.walk?.draft?.text === "")
        t.send({ do: "give number", slot: "telephoned number", text: "5", via: "touch", helper: "Nurse Ode" });
      else t.send({ do: "agree number" });
    }
    const page = dayPage(since(t, before), "odile", t.state);
    expect(page.first.map((step) => step.text)).toEqual(["Nurse Ode gave 5 units by telephone."]);
    expect(page.lines[0]?.text).toMatch(/^Nurse Ode gave 5 units by telephone\. Breakfast\. Reading 200 mg\/dL\./);
  });

  it("shows slips as facts and never as failures", () => {
    const t = table();
    const before = t.state.lastSeq;
    upToNeedle(t);
    t.try({ do: "give number", slot: "dial", text: "8", via: "touch", helper: null });
    t.try({ do: "agree number" });
    if (t.state.people.odile?.walk?.draft?.text === "") t.try({ do: "give number", slot: "dial", text: "8", via: "touch", helper: null });
    const [line] = dayPage(since(t, before), "odile", t.state).lines;
    expect(line?.text).toContain("1 slip was noted.");
    expect(line?.steps.map((step) => step.text)).toContain("The dial showed 8, the card said 4. It was turned back.");
    const all = JSON.stringify(line);
    expect(all).not.toMatch(/fail|wrong|mistake|error/i);
  });

  it("tells a low with its readings and its sugar in order", () => {
    const t = table();
    const before = t.state.lastSeq;
    t.send({ do: "open meal", person: "odile", meal: "lunch" }, { do: "already washed" }).number("reading", "62");
    if (t.step() === "reading") t.send({ do: "give number", slot: "reading", text: "62", via: "touch", helper: null });
    t.send({ do: "took sugar", food: "glucose-tablets", grams: 16 });
    t.pass(15 * 60);
    t.number("recheck after low", "98");
    const [line] = dayPage(since(t, before), "odile", t.state).lines;
    expect(line?.text).toMatch(/^Lunch\. Reading 62 mg\/dL\. Took 16 grams of .+\. Reading 98 mg\/dL\./);
  });

  it("says of an opened needle step that it counts as taken", () => {
    const t = table();
    const before = t.state.lastSeq;
    inject(upToNeedle(t));
    expect(dayPage(since(t, before), "odile", t.state).lines[0]?.text).toContain("The needle step began. It counts as taken.");
  });

  it("says what stayed in the pen", () => {
    const t = table();
    const before = t.state.lastSeq;
    inject(upToNeedle(t)).send({ do: "button is down" });
    t.pass(12);
    t.send({ do: "wait is over" }).number("left in window", "1");
    const text = dayPage(since(t, before), "odile", t.state).lines[0]?.text;
    expect(text).toMatch(/3 units of 4 went in, .+\. 1 unit stayed in the pen\./);
  });

  it("says by how much a meal was late, by the card's own latest minute", () => {
    const t = table(fixedCard);
    const before = t.state.lastSeq;
    inject(upToNeedle(t), "6").send({ do: "button is down" });
    t.pass(12);
    t.send({ do: "wait is over" }, { do: "window is at zero" }, { do: "put away" });
    t.pass(22 * 60);
    t.send({ do: "eating" });
    expect(dayPage(since(t, before), "odile", t.state).lines[0]?.text).toContain("Ate after 22 minutes. The meal was late by 7 minutes.");
  });

  it("says when the tablet was off, and only after some hours", () => {
    const t = table();
    const at = (hours: number, boot: string) => ({ ...t.now, wall: NOON + hours * HOUR, mono: 10, boot });
    const start = { type: "tablet started" } as const;
    const rows = [
      rowOf(1, at(0, "a"), null, null, { type: "clock agreed" }),
      rowOf(2, at(1, "b"), null, null, start),
      rowOf(3, at(7.5, "c"), null, null, start),
    ];
    expect(dayPage(rows, "odile", t.state).lines.map((line) => line.text)).toEqual([
      "Day and time were agreed.",
      "The tablet started.",
      "The tablet was off from 1:00 in the afternoon to 7:30 in the evening, or not used.",
    ]);
  });

  it("keeps every sentence short enough to be read out", () => {
    const t = table();
    clean(t);
    const page = dayPage(rowsOf(t.facts), "odile", t.state);
    const texts = page.lines.flatMap((line) => [line.text, ...line.steps.map((step) => step.text)]);
    const sentences = texts.flatMap((text) => text.split(/(?<=[.?]) /));
    expect(sentences.filter((sentence) => sentence.split(" ").length > 12)).toEqual([]);
  });

  it("writes a dose taken elsewhere and one whose time is not known", () => {
    const t = table();
    const rows = [
      rowOf(1, t.now, "odile", null, { type: "dose told later", units: 6, minutesAgo: 40 }),
      rowOf(2, { ...t.now, wall: t.now.wall + MINUTE }, "odile", null, { type: "dose told later", units: null, minutesAgo: null }),
    ];
    expect(dayPage(rows, "odile", t.state).lines.map((line) => line.text)).toEqual([
      "6 units were taken elsewhere, about 40 minutes earlier.",
      "Mealtime insulin, amount not known, was taken elsewhere, at a time not known.",
    ]);
  });
});
