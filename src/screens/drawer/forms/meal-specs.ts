// What the form asks for one meal of a card: which fields there are depends on the kind of rule.
import type { MealName } from "#events/card.ts";
import { MOST_COLUMNS } from "#keeping/card-grid.ts";
import { MOST_ROWS } from "#keeping/card-rows.ts";
import type { Draft } from "#keeping/problem.ts";
import type { Section, Spec } from "#screens/drawer/parts/spec.ts";
import { CARD } from "#words/en/drawer/card.ts";
import { PARTS } from "#words/en/drawer/fields.ts";
import { choice, number, where } from "./specs.ts";

const FIRST_ROWS = 4;
const FIRST_COLUMNS = 3;
const places = (n: number): number[] => Array.from({ length: n }, (_, i) => i);

/** As many of a kind as were asked for or typed into. */
function shown(draft: Draft, asked: string, first: number, most: number, isTyped: (i: number) => boolean): number {
  return Math.max(first, Number(draft[asked] ?? 0), (places(most).filter(isTyped).at(-1) ?? -1) + 1);
}

const columnsShown = (draft: Draft, meal: MealName): number =>
  shown(draft, `columns.${meal}`, FIRST_COLUMNS, MOST_COLUMNS, (i) =>
    ["from", "to"].some((name) => draft[`meals.${meal}.columns.${i}.${name}`]),
  );

/** list: "bands", "table.bands" or "rows", whichever the meal's table is called in the card. */
function rowsShown(draft: Draft, meal: MealName, list: string): number {
  const names = ["from", "to", "units", ...places(MOST_COLUMNS).map((c) => `units.${c}`)];
  return shown(draft, `rows.${meal}`, FIRST_ROWS, MOST_ROWS, (i) => names.some((name) => draft[`meals.${meal}.${list}.${i}.${name}`]));
}

function bandRows(draft: Draft, meal: MealName, list: string): Spec[] {
  return places(rowsShown(draft, meal, list)).map((i): Spec => {
    const row = `meals.${meal}.${list}.${i}`;
    return {
      kind: "row",
      field: row,
      specs: [number(`${row}.from`), number(`${row}.to`), number(`${row}.units`), { kind: "tick", field: `${row}.call` }],
    };
  });
}

const edges = (field: string): Spec => choice(field, "as printed", "up to the next");

function gridSpecs(draft: Draft, meal: MealName): Spec[] {
  const at = `meals.${meal}`;
  const columns = places(columnsShown(draft, meal));
  const row = (field: string, specs: Spec[]): Spec => ({ kind: "row", field, specs });
  return [
    ...columns.map((c) => row(`${at}.columns.${c}`, [number(`${at}.columns.${c}.from`), number(`${at}.columns.${c}.to`)])),
    edges(`${at}.columnEdges`),
    ...places(rowsShown(draft, meal, "rows")).map((i) =>
      row(`${at}.rows.${i}`, [
        number(`${at}.rows.${i}.from`),
        number(`${at}.rows.${i}.to`),
        ...columns.map((c) => number(`${at}.rows.${i}.units.${c}`)),
        { kind: "tick", field: `${at}.rows.${i}.call` },
      ]),
    ),
    edges(`${at}.edges`),
    row(
      `${at}.foodOnly`,
      columns.map((c) => number(`${at}.foodOnly.${c}`)),
    ),
  ];
}

function addedSpecs(draft: Draft, meal: MealName, ...options: string[]): Spec[] {
  const at = `meals.${meal}`;
  const chosen = draft[`${at}.correction`];
  return [
    choice(`${at}.correction`, ...options),
    ...where(
      chosen === "yes",
      number(`${at}.correction.target.low`),
      number(`${at}.correction.target.high`),
      number(`${at}.correction.perUnit`),
      choice(`${at}.correction.mode`, "linear", "nearest", "down", "each started step"),
      choice(`${at}.correction.mayReduce`, "no", "yes"),
    ),
    ...(chosen === "table" ? [...bandRows(draft, meal, "table.bands"), edges(`${at}.table.edges`)] : []),
  ];
}

function ruleSpecs(draft: Draft, meal: MealName): Spec[] {
  const at = `meals.${meal}`;
  const round = choice(`${at}.roundParts`, "none", "tenths", "whole");
  const added = addedSpecs(draft, meal, "no", "yes", "table");
  switch (draft[`${at}.kind`]) {
    case "fixed units":
      return [number(`${at}.units`), ...added, ...where(draft[`${at}.correction`] === "yes", round)];
    case "bands":
      return [...bandRows(draft, meal, "bands"), edges(`${at}.edges`), number(`${at}.foodOnly`)];
    case "grid":
      return gridSpecs(draft, meal);
    case "servings":
      return [
        number(`${at}.unitsPerServing`),
        number(`${at}.gramsPerServing`),
        choice(`${at}.count`, "exactly", "nearest half", "nearest whole"),
        ...added,
        round,
      ];
    case "ratio":
      return [number(`${at}.gramsPerUnit`), ...added, round];
    case "correction only":
      return [...addedSpecs(draft, meal, "yes", "table"), round];
    default:
      return [];
  }
}

/** The table this meal has, if it has one. */
function listOf(draft: Draft, meal: MealName): string | null {
  const kind = draft[`meals.${meal}.kind`] ?? "none";
  if (kind === "bands") return "bands";
  if (kind === "grid") return "rows";
  return kind !== "none" && draft[`meals.${meal}.correction`] === "table" ? "table.bands" : null;
}

export function mealSection(draft: Draft, meal: MealName, onChange: (field: string, value: string) => void): Section {
  const at = `meals.${meal}`;
  const kinds = choice(`${at}.kind`, "none", "fixed units", "bands", "grid", "servings", "ratio", "correction only");
  const section: Section = { heading: PARTS[meal], specs: [kinds, ...ruleSpecs(draft, meal)] };
  const list = listOf(draft, meal);
  if (list === null) return section;
  const one = (label: string, places: string, field: string, now: number, most: number) =>
    now < most ? [{ label, goesTo: `${at}.${places}.${now}`, onPress: () => onChange(field, String(now + 1)) }] : [];
  const more = [
    ...one(CARD.otherRow, list, `rows.${meal}`, rowsShown(draft, meal, list), MOST_ROWS),
    ...(list === "rows" ? one(CARD.otherColumn, "columns", `columns.${meal}`, columnsShown(draft, meal), MOST_COLUMNS) : []),
  ];
  return more.length > 0 ? { ...section, more } : section;
}
