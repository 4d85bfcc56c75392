// One food of the table, and the table read once at start.
import { type Grams, grams } from "#events/quantity.ts";
import { sourceOf } from "./sources.ts";
import { TABLE } from "./table.ts";

export type Locale = "US" | "UK";
/** The clinic's way of counting: fibre counts (total, US labels) or does not (available, UK labels). */
export type Counting = "total" | "available";

/** Where a person looks for a food, in the order a plate is filled. None is longer than a few screens of four. */
export const FOOD_GROUPS = [
  "bread",
  "potato",
  "grain",
  "pasta",
  "vegetable",
  "legume",
  "protein",
  "dish",
  "soup",
  "hand food",
  "cereal",
  "flat bread",
  "fruit",
  "milk",
  "cake",
  "sweet",
  "snack",
  "drink",
  "fast sugar",
] as const;
export type FoodGroup = (typeof FOOD_GROUPS)[number];

const NOTES = {
  l: "read the label",
  s: "sauce adds more",
  c: "no coating counted",
  n: "does not treat a low",
  f: "sugar-free kinds do not work",
  w: "slower than glucose or juice",
  k: "other curries count more",
  e: "fibre is an estimate",
} as const;
export type FoodNote = (typeof NOTES)[keyof typeof NOTES];

export interface Food {
  id: string;
  group: FoodGroup;
  us: string;
  uk: string;
  /** Other names people say, any locale. */
  aliases: readonly string[];
  /** One portion in kitchen words. Cups and spoons are US measures (a cup holds 240 ml). */
  portion: string;
  /** What the portion weighs, in grams of food. */
  weight: number;
  /** Carbohydrate of one portion with the fibre, to a tenth. */
  total: Grams;
  /** Carbohydrate of one portion without the fibre; null when the source does not report fibre. */
  available: Grams | null;
  totalPer100: number;
  fibrePer100: number | null;
  /** Resolve with sourceOf. */
  source: string;
  /** The portion's weight was not read in a source. */
  weightFromMemory: boolean;
  /** The carbohydrate, or the recipe behind it, was not read in a source. */
  carbohydrateFromMemory: boolean;
  /** The portion's total by difference, where that is more than 1.5 g away from `total` (10 UK foods). */
  otherTotal: Grams | null;
  notes: readonly FoodNote[];
}

const isGroup = (text: string): text is FoodGroup => FOOD_GROUPS.some((group) => group === text);
const isNote = (letter: string): letter is keyof typeof NOTES => letter in NOTES;

const number = (text: string, line: string): number => {
  const value = Number(text);
  if (text === "" || !Number.isFinite(value) || value < 0) throw new Error(`bad number "${text}" in the food line: ${line}`);
  return value;
};

const optional = (text: string, line: string): number | null => (text === "" ? null : number(text, line));

/** Reads one line of the table. A line that cannot be read is a defect, so it throws. */
export const readFood = (line: string): Food => {
  const [
    id = "",
    group = "",
    us = "",
    uk = "",
    portion = "",
    weight = "",
    total = "",
    available = "",
    totalPer100 = "",
    fibrePer100 = "",
    source = "",
    aliases = "",
    extra = "",
  ] = line.split("|");
  if (id === "" || us === "" || portion === "" || !isGroup(group)) throw new Error(`bad food line: ${line}`);
  const { weightFromMemory, carbohydrateFromMemory } = sourceOf(source);
  const [, otherTotal = "", letters = ""] = /^([\d.]*)(.*)$/.exec(extra) ?? [];
  const notes = [...letters].map((letter) => {
    if (!isNote(letter)) throw new Error(`unknown note "${letter}" in the food line: ${line}`);
    return NOTES[letter];
  });
  const known = optional(available, line);
  const other = optional(otherTotal, line);
  return {
    id,
    group,
    us,
    uk: uk === "" ? us : uk,
    aliases: aliases === "" ? [] : aliases.split(";"),
    portion,
    weight: number(weight, line),
    total: grams(number(total, line)),
    available: known === null ? null : grams(known),
    totalPer100: number(totalPer100, line),
    fibrePer100: optional(fibrePer100, line),
    source,
    weightFromMemory,
    carbohydrateFromMemory,
    otherTotal: other === null ? null : grams(other),
    notes,
  };
};

export const FOODS: readonly Food[] = TABLE.trim().split("\n").map(readFood);

const byId = new Map(FOODS.map((food) => [food.id, food]));

export const foodById = (id: string): Food | null => byId.get(id) ?? null;

export const nameOf = (food: Food, locale: Locale): string => (locale === "UK" ? food.uk : food.us);
