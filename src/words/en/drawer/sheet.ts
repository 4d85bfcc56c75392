// The whole card as lines to read aloud against the paper. A blank is said as a blank, and what follows from it; a default is said as a default.
import type { Band, CorrectionRule, CorrectionTable, DoseCard, GridColumn, MealName, MealRule } from "#events/card.ts";
import { ADVICE_FIELDS, CARE_FIELDS } from "#keeping/card-care.ts";
import { gramsOf, number, unitsOf } from "#words/en/amounts.ts";
import { dateInWords } from "#words/en/when.ts";
import { fieldName, PARTS } from "./fields.ts";
import { illLines } from "./ill-sheet.ts";
import { careWords, optionName } from "./options.ts";

export interface SheetLine {
  label: string;
  value: string;
}
export interface SheetPart {
  heading: string;
  lines: SheetLine[];
}

const STOP = "Blank. Stop and ask the clinic.";
const line = (field: string, value: string): SheetLine => ({ label: fieldName(field), value });
const hours = (minutes: number | null): string => (minutes === null ? STOP : `${Math.round((minutes / 60) * 100) / 100} hours`);
const chosen = (field: string, option: string | null): string => (option === null ? STOP : optionName(field, option));

function span(from: number | null, to: number | null, unit: string): string {
  if (from === null && to === null) return "Any reading";
  if (from === null) return `Up to ${to} ${unit}`;
  return to === null ? `${from} ${unit} or more` : `${from} to ${to} ${unit}`;
}

const rowLine = (at: string, i: number, row: Band, unit: string): SheetLine =>
  line(`${at}.bands.${i}`, `${span(row.from, row.to, unit)}: ${unitsOf(row.units)}${row.call ? ", and call the clinic" : ""}`);
const edgesLine = (field: string, edges: string): SheetLine => line(field, optionName(field, edges));

interface Added {
  correction?: CorrectionRule | null | undefined;
  table?: CorrectionTable | undefined;
}

function addedLines(at: string, { correction: c, table }: Added, unit: string): SheetLine[] {
  const field = `${at}.correction`;
  if (table) {
    return [
      line(field, optionName(field, "table")),
      ...table.bands.map((row, i) => rowLine(`${at}.table`, i, row, unit)),
      edgesLine(`${at}.table.edges`, table.edges),
    ];
  }
  if (!c) return [line(field, optionName(field, "no"))];
  const { low, high } = c.target;
  return [
    line(`${field}.target`, low === high ? `${low} ${unit}` : span(low, high, unit)),
    line(`${field}.perUnit`, `${c.perUnit} ${unit}`),
    line(`${field}.mode`, optionName(`${field}.mode`, c.mode)),
    line(`${field}.mayReduce`, c.mayReduce ? "Yes" : "No"),
  ];
}

/** Each cell by itself, with what it is for: numbers side by side are read as one. */
function gridLines(at: string, rule: Extract<MealRule, { kind: "grid" }>, unit: string): SheetLine[] {
  const { columns } = rule;
  const grams = (column: GridColumn) => (column.from === null && column.to === null ? "any meal" : span(column.from, column.to, "grams"));
  const lower = (words: string) => words.charAt(0).toLowerCase() + words.slice(1);
  return [
    ...columns.map((column, c) => line(`${at}.columns.${c}`, grams(column))),
    edgesLine(`${at}.columnEdges`, rule.columnEdges),
    ...rule.rows.flatMap((row, i) => [
      line(`${at}.rows.${i}`, `${span(row.from, row.to, unit)}${row.call ? ", and call the clinic" : ""}`),
      ...columns.map((column, c) => line(`${at}.rows.${i}.units.${c}`, `${lower(grams(column))}: ${unitsOf(row.units[c] ?? Number.NaN)}`)),
    ]),
    edgesLine(`${at}.edges`, rule.edges),
    ...(rule.foodOnly === null
      ? [line(`${at}.foodOnly`, STOP)]
      : columns.map((column, c) => line(`${at}.foodOnly.${c}`, `${lower(grams(column))}: ${unitsOf(rule.foodOnly?.[c] ?? Number.NaN)}`))),
  ];
}

function ruleLines(at: string, rule: MealRule, unit: string): SheetLine[] {
  const round = (how: string) => line(`${at}.roundParts`, optionName(`${at}.roundParts`, how));
  switch (rule.kind) {
    case "fixed units":
      return [
        line(`${at}.units`, unitsOf(rule.units)),
        ...addedLines(at, rule, unit),
        ...(rule.roundParts ? [round(rule.roundParts)] : []),
      ];
    case "bands":
      return [
        ...rule.bands.map((row, i) => rowLine(at, i, row, unit)),
        edgesLine(`${at}.edges`, rule.edges),
        line(`${at}.foodOnly`, rule.foodOnly === null ? STOP : unitsOf(rule.foodOnly)),
      ];
    case "grid":
      return gridLines(at, rule, unit);
    case "servings":
      return [
        line(`${at}.unitsPerServing`, `${rule.unitsPerServing} units`),
        line(`${at}.gramsPerServing`, gramsOf(rule.gramsPerServing)),
        line(`${at}.count`, optionName(`${at}.count`, rule.count)),
        ...addedLines(at, rule, unit),
        round(rule.roundParts),
      ];
    case "ratio":
      return [line(`${at}.gramsPerUnit`, gramsOf(rule.gramsPerUnit)), ...addedLines(at, rule, unit), round(rule.roundParts)];
    case "correction only":
      return [...addedLines(at, rule, unit), round(rule.roundParts)];
  }
}

function backgroundLines(card: DoseCard): SheetLine[] {
  const doses = card.background ?? [];
  if (doses.length === 0) return [line("background", "None on this card.")];
  return doses.flatMap((dose, i) => {
    const at = `background.${i}`;
    return [
      line(at, `${unitsOf(dose.units)} of ${dose.insulin.name} at ${dose.at}`),
      line(`${at}.insulin.kind`, optionName(`${at}.insulin.kind`, dose.insulin.kind)),
      line(`${at}.insulin.unitsPerMl`, `${dose.insulin.unitsPerMl} units per mL`),
      line(`${at}.windowMinutes`, hours(dose.windowMinutes)),
    ];
  });
}

function mealPart(card: DoseCard, meal: MealName): SheetPart {
  const rule = card.meals[meal];
  const at = `meals.${meal}`;
  return {
    heading: PARTS[meal],
    lines: [line(`${at}.kind`, optionName(`${at}.kind`, rule?.kind ?? "none")), ...(rule ? ruleLines(at, rule, card.glucoseUnit) : [])],
  };
}

function onBoard(card: DoseCard): string {
  const rule = card.onBoard;
  if (rule === null) return STOP;
  const name = optionName("onBoard", rule.model);
  switch (rule.model) {
    case "not used":
      return name;
    case "linear":
      return `${name}: ${number(rule.hours)} hours`;
    case "two compartments":
      return `${name}: ${rule.minutes} minutes`;
    case "triangle":
      return `${name}: strongest after ${rule.peakMinutes}, over after ${rule.endMinutes} minutes`;
  }
}

function limits(card: DoseCard): SheetLine[] {
  const bed = card.bedtime;
  return [
    line("largestDose", card.largestDose === null ? STOP : unitsOf(card.largestDose)),
    line("rounding.step", optionName("rounding.step", card.rounding.step)),
    line("rounding.direction", optionName("rounding.direction", card.rounding.direction)),
    line("spacingMinutes", hours(card.spacingMinutes)),
    line("windowMinutes", hours(card.windowMinutes)),
    line("onBoard", onBoard(card)),
    line(
      "bedtime",
      bed === null
        ? "Blank. No correction from 21:00 to 05:00."
        : `${bed.from} to ${bed.until}. ${optionName("bedtime.correction", bed.correction ? "yes" : "no")}.`,
    ),
    line("afterExercise", chosen("afterExercise", card.afterExercise)),
    line("afterLow", chosen("afterLow", card.afterLow)),
    line("low.value", `${card.low.value} ${card.glucoseUnit}. ${optionName("low.counts", card.low.counts)}.`),
    line("high", card.high === null ? "Blank." : `${card.high.value} ${card.glucoseUnit} or more: ${card.high.advice}`),
    line("telephonedDose", optionName("telephonedDose", card.telephonedDose)),
  ];
}

function eating(card: DoseCard): SheetLine[] {
  const { when, earliestMinutes, latestMinutes } = card.timing;
  const regions = card.regions;
  return [
    line("timing.when", optionName("timing.when", when)),
    line("timing.earliestMinutes", `${earliestMinutes} minutes`),
    line("timing.latestMinutes", `${latestMinutes} minutes`),
    ...(regions === null
      ? [line("regions", optionName("regions", "any"))]
      : (["breakfast", "lunch", "dinner", "snack"] as const).map((meal) => line(`regions.${meal}`, optionName("regions", regions[meal])))),
  ];
}

export function cardSheet(card: DoseCard): SheetPart[] {
  const dateOr = (date: string | null) => (date === null ? "Blank." : dateInWords(date));
  return [
    {
      heading: PARTS.insulin,
      lines: [
        line("insulin.name", card.insulin.name),
        line("insulin.kind", card.insulin.kind ? optionName("insulin.kind", card.insulin.kind) : "Not asked when this card was typed."),
        line("insulin.unitsPerMl", `${card.insulin.unitsPerMl} units per mL`),
        line("glucoseUnit", card.glucoseUnit),
        line("carbohydrate", optionName("carbohydrate", card.carbohydrate)),
        line("validFrom", dateInWords(card.validFrom)),
        line("reviewBy", dateOr(card.reviewBy)),
        line("validUntil", dateOr(card.validUntil)),
        line("clinic.name", card.clinic.name),
        line("clinic.phone", card.clinic.phone),
        line("unitsADay", card.unitsADay === undefined ? "Blank." : unitsOf(card.unitsADay)),
      ],
    },
    ...(["breakfast", "lunch", "dinner", "snack"] as const).map((meal) => mealPart(card, meal)),
    { heading: PARTS.background, lines: backgroundLines(card) },
    { heading: PARTS.limits, lines: limits(card) },
    { heading: PARTS.eating, lines: eating(card) },
    { heading: PARTS.care, lines: CARE_FIELDS.map((field) => line(`care.${field}`, careWords(card, field))) },
    { heading: PARTS.ill, lines: illLines(card) },
    { heading: PARTS.wrong, lines: ADVICE_FIELDS.map((field) => line(`advice.${field}`, card.advice[field] ?? "Blank. Call the clinic.")) },
  ];
}
