// Fills an empty demo log. Kept apart from every real household: its own database, whose name says demo.

import { ninetyDays } from "#demo-data/ninety-days.ts";
import type { Stamp } from "#events/stamp.ts";
import { cardHash } from "./card-hash.ts";
import type { Recorded, Recorder } from "./recorder.ts";

/** Another seed is another ninety days: same people, same number of each thing. */
export const DEMO_SEED = "linden";

export interface DemoParts {
  now: Stamp;
  /** Minutes east of UTC of the tablet's zone at an instant. */
  offsetAt(wall: number): number;
  /** An id that sorts by this instant; n counts the ids asked for. */
  idAt(wall: number, n: number): string;
}

/**
 * Stores ninety days up to now, all of them or none: a tablet that is switched off in the middle begins again with an empty log, and of two windows
 * only one fills it.
 */
export async function fillDemo(recorder: Recorder, { now, offsetAt, idAt }: DemoParts): Promise<Recorded> {
  let n = 0;
  const nextId = (wall: number) => idAt(wall, n++);
  const began = performance.now();
  const facts = ninetyDays({ seed: DEMO_SEED, now, offsetAt, hashOf: cardHash, newWalkId: nextId });
  performance.measure("demo made", { start: began });
  const recorded = await recorder.recordMany(facts.map((fact) => ({ ...fact, id: nextId(fact.at.wall) })));
  performance.measure("demo filled", { start: began });
  if (!recorded.ok && recorded.why === "another writer") await recorder.readOn();
  return recorded;
}
