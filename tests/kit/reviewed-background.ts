// Scenes of background insulin and of a reading by itself, brought about in the real walk.
import type { DoseCard } from "#events/card.ts";
import type { MishapKind } from "#events/happened-walk.ts";
import type { Intent } from "#events/intent.ts";
import { dose, nightCard, open, toDose, toEnd, toNeedle, whole, withNight } from "./background-walk.ts";
import { fixedCard, odilePen } from "./people.ts";
import type { Table } from "./table.ts";

type Scene = readonly [when: string, table: Table];

const HI: Intent = { do: "read word", word: "HI", via: "touch" };
const WRONG: readonly MishapKind[] = ["too much", "too little", "wrong insulin", "nothing came out", "not sure", "vomiting"];
const washed = (): Table => open(withNight()).send({ do: "already washed" });
const atPen = (t = withNight()): Table => toDose(open(t)).send({ do: "heard dose" });
const atNeedle = (): Table => toNeedle(toDose(open(withNight())));
const later = (t: Table, hours: number): Table => {
  t.pass(hours * 3600);
  return t;
};
const evening = (t: Table): Table => later(t, 9);
const told = (units: number | null, minutesAgo: number | null): Table =>
  withNight().send({ do: "tell a dose later", person: "odile", units, minutesAgo, insulin: "glargine-100" });

function unseen(): Table {
  const t = withNight();
  t.send({ do: "open reading", person: "odile" }, { do: "leave" });
  return later(t, 25).send({ do: "set aside", person: "odile" });
}

const injected = (): Table => {
  const t = atNeedle().send({ do: "button is down" });
  t.pass(10);
  return t.send({ do: "wait is over" }, { do: "window is at zero" });
};

const afterWrong = (): Table => injected().send({ do: "report", mishap: "wrong insulin" }, { do: "heard mishap advice" });

/** own: the words that stand where the clinic types. */
export function backgroundScenes(own: string): Scene[] {
  const missed: DoseCard = { ...nightCard, advice: { ...nightCard.advice, missed: own } };
  const blank = withNight({ ...fixedCard, background: [dose("21:30", 14, { windowMinutes: null })] });
  return [
    ["a dose inside its window", open(later(whole(withNight()), 1))],
    ["a dose of unknown size and time inside its window", open(told(null, null))],
    ["the book does not know", open(unseen())],
    ["before it: the reading", washed()],
    ["the meter shows HI", washed().send(HI)],
    ["the reading is low", washed().send({ do: "read word", word: "LO", via: "touch" })],
    ["the card tells it, at its hour", toDose(open(evening(withNight())))],
    ["the card tells it, far from its hour", toDose(open(withNight()))],
    ["the card tells it, far from its hour; the card has its own words", toDose(open(withNight(missed)))],
    ["with a reading", open(evening(withNight())).send({ do: "already washed" }).number("reading", "120")],
    ["the card leaves its window blank", toDose(open(blank).send({ do: "answer taken", answer: "no" }))],
    ["no pen is left", atPen(withNight(nightCard, [odilePen]))],
    ["the pen", atPen()],
    ["the name on the pen", atPen().send({ do: "pick pen", pen: "odile-night", how: "mark" })],
    ["put away", injected()],
    ["the end", injected().send({ do: "put away" })],
    ["the end after the wrong insulin", afterWrong().send({ do: "put away" })],
    ...WRONG.map((mishap): Scene => [`${mishap}, at the needle`, atNeedle().send({ do: "report", mishap })]),
    ...WRONG.map((mishap): Scene => [`${mishap}, after the injection`, injected().send({ do: "report", mishap })]),
  ];
}

export function readingScenes(): Scene[] {
  const at = () => withNight().send({ do: "open reading", person: "odile" }, { do: "already washed" });
  const low = at().send({ do: "read word", word: "LO", via: "touch" }, { do: "took sugar", food: "glucose-tablets", grams: 16 });
  low.pass(15 * 60);
  return [
    ["the reading", at()],
    ["saved", at().number("reading", "120")],
    ["the meter shows HI", at().send(HI)],
    ["the low is over", low.number("recheck after low", "110")],
  ];
}

/** "Did I take it?" with both insulins. */
export const backgroundBooks = (): Scene[] => [
  ["nothing of long-acting insulin is in the book", withNight()],
  ["2 hours after long-acting insulin", later(whole(withNight()), 2)],
  ["long-acting insulin was told later, time not known", told(null, null)],
  ["the walk of long-acting insulin stopped at the needle", atNeedle().send({ do: "leave" })],
  ["after its whole walk", toEnd(atNeedle())],
];
