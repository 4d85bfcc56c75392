import { describe, expect, it } from "vitest";
import { DEFAULT_BODY } from "#rules/body/area.ts";
import { bodyChart, type ChartQuestion } from "#rules/body/chart.ts";
import { at, used } from "../../../kit/bodies.ts";

const ask = (own: Partial<ChartQuestion> = {}) =>
  bodyChart({
    region: "belly",
    side: "left",
    body: DEFAULT_BODY,
    uses: [],
    noGo: [],
    restDays: 28,
    navelMm: 51,
    here: null,
    apartMm: 0,
    ...own,
  });

describe("the body chart", () => {
  it("has the person's own left on the left, on the front and on the back", () => {
    for (const region of ["belly", "buttock", "thigh"] as const) {
      const x = (side: "left" | "right") => {
        const chart = ask({ region, side, here: at(region, side, 60, 90) });
        return (chart.marks.find(({ kind }) => kind === "here")?.xMm ?? Number.NaN) - chart.widthMm / 2;
      };
      expect(x("left")).toBeLessThan(0);
      expect(x("right")).toBe(-x("left"));
    }
  });

  it("leads from the outer edge of the arm towards the back", () => {
    const x = (side: "left" | "right", outMm: number) =>
      Math.round(ask({ region: "arm", side, here: at("arm", side, outMm, 120) }).marks[0]?.xMm ?? Number.NaN);
    expect([x("left", 0), x("left", 34), x("right", 0), x("right", 34)]).toEqual([25, 59, 119, 85]);
  });

  it("has the navel in the middle as a place that is never used, and down below it", () => {
    const chart = ask({ here: at("belly", "left", 51, 34) });
    expect(chart.marks).toEqual([
      { xMm: 250, yMm: 120, kind: "never", radiusMm: 51, daysAgo: null, place: "navel" },
      { xMm: 199, yMm: 154, kind: "here", radiusMm: 0, daysAgo: null, place: null },
    ]);
  });

  it("tells resting uses from old ones, with whole days", () => {
    const uses = [used(at("belly", "left", 68, 0), 12.9), used(at("belly", "right", 68, 0), 28)];
    expect(
      ask({ uses })
        .marks.slice(1)
        .map(({ kind, daysAgo }) => [kind, daysAgo]),
    ).toEqual([
      ["rest", 12],
      ["old", 28],
    ]);
  });

  it("shows only what lies on its own side, or on both sides of the belly", () => {
    const uses = [used(at("thigh", "right", 34, 120), 1), used(at("thigh", "left", 34, 120), 2), used(at("belly", "left", 68, 0), 3)];
    const noGo = [{ id: "m", spot: at("thigh", "right", 17, 200), radiusMm: 5, kind: "mole" } as const];
    expect(ask({ uses, noGo, region: "thigh", side: "right" }).marks.map(({ place, daysAgo }) => place ?? daysAgo)).toEqual(["mole", 1]);
    expect(ask({ uses, noGo, region: "thigh", side: "left" }).marks.map(({ daysAgo }) => daysAgo)).toEqual([2]);
  });

  it("leaves out older uses that would cover a newer one or the next spot", () => {
    const uses = [used(at("belly", "left", 68, 60), 1), used(at("belly", "left", 85, 60), 2), used(at("belly", "right", 68, 60), 3)];
    const here = at("belly", "right", 85, 60);
    const days = (apartMm: number) =>
      ask({ uses, here, apartMm })
        .marks.slice(1)
        .map(({ daysAgo }) => daysAgo);
    expect([days(20), days(0)]).toEqual([
      [null, 1],
      [null, 1, 2, 3],
    ]);
  });

  it("leaves out uses whose days would cover the word of a place that is never used", () => {
    expect(ask({ uses: [used(at("belly", "left", 51, 0), 1)], apartMm: 30 }).marks.map(({ place }) => place)).toEqual(["navel"]);
  });

  it("keeps every usable spot inside the drawing", () => {
    for (const region of ["belly", "thigh", "arm", "buttock"] as const) {
      const chart = ask({ region, here: at(region, "left", 60, 90) });
      const here = chart.marks.at(-1);
      expect(here && here.xMm >= 0 && here.xMm <= chart.widthMm && here.yMm >= 0 && here.yMm <= chart.heightMm).toBe(true);
    }
  });
});
