// What every stored row carries around its event. Dear to change later: see "The log" in DEVELOPERS.md.
import * as z from "zod/mini";
import { happened } from "./happened.ts";
import { stamp } from "./stamp.ts";

export const envelope = z.object({
  /** UUID version 7: sorts by time. Import is idempotent by it. */
  id: z.string().check(z.minLength(8)),
  /** Version of the event's shape; older shapes are lifted when read, newer ones are unreadable. */
  v: z.number(),
  person: z.nullable(z.string()),
  walk: z.nullable(z.string()),
  tablet: z.string(),
  /** 1, 2, 3 … without a gap on this tablet. */
  seq: z.number().check(z.gte(1)),
  /** Hash of the row before, "" for the first. */
  prev: z.string(),
  at: stamp,
  app: z.string(),
  words: z.string(),
  /** Hash of the person's card in force. */
  card: z.nullable(z.string()),
});

/** A row as it is stored: the envelope, the event, and the hash over both in canonical form. */
export const stored = z.extend(envelope, { event: happened, hash: z.string() });
export type Stored = z.infer<typeof stored>;
export type Unhashed = Omit<Stored, "hash">;

/** Version of the event shapes that this app writes. */
export const SHAPES = 1;
