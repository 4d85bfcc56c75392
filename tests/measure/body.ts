import type { BodyMeasures, NoGo, Region } from "#events/spot.ts";
import { REGIONS, SIDES } from "#rules/body/area.ts";
import { denseSpots } from "#rules/body/dense.ts";
import { directions } from "#rules/body/directions.ts";
import { lattice } from "#rules/body/lattice.ts";
import { nextSpot } from "#rules/body/planner.ts";
import { siteRules } from "#rules/body/site-rules.ts";
import { sayPlace } from "#words/en/places.ts";
import { BLANK_CARE, BODIES, chance, gap } from "../kit/bodies.ts";
import { DAYS, live, marksOf } from "../kit/body-year.ts";
import { follow } from "../kit/follow-words.ts";
import { bestHexagonal, easySpots, ownSpots, PLANES } from "./body/hexagonal.ts";
import { restOfGrid, restOfQuadrants } from "./body/paper.ts";
import type { Measured, Row } from "./measured.ts";

const PER_DAY = [1, 3, 4, 6];
const PLACEMENTS = 1000;
const TOLD = 10_000;
const FIVE_YEARS = 5 * DAYS;

/** A random body between the small and the large one. */
function anyBody(next: () => number): BodyMeasures {
  const between = (key: keyof BodyMeasures) => Math.round(BODIES.small[key] + next() * (BODIES.large[key] - BODIES.small[key]));
  return {
    bellyWidthMm: between("bellyWidthMm"),
    bellyHeightMm: between("bellyHeightMm"),
    thighLengthMm: between("thighLengthMm"),
    armLengthMm: between("armLengthMm"),
    fingerMm: between("fingerMm"),
    handMm: between("handMm"),
  };
}

function years(seeds: number): { rows: Row[]; days: number; violations: number; toQuadrants: number; toGrid: number } {
  const rows: Row[] = [];
  let [days, violations, toQuadrants, toGrid] = [0, 0, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const [body, measures] of Object.entries(BODIES))
    for (const perDay of PER_DAY)
      for (let seed = 1; seed <= seeds; seed++) {
        const year = live(measures, Array<Region | null>(perDay).fill(null), seed);
        const belly = live(measures, Array<Region>(perDay).fill("belly"), seed, true);
        const [quadrants, grid] = [restOfQuadrants(measures, marksOf(chance(seed)), perDay), restOfGrid(perDay)];
        days += 2 * DAYS;
        violations += year.broken.length + belly.broken.length;
        toQuadrants = Math.min(toQuadrants, belly.shortestRest / quadrants);
        toGrid = Math.min(toGrid, belly.shortestRest / grid);
        rows.push({
          body,
          "a day": perDay,
          seed,
          "rules broken": year.broken.length + belly.broken.length,
          "shortest rest, all regions": year.shortestRest,
          "belly alone": belly.shortestRest,
          quadrants,
          grid,
        });
      }
  return { rows, days, violations, toQuadrants, toGrid };
}

function packing(seeds: number): { rows: Row[]; least: number } {
  const rows: Row[] = [];
  let least = Number.POSITIVE_INFINITY;
  for (const [body, measures] of Object.entries(BODIES))
    for (let seed = 1; seed <= seeds; seed++) {
      const next = chance(seed);
      const noGo: NoGo[] = marksOf(next);
      for (const plane of PLANES) {
        const densest = bestHexagonal(plane, measures, noGo, measures.fingerMm, PLACEMENTS, next);
        const own = ownSpots(plane, measures, noGo, measures.fingerMm).length;
        least = Math.min(least, own / densest);
        rows.push({
          body,
          seed,
          plane: plane.region === "belly" ? "belly" : `${plane.sides[0]} ${plane.region}`,
          "easy spots": easySpots(plane, measures, noGo, measures.fingerMm).length,
          spots: own,
          densest,
          ratio: round(own / densest),
        });
      }
    }
  return { rows, least };
}

/** Spots of both patterns on random bodies, told in words and followed by somebody who knows only the words. */
function told(count: number): { rows: Row[]; checked: number; wrong: number } {
  const next = chance(5);
  let [checked, wrong, furthest] = [0, 0, 0];
  while (checked < count) {
    const body = anyBody(next);
    for (const region of REGIONS)
      for (const side of SIDES)
        for (const spot of [
          ...lattice(region, side, body, body.fingerMm).map((easy) => easy.spot),
          ...denseSpots(region, side, body, body.fingerMm),
        ]) {
          if (checked >= count || next() > 0.2) continue;
          const there = follow(sayPlace(directions(spot, body)), body);
          const off = gap({ ...there, side: there.side ?? spot.side }, spot) / body.fingerMm;
          checked += 1;
          wrong += Number(there.side !== spot.side || off > 1);
          furthest = Math.max(furthest, off);
        }
  }
  return { rows: [{ "places told": checked, wrong, "furthest off, fingers": round(furthest) }], checked, wrong };
}

/** The next spot after five years at four a day, beside a call that does nothing. */
function speed(): { rows: Row[]; median: number } {
  const body = BODIES.middle;
  const next = chance(3);
  const spots = REGIONS.flatMap((region) => SIDES.flatMap((side) => lattice(region, side, body, body.fingerMm))).map(({ spot }) => spot);
  const uses = Array.from({ length: FIVE_YEARS * 4 }, (_, i) => ({
    spot: spots[Math.floor(next() * spots.length)] ?? { region: "belly" as const, side: "left" as const, outMm: 60, downMm: 0 },
    daysAgo: i / 4,
  }));
  const question = {
    body,
    noGo: marksOf(next),
    uses,
    rules: siteRules(BLANK_CARE, body),
    region: null,
    declined: [],
    leftOutRegions: [],
  };
  const time = (call: () => unknown) => {
    const from = performance.now();
    call();
    return performance.now() - from;
  };
  const empty = Array.from({ length: 200 }, () => time(() => null));
  const asked = Array.from({ length: 200 }, () => time(() => nextSpot(question)));
  return {
    rows: [{ "uses in the log": uses.length, "next spot ms, median": round(median(asked)), "empty call ms, median": round(median(empty)) }],
    median: median(asked),
  };
}

const median = (all: readonly number[]): number => [...all].sort((a, b) => a - b)[Math.floor(all.length / 2)] ?? 0;
const round = (value: number): number => Math.round(value * 1000) / 1000;

/** How well the next spot spreads, over simulated years, against the densest packing and the printed schemes. Argument: seeds a body. */
export async function measure([seeds = "3"]: readonly string[] = []): Promise<Measured> {
  const lived = years(Number(seeds));
  const packed = packing(Number(seeds));
  const words = told(TOLD);
  const quick = speed();
  return {
    rows: [...lived.rows, ...packed.rows, ...words.rows, ...quick.rows],
    figures: {
      days: lived.days,
      violations: lived.violations,
      latticeRatioMin: round(packed.least),
      restRatioToQuadrants: round(lived.toQuadrants),
      restRatioToGrid: round(lived.toGrid),
      directionsChecked: words.checked,
      directionsWrong: words.wrong,
      nextSpotMsMedian: round(quick.median),
    },
  };
}
