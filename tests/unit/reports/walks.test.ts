import { describe, expect, it } from "vitest";
import type { Happened } from "#events/happened.ts";
import type { LogRow } from "#events/log-port.ts";
import { DAY, MINUTE } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { SPAN_DAYS, walksOf, walksSpan } from "#reports/walks.ts";
import { bring, odileAlone } from "../../kit/explore/at-table.ts";
import { rowOf, rowsOf, unreadable } from "./rows.ts";

const NOW: Stamp = { wall: Date.UTC(2026, 5, 30, 17), mono: 100 * DAY, boot: "b", zone: "America/Chicago", offset: -300 };
const ago = (days: number, seconds = 0): Stamp => {
  const ms = seconds * 1000 - days * DAY;
  return { ...NOW, wall: NOW.wall + ms, mono: NOW.mono + ms };
};

class Book {
  readonly rows: LogRow[] = [];
  private walks = 0;

  put(at: Stamp, event: Happened, walk: string | null, person = "odile"): void {
    this.rows.push(rowOf(this.rows.length + 1, at, person, walk, event));
  }

  /** A meal walk that many days ago, its facts at seconds after its opening. */
  walk(days: number, facts: readonly (readonly [number, Happened])[], person = "odile"): this {
    const id = `w${++this.walks}`;
    this.put(ago(days), { type: "walk opened", kind: "meal", meal: "lunch" }, id, person);
    for (const [seconds, event] of facts) this.put(ago(days, seconds), event, id, person);
    return this;
  }

  /** One that takes so many seconds to the needle, and is walked to its end. */
  whole(days: number, seconds: number): this {
    return this.walk(days, [
      [seconds, { type: "button pressed down" }],
      [seconds + 60, { type: "walk ended", how: "whole walk" }],
    ]);
  }

  counted = () => walksOf(this.rows, "odile", NOW);
}

const left = (step: string, why: "stopped by the person" | "meal not ready" = "stopped by the person"): Happened => ({
  type: "walk left",
  step,
  why,
});
const slip = (step: "dial" | "taken" | "pen", detail: string | null = null): Happened => ({
  type: "near miss",
  step,
  what: "something",
  detail,
});

describe("how the walks go", () => {
  it("counts the walks that were begun, and those that were walked to the end", () => {
    const book = new Book()
      .whole(1, 300)
      .whole(2, 300)
      .walk(3, [[60, left("pen")]]);
    expect(book.counted()).toMatchObject({ opened: 3, whole: 2 });
  });

  it("counts where they were stopped by the person, the most frequent first, and tells what comes again and again", () => {
    const book = new Book();
    for (const day of [1, 2, 3]) book.walk(day, [[60, left("pen")]]);
    book.walk(4, [
      [60, left("reading")],
      [90, left("pen")],
    ]);
    // A meal that is not ready is nobody's trouble with the walk.
    book.walk(5, [[60, left("plate", "meal not ready")]]);
    expect(book.counted().stops).toEqual([
      { step: "pen", times: 4 },
      { step: "reading", times: 1 },
    ]);
    expect(book.counted().repeated).toEqual([{ step: "pen", times: 4 }]);
    const twice = new Book().walk(1, [[60, left("dial")]]).walk(2, [[60, left("dial")]]);
    expect(twice.counted().repeated).toEqual([]);
  });

  it("counts each answer of not being sure once, apart for the needle and for the dose before", () => {
    const book = new Book()
      .walk(1, [[60, { type: "needle question answered", wentIn: "not sure" }]])
      .walk(2, [[60, { type: "needle question answered", wentIn: "yes" }]])
      .walk(3, [[60, { type: "mishap opened", kind: "not sure" }]])
      .walk(4, [[60, slip("taken", "do not know")]])
      .walk(5, [[60, slip("taken", "yes")]]);
    expect(book.counted().notSure).toEqual({ needle: 2, taken: 1 });
    // Not knowing is no slip; a second dose that was stopped is one.
    expect(book.counted().caught).toEqual([{ step: "taken", times: 1 }]);
  });

  it("counts the slips that were caught, by step", () => {
    const book = new Book()
      .walk(1, [
        [60, slip("dial")],
        [70, slip("dial")],
      ])
      .walk(2, [[60, slip("pen")]]);
    expect(book.counted().caught).toEqual([
      { step: "dial", times: 2 },
      { step: "pen", times: 1 },
    ]);
  });

  it("tells apart what was caught from what was cut short and went on", () => {
    const cut = (step: "wash" | "skin" | "inject", what: string): Happened => ({ type: "near miss", step, what, detail: null });
    const book = new Book()
      .walk(1, [
        [60, cut("skin", "drying cut short")],
        [70, slip("dial")],
      ])
      .walk(2, [
        [60, cut("skin", "drying cut short")],
        [70, cut("inject", "needle out early")],
      ]);
    expect(book.counted()).toMatchObject({
      caught: [{ step: "dial", times: 1 }],
      cut: [
        { what: "drying cut short", times: 2 },
        { what: "needle out early", times: 1 },
      ],
    });
  });

  it("looks at this person and this span alone", () => {
    const book = new Book()
      .walk(SPAN_DAYS + 1, [
        [60, left("pen")],
        [70, slip("dial")],
      ])
      .walk(1, [[60, left("pen")]], "bram")
      .walk(SPAN_DAYS - 1, [[60, left("dial")]]);
    book.rows.push(unreadable(99, NOW.wall - DAY));
    expect(book.counted()).toMatchObject({ opened: 1, stops: [{ step: "dial", times: 1 }], caught: [] });
    const { from, to } = walksSpan(NOW);
    expect([NOW.wall - from, to > NOW.wall]).toEqual([2 * SPAN_DAYS * DAY, true]);
  });

  it("counts no walk but a meal's", () => {
    const book = new Book();
    book.put(ago(1), { type: "walk opened", kind: "low", meal: null }, "low");
    book.put(ago(1, 60), left("low"), "low");
    expect(book.counted()).toMatchObject({ opened: 0, stops: [] });
  });
});

describe("how long a walk takes", () => {
  it("is the middle one of at least five, to the needle", () => {
    const book = new Book();
    for (const [i, minutes] of [4, 20, 5, 6, 7].entries()) book.whole(i + 1, minutes * 60);
    expect(book.counted().minutes.now).toBeCloseTo(6, 6);
    book.whole(6, 7 * 60);
    expect(book.counted().minutes.now).toBeCloseTo(6.5, 6);
    const four = new Book().whole(1, 300).whole(2, 300).whole(3, 300).whole(4, 300);
    expect(four.counted().minutes.now).toBeNull();
  });

  it("leaves out the waits that the tablet counts, and walks that were disturbed or over a start", () => {
    const book = new Book();
    for (let day = 1; day <= 5; day++)
      book.walk(day, [
        [10, { type: "wait began", for: "wash", ms: 20_000 }],
        [70, { type: "hands washed", how: "counted", reason: null }],
        [200, { type: "wait began", for: "skin", ms: 20_000 }],
        [260, { type: "skin dry" }],
        [300, { type: "button pressed down" }],
        [300, { type: "wait began", for: "hold", ms: 10_000 }],
        [900, { type: "wait ended", for: "hold" }],
      ]);
    expect(book.counted().minutes.now).toBeCloseTo((300 - 120) / 60, 6);
    for (const disturbed of [
      left("pen"),
      { type: "low began", because: "reading" },
      { type: "mishap opened", kind: "feeling ill" },
    ] as const)
      for (let i = 0; i < 9; i++)
        book.walk(6, [
          [10, disturbed],
          [3000, { type: "button pressed down" }],
        ]);
    book.put(ago(7), { type: "walk opened", kind: "meal", meal: "lunch" }, "over a start");
    book.put({ ...ago(7, 5000), boot: "another" }, { type: "button pressed down" }, "over a start");
    expect(book.counted().minutes.now).toBeCloseTo(3, 6);
  });

  const spans = (before: number, now: number) => {
    const book = new Book();
    for (let i = 1; i <= 5; i++) book.whole(SPAN_DAYS + i, before);
    for (let i = 1; i <= 5; i++) book.whole(i, now);
    return book.counted();
  };

  it("grows when it is longer by half and by two minutes, and not before", () => {
    expect(spans(6 * 60, 9 * 60)).toMatchObject({ minutes: { now: 9, before: 6 }, growing: true });
    expect(spans(6 * 60, 9 * 60 - 1).growing).toBe(false);
    expect(spans(60, 3 * 60).growing).toBe(true);
    expect(spans(60, 3 * 60 - 1).growing).toBe(false);
    expect(spans(9 * 60, 6 * 60).growing).toBe(false);
  });

  it("does not grow beside too few walks", () => {
    const book = new Book();
    for (let i = 1; i <= 4; i++) book.whole(SPAN_DAYS + i, 60);
    for (let i = 1; i <= 5; i++) book.whole(i, 30 * 60);
    expect(book.counted()).toMatchObject({ minutes: { before: null }, growing: false });
  });
});

describe("the real walk in the book", () => {
  it("gives the counts that its answers mean", () => {
    const t = bring(odileAlone(), "pen");
    const began = t.now;
    t.pass(MINUTE / 1000);
    t.send({ do: "leave" }, { do: "turn to", person: "odile" });
    const taken = t.step();
    bring(t, "dial");
    t.send({ do: "give number", slot: "dial", text: "9", via: "touch", helper: null });
    t.try({ do: "agree number" });
    bring(t, "inject").send({ do: "button is down" });
    t.pass(10);
    t.send({ do: "wait is over" }, { do: "window not seen" }, { do: "button feels", how: "not sure" });
    const walks = walksOf(rowsOf(t.facts), "odile", t.now);
    expect(taken).not.toBe("kitchen");
    expect(began.wall).toBeLessThan(t.now.wall);
    expect(walks).toMatchObject({
      opened: 1,
      stops: [{ step: "pen", times: 1 }],
      notSure: { needle: 1, taken: 0 },
      caught: [{ step: "dial", times: 1 }],
      minutes: { now: null, before: null },
    });
  });
});
