// The body chart as values: where injections went, where none may go, and the next one. A drawing and its sentences are made from these.
import type { BodyMeasures, NoGo, Region, Side, Spot } from "#events/spot.ts";
import { usableArea } from "./area.ts";
import type { SiteUse } from "./limits.ts";

export type ChartMark = {
  readonly xMm: number;
  readonly yMm: number;
  /** here: the next spot. rest: used and resting. old: used and free again. never: not to be used. */
  readonly kind: "here" | "rest" | "never" | "old";
  /** 0 for a point. */
  readonly radiusMm: number;
  /** Whole days since the use; null where nothing was injected. */
  readonly daysAgo: number | null;
  /** What a "never" mark is; null for the others. */
  readonly place: NoGo["kind"] | "navel" | null;
};

/** x from the left edge, y from the top edge. Belly: both sides, side is null. */
export type Chart = {
  readonly region: Region;
  readonly side: Side | null;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly marks: readonly ChartMark[];
};

export type ChartQuestion = {
  readonly region: Region;
  readonly side: Side;
  readonly body: BodyMeasures;
  readonly uses: readonly SiteUse[];
  readonly noGo: readonly NoGo[];
  readonly restDays: number;
  readonly navelMm: number;
  readonly here: Spot | null;
  /** Height of the room that the days under a mark need; a use whose days would cover a newer mark's is left out; the next spot takes twice
   *  the height. About a tenth of the longer side; 0 shows all. */
  readonly apartMm: number;
};

/** "12 days" is about this many times as wide as the room's height. */
const LABEL_WIDTH = 2.5;
/** The back of the arm is drawn a little from its side, so that the outer middle line lies on the arm and not on its edge. */
const ARM_SIDE = 0.35;

type Frame = { readonly widthMm: number; readonly heightMm: number; readonly at: (spot: Spot) => { xMm: number; yMm: number } };

/** The person's own left is on the left of every drawing: the front as one looks down at oneself, the back as seen from behind. */
const frameOf = (region: Region, side: Side, body: BodyMeasures): Frame => {
  const area = usableArea(region, side, body);
  switch (region) {
    case "belly": {
      const [halfWidth, halfHeight] = [body.bellyWidthMm / 2, body.bellyHeightMm / 2];
      const at = (spot: Spot) => ({ xMm: halfWidth + (spot.side === "left" ? -1 : 1) * spot.outMm, yMm: halfHeight + spot.downMm });
      return { widthMm: body.bellyWidthMm, heightMm: body.bellyHeightMm, at };
    }
    case "thigh": {
      // The front middle line is in the middle of the drawing.
      const at = (spot: Spot) => ({ xMm: area.out.to + (side === "left" ? -1 : 1) * spot.outMm, yMm: spot.downMm });
      return { widthMm: 2 * area.out.to, heightMm: body.thighLengthMm, at };
    }
    case "arm": {
      // "Towards the back" leads from the outer edge inwards.
      const fromEdge = (spot: Spot) => area.out.to * ARM_SIDE + spot.outMm;
      const at = (spot: Spot) => ({ xMm: side === "left" ? fromEdge(spot) : 2 * area.out.to - fromEdge(spot), yMm: spot.downMm });
      return { widthMm: 2 * area.out.to, heightMm: body.armLengthMm, at };
    }
    case "buttock": {
      const half = area.out.to + body.fingerMm;
      const at = (spot: Spot) => ({ xMm: half + (side === "left" ? -1 : 1) * spot.outMm, yMm: spot.downMm });
      return { widthMm: 2 * half, heightMm: 2 * area.down.to, at };
    }
  }
};

export const bodyChart = (q: ChartQuestion): Chart => {
  const { widthMm, heightMm, at } = frameOf(q.region, q.side, q.body);
  const onChart = (spot: Spot): boolean => spot.region === q.region && (q.region === "belly" || spot.side === q.side);
  const marks: ChartMark[] = [];
  if (q.region === "belly") {
    marks.push({ xMm: widthMm / 2, yMm: heightMm / 2, kind: "never", radiusMm: q.navelMm, daysAgo: null, place: "navel" });
  }
  for (const place of q.noGo.filter((mark) => onChart(mark.spot))) {
    marks.push({ ...at(place.spot), kind: "never", radiusMm: place.radiusMm, daysAgo: null, place: place.kind });
  }
  const shown: ChartMark[] = [];
  if (q.here !== null && onChart(q.here)) shown.push({ ...at(q.here), kind: "here", radiusMm: 0, daysAgo: null, place: null });
  for (const use of q.uses.filter((past) => onChart(past.spot))) {
    const { xMm, yMm } = at(use.spot);
    if (
      [...marks, ...shown].some(
        (mark) =>
          Math.abs(mark.xMm - xMm) < q.apartMm * LABEL_WIDTH && Math.abs(mark.yMm - yMm) < q.apartMm * (mark.kind === "here" ? 2 : 1),
      )
    )
      continue;
    const kind = use.daysAgo >= q.restDays ? "old" : "rest";
    shown.push({ xMm, yMm, kind, radiusMm: 0, daysAgo: Math.floor(use.daysAgo), place: null });
  }
  return { region: q.region, side: q.region === "belly" ? null : q.side, widthMm, heightMm, marks: [...marks, ...shown] };
};
