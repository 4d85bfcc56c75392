// Lengths that hands can feel: whole and half fingers near a landmark, whole and half hands further off.
import type { BodyMeasures } from "#events/spot.ts";

export type Measure = "fingers" | "hands";
export type Tellable = { readonly measure: Measure; readonly count: number; readonly mm: number };

/** More fingers side by side are miscounted; more hands lose their way. Own choice, no source. */
const MOST_FINGERS = 6;
/** For the densest pattern alone: three or four times four fingers and some more, from the nearer landmark of the largest body. */
export const MOST_FINGERS_COUNTED_ON = 24;
const MOST_HANDS = 4;

export const lengthMm = (measure: Measure, count: number, body: BodyMeasures): number =>
  count * (measure === "fingers" ? body.fingerMm : body.handMm);

const counted = (measure: Measure, most: number, body: BodyMeasures): Tellable[] =>
  Array.from({ length: most * 2 }, (_, i) => (i + 1) / 2).map((count) => ({ measure, count, mm: lengthMm(measure, count, body) }));

export const NO_LENGTH: Tellable = { measure: "fingers", count: 0, mm: 0 };

const inOrder = (lengths: Tellable[]): readonly Tellable[] => [NO_LENGTH, ...lengths].sort((a, b) => a.mm - b.mm || a.count - b.count);

/** Shortest first, from nothing to four hands. */
export const easyLengths = (body: BodyMeasures): readonly Tellable[] =>
  inOrder([...counted("fingers", MOST_FINGERS, body), ...counted("hands", MOST_HANDS, body)]);

/** The easy lengths and longer counts of fingers. */
export const tellableLengths = (body: BodyMeasures): readonly Tellable[] =>
  inOrder([...counted("fingers", MOST_FINGERS_COUNTED_ON, body), ...counted("hands", MOST_HANDS, body)]);

/** How hard a length is to find: halves cost more than one whole finger. */
export const effort = (count: number): number => count + (Number.isInteger(count) ? 0 : 1.5);
