// The parts of the body that have a drawing of their own, and what is drawn on each.
import type { BodyMeasures, Region, Side, Spot } from "#events/spot.ts";
import type { BodySheet } from "#reports/body-sheet.ts";
import { bodyChart } from "#rules/body/chart.ts";
import { placeName, sayMark } from "#words/en/places.ts";

export interface Part {
  region: Region;
  side: Side;
}

const PARTS: readonly Part[] = [
  { region: "belly", side: "left" },
  { region: "thigh", side: "left" },
  { region: "thigh", side: "right" },
  { region: "arm", side: "left" },
  { region: "arm", side: "right" },
  { region: "buttock", side: "left" },
  { region: "buttock", side: "right" },
];

/** The longer side of the drawing of a part, about. */
const LENGTH = { belly: "bellyWidthMm", thigh: "thighLengthMm", arm: "armLengthMm", buttock: "bellyHeightMm" } as const;

export const isOn = (part: Part, spot: Spot): boolean =>
  spot.region === part.region && (part.region === "belly" || spot.side === part.side);

export const partName = (part: Part): string => (part.region === "belly" ? "belly" : placeName({ ...part, outMm: 0, downMm: 0 }));

/** A part that was left out later still shows what went in there. */
export const partsOf = (sheet: BodySheet, leftOut: readonly Region[]): Part[] =>
  PARTS.filter((part) => !leftOut.includes(part.region) || sheet.uses.some((use) => isOn(part, use.spot)));

/** Marks so far apart that two figures fit between them; the table leaves nothing out. */
export function drawnPart(part: Part, sheet: BodySheet, body: BodyMeasures) {
  const { uses, marks: noGo, rules } = sheet;
  const apartMm = body[LENGTH[part.region]] / 9;
  const chart = bodyChart({ ...part, body, uses, noGo, restDays: rules.restDays, navelMm: rules.navelMm, here: null, apartMm });
  return { ...chart, marks: chart.marks.map((mark) => ({ ...mark, label: mark.daysAgo ? String(mark.daysAgo) : sayMark(mark) })) };
}
