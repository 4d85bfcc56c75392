// What a card says for high glucose and ill days, as it was typed. Everything may be left blank: then the clinic is called.
import type { DoseCard } from "#events/card.ts";
import { type KetoneLine, type KetoneRule, type KetoneTest, STRIP_LEVELS, type StripLevel } from "#events/ill-rules.ts";
import type { GlucoseUnit } from "#events/quantity.ts";
import { BLOOD_KETONES, stripLevels } from "#rules/glucose/ketones.ts";
import { glucoseSpan } from "./card-spans.ts";
import type { Reader } from "./reader.ts";

/** Published sheets print three or four lines (hospital pages of the UK, Canada and Australia). */
export const MOST_KETONE_LINES = 5;
/** Sick-day sheets hold six to eight rules (from memory). */
export const MOST_SICK_DAY_RULES = 8;
const MOST_WORDS = 300;
const MOST_RULE = 120;

const places = (n: number): number[] => Array.from({ length: n }, (_, i) => i);

/** The fields of a strip as a keeper chooses them, lowest first. */
export const stripOptions = (test: KetoneTest): StripLevel[] => stripLevels(test).flatMap((level) => STRIP_LEVELS[level] ?? []);

function lineFrom(r: Reader, field: string, test: KetoneTest): number {
  if (test === "blood") return r.number(field, { least: BLOOD_KETONES.least, most: BLOOD_KETONES.most, decimals: 1 });
  return STRIP_LEVELS.indexOf(r.choice(field, STRIP_LEVELS));
}

/** A line in which nothing was typed is none. */
function linesOf(r: Reader, test: KetoneTest): KetoneLine[] {
  const typed = places(MOST_KETONE_LINES).filter((i) =>
    ["from", "says", "call"].some((name) => r.raw(`ketones.lines.${i}.${name}`) !== ""),
  );
  if (typed.length === 0) r.note("ketones.lines.0.from", { why: "empty" });
  return typed.map((i) => {
    const at = `ketones.lines.${i}`;
    return {
      from: lineFrom(r, `${at}.from`, test),
      says: r.blankOrText(`${at}.says`, MOST_WORDS),
      call: r.choice(`${at}.call`, ["no", "clinic", "emergency"]),
    };
  });
}

function ketonesOf(r: Reader, unit: GlucoseUnit): KetoneRule | null {
  const test = r.choice("ketones", ["blank", "blood", "urine words", "urine plus signs"]);
  if (test === "blank") return null;
  const from = r.blankOrNumber("ketones.from", { ...glucoseSpan(unit), least: 1 });
  const whenIll = r.choice("ketones.whenIll", ["no", "yes"]) === "yes";
  // A test that nothing leads to would never be asked for.
  if (from === null && !whenIll && r.raw("ketones.whenIll") === "no") r.note("ketones.from", { why: "empty" });
  return { test, from, whenIll, lines: linesOf(r, test) };
}

function sickDayOf(r: Reader): DoseCard["sickDay"] | null {
  const rules = places(MOST_SICK_DAY_RULES).flatMap((i) => r.blankOrText(`sickDay.rules.${i}`, MOST_RULE) ?? []);
  const callWhen = r.blankOrText("sickDay.callWhen", MOST_WORDS);
  return rules.length === 0 && callWhen === null ? null : { rules, callWhen };
}

/** Left out of the card where they are blank, so that such cards are as they always were. */
export function illOf(r: Reader, unit: GlucoseUnit): Pick<DoseCard, "ketones" | "sickDay"> {
  const ketones = ketonesOf(r, unit);
  const sickDay = sickDayOf(r);
  return { ...(ketones ? { ketones } : {}), ...(sickDay ? { sickDay } : {}) };
}
