/** A typing of a card spoilt as fingers, tired eyes and bad papers spoil it, or worse. */
import type { Draft } from "#keeping/problem.ts";
import type { Dice } from "../voice/dice.ts";

/** What was never meant to stand in a field. */
const ABSURD = [
  "",
  " ",
  "-5",
  "0",
  "0.0001",
  "1e9",
  "999999",
  "99999999999999999999",
  "NaN",
  "Infinity",
  "six",
  "6 units",
  "1O",
  "4,5",
  "4.5.6",
  "½",
  "٦",
  "3/6/2026",
  "2026-02-30",
  "31 June 2026",
  "25:70",
  "9:30",
  "<script>",
  "__proto__",
  "null",
  "💉".repeat(30),
  "x".repeat(900),
];

const numeric = (draft: Draft) => Object.keys(draft).filter((field) => /^\d+(\.\d+)?$/.test(draft[field] ?? ""));
const rows = (draft: Draft) => Object.keys(draft).filter((field) => /\.(bands|rows|columns)\.\d+\.(from|to)$/.test(field));

function change(draft: Draft, field: string | undefined, to: (value: string) => string): Draft {
  return field === undefined ? draft : { ...draft, [field]: to(draft[field] ?? "") };
}

type Spoil = (draft: Draft, dice: Dice) => Draft;
const any = (dice: Dice, fields: readonly string[]) => (fields.length === 0 ? undefined : dice.pick(fields));

const SPOILS: Readonly<Record<string, Spoil>> = {
  "a blank": (draft, dice) => change(draft, any(dice, Object.keys(draft)), () => ""),
  "a field gone": (draft, dice) => {
    const gone = any(dice, Object.keys(draft));
    return Object.fromEntries(Object.entries(draft).filter(([field]) => field !== gone));
  },
  "something absurd": (draft, dice) => change(draft, any(dice, Object.keys(draft)), () => dice.pick(ABSURD)),
  "a number absurd": (draft, dice) => change(draft, any(dice, numeric(draft)), () => dice.pick(ABSURD)),
  tenfold: (draft, dice) => change(draft, any(dice, numeric(draft)), (value) => String(Number(value) * 10)),
  "a tenth": (draft, dice) => change(draft, any(dice, numeric(draft)), (value) => String(Number((Number(value) / 10).toFixed(4)))),
  "another unit": (draft) => change(draft, "glucoseUnit", (unit) => (unit === "mg/dL" ? "mmol/L" : "mg/dL")),
  "glucose in the other unit": (draft, dice) =>
    change(draft, any(dice, [...rows(draft), "low.value"]), (value) => String(Number((Number(value) / 18).toFixed(1)))),
  "a gap": (draft, dice) => change(draft, any(dice, rows(draft)), (value) => String(Number(value) + 15)),
  "an overlap": (draft, dice) => change(draft, any(dice, rows(draft)), (value) => String(Math.max(0, Number(value) - 15))),
  "two fields swapped": (draft, dice) => {
    const [one, other] = [any(dice, numeric(draft)), any(dice, numeric(draft))];
    if (one === undefined || other === undefined) return draft;
    return { ...draft, [one]: draft[other] ?? "", [other]: draft[one] ?? "" };
  },
  "another kind of meal": (draft, dice) =>
    change(draft, "meals.dinner.kind", () =>
      dice.pick(["none", "fixed units", "bands", "grid", "servings", "ratio", "correction only", "supper"]),
    ),
  "another choice": (draft, dice) =>
    change(draft, any(dice, ["rounding.step", "rounding.direction", "onBoard", "insulin.kind", "meals.dinner.edges", "bedtime"]), () =>
      dice.pick(["2", "5", "down", "linear", "triangle", "premixed", "long-acting", "up to the next", "times", "blank"]),
    ),
  "dates that disagree": (draft, dice) =>
    change(draft, dice.pick(["validFrom", "reviewBy", "validUntil"]), () =>
      dice.pick(["1 January 2020", "2026-03-01", "28 February 2026", "31 December 2099", "01/02/2026"]),
    ),
  "the order of rows": (draft, dice) => {
    const edges = rows(draft);
    const values = edges.map((field) => draft[field] ?? "").sort(() => dice.roll() - 0.5);
    return { ...draft, ...Object.fromEntries(edges.map((field, i) => [field, values[i] ?? ""])) };
  },
};

export function spoilt(draft: Draft, dice: Dice): Draft {
  const names = Object.keys(SPOILS);
  let bad = draft;
  for (let i = dice.whole(1, 4); i > 0; i--) bad = SPOILS[dice.pick(names)]?.(bad, dice) ?? bad;
  return bad;
}

const PARTS: readonly unknown[] = [
  null,
  undefined,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  -1,
  0,
  1e300,
  "6",
  "",
  [],
  {},
  true,
  [[]],
  "2026-13-45",
];
type Bag = Record<string, unknown>;
const isBag = (value: unknown): value is Bag => typeof value === "object" && value !== null;

/** A card that is no typing at all: an old file, another program, a torn one. Up to two of its parts, at any depth, are broken, or a day is none. */
export function broken(card: unknown, dice: Dice): unknown {
  const whole: unknown = structuredClone(card);
  if (isBag(whole) && dice.roll() < 0.1)
    whole[dice.pick(["validFrom", "reviewBy", "validUntil"])] = dice.pick(["2026-02-30", "2026-13-45"]);
  for (let i = dice.whole(0, 2); i > 0; i--) {
    let at = whole;
    while (isBag(at)) {
      const bag: Bag = at;
      const names = Object.keys(bag);
      if (names.length === 0) break;
      const name = dice.pick(names);
      if (isBag(bag[name]) && dice.roll() < 0.8) {
        at = bag[name];
        continue;
      }
      if (dice.roll() < 0.2) Reflect.deleteProperty(bag, name);
      else bag[dice.roll() < 0.9 ? name : "kind"] = dice.pick(PARTS.slice(2)) ?? null;
      break;
    }
  }
  return dice.roll() < 0.05 ? dice.pick([0, "card", true, []]) : whole;
}
