import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readDate, readNumber, readPhone, readTime } from "#keeping/typed.ts";
import { addDays } from "#rules/time/local.ts";

const whyOf = (read: { ok: true } | { ok: false; why: string }) => (read.ok ? "fine" : read.why);

describe("a typed number", () => {
  const span = { least: 1, most: 160, decimals: 1 };
  it("takes a point or a comma, and drops zeros that say nothing", () => {
    expect(readNumber(" 6,5 ", span)).toEqual({ ok: true, value: 6.5 });
    expect(readNumber("6.0", span)).toEqual({ ok: true, value: 6 });
    expect(readNumber("006", span)).toEqual({ ok: true, value: 6 });
  });
  it("refuses what is no number or out of bounds, each with its reason", () => {
    expect(["", "six", "6 units", "-6", "1e2", "6.", ".5", "1,000.0"].map((text) => whyOf(readNumber(text, span)))).toEqual([
      "empty",
      ...Array(7).fill("not a number"),
    ]);
    expect([whyOf(readNumber("6.25", span)), whyOf(readNumber("0", span)), whyOf(readNumber("161", span))]).toEqual([
      "too many decimals",
      "too small",
      "too large",
    ]);
  });
});

describe("a typed date", () => {
  it("is one day, however it is written in words", () => {
    for (const text of ["3 June 2026", "June 3, 2026", "Jun 3 2026", "3 jun. 2026", "3rd June 2026", "2026-06-03", " 3  June  2026 "])
      expect(readDate(text)).toEqual({ ok: true, value: "2026-06-03" });
    expect(readDate("1 Sept 2026")).toEqual({ ok: true, value: "2026-09-01" });
  });
  it("is never guessed from figures that could be two days", () => {
    for (const text of ["3/6/2026", "06.03.2026", "3-6-26", "13/6/2026"]) expect(whyOf(readDate(text))).toBe("two dates");
  });
  it("refuses days that do not exist", () => {
    for (const text of ["30 February 2026", "2026-13-01", "3 Juno 2026", "June 2026", "soon"])
      expect(whyOf(readDate(text))).toBe("not a date");
    expect(whyOf(readDate(""))).toBe("empty");
  });
  it("reads back every day of sixty years", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 21_900 }), (n) => {
        const day = addDays("2000-01-01", n);
        expect(readDate(day)).toEqual({ ok: true, value: day });
      }),
    );
  });
});

describe("a typed time", () => {
  it("is read with am and pm, or as four figures", () => {
    expect(["21:30", "9:30 pm", "9:30PM", "9 pm", "12 am", "12:15 p.m.", "05:00", "0:30"].map((text) => readTime(text))).toEqual(
      ["21:30", "21:30", "21:30", "21:00", "00:00", "12:15", "05:00", "00:30"].map((value) => ({ ok: true, value })),
    );
  });
  it("refuses a time that could be morning or evening, and what is no time", () => {
    for (const text of ["9:30", "9", "25:00", "12:60", "13 pm", "bedtime"]) expect(whyOf(readTime(text))).toBe("not a time");
    expect(whyOf(readTime(" "))).toBe("empty");
  });
});

describe("a telephone number", () => {
  it("is kept as it was typed", () => {
    expect(readPhone("555 0142")).toEqual({ ok: true, value: "555 0142" });
    expect(readPhone("+44 (0)20 7946 0018")).toEqual({ ok: true, value: "+44 (0)20 7946 0018" });
    expect(readPhone("911")).toEqual({ ok: true, value: "911" });
  });
  it("is refused when nobody could dial it", () => {
    for (const text of ["call me", "9", "--", "555-CLINIC", "0123456789 0123456789 01"])
      expect(whyOf(readPhone(text))).toBe("not a telephone number");
  });
});
