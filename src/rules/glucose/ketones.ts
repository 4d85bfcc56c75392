// Ketones: when the card wants them looked for, which of its lines a result belongs to, and what may be given as a result.
import { type KetoneLine, type KetoneRule, STRIP_LEVELS } from "#events/ill-rules.ts";
import type { Glucose } from "#events/quantity.ts";

/** reading null: none was taken. The reading must be in the card's unit. HI is above any number. */
export function ketonesDue(
  rule: KetoneRule | undefined,
  reading: { glucose: Glucose | null; word: "HI" | "LO" | null } | null,
  feelsIll: boolean,
): boolean {
  if (!rule) return false;
  if (feelsIll && rule.whenIll) return true;
  if (rule.from === null || reading === null) return false;
  return reading.word === "HI" || (reading.glucose !== null && reading.glucose.value >= rule.from);
}

/** A line reaches up to where the next begins; null: below the first line the card says nothing. Two that begin alike are a slip, and the one that calls sooner holds. */
export function ketoneLineOf(rule: KetoneRule, value: number): KetoneLine | null {
  const urgency = (line: KetoneLine) => ["no", "clinic", "emergency"].indexOf(line.call);
  const reached = rule.lines.filter((line) => value >= line.from);
  return reached.sort((a, b) => b.from - a.from || urgency(b) - urgency(a))[0] ?? null;
}

/** mmol/L of blood. A hospital's sick-day page sends for an ambulance from here on, and the bands of other hospitals say emergency. */
const EMERGENCY_FROM = 3;
export const isKetoneEmergency = (rule: KetoneRule, value: number): boolean => rule.test === "blood" && value >= EMERGENCY_FROM;

/** The emergency number is called as for a danger sign: by the card's line, or where a line calls nobody at an emergency. */
export function ketonesRaiseCall(rule: KetoneRule, value: number): boolean {
  const call = ketoneLineOf(rule, value)?.call ?? "no";
  return call === "emergency" || (call === "no" && isKetoneEmergency(rule, value));
}

/** Where the card has no words the clinic is called now: blood from 1.5 mmol/L (UK and Canadian sick-day pages), a strip from "moderate" (US leaflets). */
export const clinicNow = (rule: KetoneRule, value: number): boolean =>
  value >= (rule.test === "blood" ? 1.5 : STRIP_LEVELS.indexOf("moderate"));

/** What strips for blood can show, in mmol/L to one decimal (usual practice, from memory). */
export const BLOOD_KETONES = { least: 0, most: 8 } as const;

export type KetonesRefused = "empty" | "not a number" | "too many decimals" | "too high";
export type CheckedKetones = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly why: KetonesRefused };

/** "1.5" and "1,5". 15 is refused: a point was forgotten. */
export function checkKetones(text: string): CheckedKetones {
  const typed = text.trim();
  if (typed === "") return { ok: false, why: "empty" };
  const number = /^(\d+)(?:[.,](\d+))?$/.exec(typed);
  if (!number) return { ok: false, why: "not a number" };
  const [, whole = "", after = ""] = number;
  if (after.length > 1) return { ok: false, why: "too many decimals" };
  const value = Number(`${whole}.${after || "0"}`);
  return value > BLOOD_KETONES.most ? { ok: false, why: "too high" } : { ok: true, value };
}

/** Fields of a strip: one with words has five, one with plus signs six. */
export const stripLevels = (test: KetoneRule["test"]): readonly number[] =>
  STRIP_LEVELS.flatMap((_, level) => (test === "urine plus signs" || level < STRIP_LEVELS.length - 1 ? [level] : []));
