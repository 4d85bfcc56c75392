// Why the walk did not do what was asked. Values only: words/ makes sentences of them.
import type { PenReason } from "#rules/pen/check.ts";

export type Refusal =
  | { no: "not offered here" }
  | { no: "reading"; why: string; text: string; unit: string }
  | { no: "ketones"; why: string; text: string }
  | { no: "grams"; why: string; text: string }
  | { no: "units"; why: string; text: string }
  | { no: "wrong unit"; unit: string }
  | { no: "two numbers differ"; first: string; second: string }
  | { no: "pen"; reason: PenReason; name: string | null }
  | { no: "pen name"; name: string }
  | { no: "insulin look"; look: string }
  | { no: "no stream" }
  | { no: "dial is not the card"; dialled: number; told: number }
  | { no: "window shows more than was dialled"; left: number; dialled: number }
  | { no: "telephoned number"; why: "above the largest dose" | "in a low" | "not allowed" | "blank field"; units: number }
  | { no: "not ready to inject"; why: string }
  | { no: "wait is not over" }
  | { no: "food"; why: string; food: string };
