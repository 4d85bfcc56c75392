import type { Outcome } from "./kinds.ts";

/** What became of a seeded mistake. `harm`: it reached the body, or its chance to be mended passed. */
export interface Found {
  harm: boolean;
  /** The tablet found it by what it knows, or its own order of steps kept it from happening. */
  own: boolean;
  /** A truthful answer about the very thing was all that showed it. */
  answer?: boolean;
}

export function verdict({ harm, own, answer = false }: Found): Outcome {
  if (!harm) return own || !answer ? "before" : "reported";
  return own ? "after" : answer ? "reported" : "missed";
}
