// The households of ill days, high readings, and meals that were not eaten whole, each small enough to be walked to its end.
import type { DoseCard } from "#events/card.ts";
import type { MishapKind } from "#events/happened-walk.ts";
import type { Intent } from "#events/intent.ts";
import { ketoneCard, plusCard, stripCard } from "../cards.ts";
import { bandsCard, fixedCard, odilePen } from "../people.ts";
import { all, asked, base, begin, byDay, calm, ever, lasting, not, Odile, oneMeal, seconds } from "./households.ts";
import { type Exploration, STARTS } from "./moves.ts";

const at = (card: DoseCard) => begin([{ person: Odile, card, pens: [ever(odilePen)] }]);
const walkOf = (w: Parameters<Exploration["follows"]>[1]) => w.house.people.odile?.walk;

/** From the kitchen: nothing but that somebody feels ill. */
const onlyIll: Exploration["follows"] = (i) => {
  if (i.do === "open mishap" || i.do === "report") return i.mishap === "feeling ill";
  return !["open meal", "open low", "open reading", "open background", "tell a dose later", "answer meal", "answer reminder"].includes(
    i.do,
  );
};
/** A low that comes in between is treated once and ends. */
const shortLow: Exploration["follows"] = (i, w) =>
  !walkOf(w)?.low || (oneMeal(i, w) && !["cannot swallow", "no meter", "read word", "report", "leave"].includes(i.do));
/** The way to the needle and past it, and nothing beside it. */
const toTheEnd: Exploration["follows"] = (i, w) =>
  oneMeal(i, w) &&
  ![
    "read word",
    "skip washing",
    "begin wait",
    "not this spot",
    "back",
    "change number",
    "tell a dose later",
    "set aside",
    "report",
    "leave",
    "open low",
    "open reading",
  ].includes(i.do) &&
  (i.do !== "skin cleaned" || i.how === "clean without a wipe") &&
  (i.do !== "insulin looks" || i.look === "as it should be") &&
  (i.do !== "primed" || i.stream) &&
  calm(i, w);

const TOLD_THERE: readonly MishapKind[] = ["half eaten", "feeling ill"];
/** The needle step was opened, and nobody has said yet what went in. */
const atNeedle = (w: Parameters<Exploration["follows"]>[1]): boolean => {
  const walk = walkOf(w);
  return Boolean(walk?.injectOpened) && !walk?.injected;
};

/** left: what is walked in another of these. */
const illDay = (name: string, looksAt: string, card: DoseCard, texts: Exploration["texts"], ...left: Intent["do"][]): Exploration => ({
  ...base,
  name: `ill: ${name}`,
  looksAt,
  scouts: 20,
  facts: at(lasting(card)),
  texts: { "recheck after low": ["110"], ...texts },
  around: seconds(6 * 60, 21 * 60),
  follows: all(onlyIll, shortLow, (i) => !left.includes(i.do)),
});

export const ILL_EXPLORATIONS: readonly Exploration[] = [
  illDay(
    "blank card",
    "an ill day by a card that says nothing of one: danger signs, silence, HI and LO, no meter, a low in between",
    fixedCard,
    {
      "reading when ill": ["62", "180", "320"],
    },
    "report",
  ),
  illDay(
    "ketones of blood",
    "an ill day with ketones of blood: each line of the card and below it, no strip, sick-day rules",
    ketoneCard,
    {
      "reading when ill": ["180", "320"],
      ketones: ["0.5", "1.5", "3", "15", ""],
    },
    "leave",
    "read word",
    "report",
    "change number",
    "set aside",
  ),
  illDay(
    "strip with plus signs",
    "an ill day with a strip: each of its fields, read back and turned down",
    plusCard,
    {
      "reading when ill": ["180"],
    },
    "leave",
    "read word",
    "report",
    "no meter",
    "set aside",
  ),
  {
    ...base,
    name: "ill: high before a meal",
    looksAt: "a reading from which the card wants ketones, HI once and twice, and an ill day told at every step up to the dose",
    facts: at(
      asked({
        ...bandsCard,
        ketones: stripCard.ketones ?? never(),
        high: { value: 300, advice: "Drink water." },
        bedtime: { from: "21:00", until: "05:00", correction: true },
      }),
    ),
    texts: { reading: ["120", "240", "320"], "reading when ill": ["130"] },
    around: seconds(16 * 60),
    follows: all(
      (i, w) => (i.do === "report" && i.mishap === "feeling ill" && !walkOf(w)?.ill) || (oneMeal(i, w) && i.do !== "report"),
      (i, w) => !(i.do === "read word" && (i.word === "LO" || walkOf(w)?.ill)) && !(i.do === "read strip" && i.level > 0 && i.level < 3),
      calm,
      not(
        "back",
        "change number",
        "skip washing",
        "begin wait",
        "open low",
        "tell a dose later",
        "answer meal",
        "set aside",
        "heard dose",
        "open reading",
        "leave",
        "no meter",
      ),
    ),
  },
  {
    ...base,
    name: "ill: correction",
    looksAt: "a correction, and two hours later an ill day with the glucose still high: no second one inside the card's spacing",
    facts: at({ ...byDay(bandsCard), windowMinutes: 60, spacingMinutes: 240 }),
    texts: { reading: ["240"], dial: ["4", "10"], "reading when ill": ["240"] },
    around: seconds(2 * 3600),
    follows: all(
      (i, w) => (i.do === "open mishap" && i.mishap === "feeling ill") || toTheEnd(i, w),
      (i) => !(i.do === "answer meal" && i.ate !== "all") && !(i.do === "danger signs" && i.any),
      not("cannot eat", "no meter"),
    ),
  },
  {
    ...base,
    name: "told at the needle",
    looksAt:
      "half eaten and feeling ill, told while the needle is in or may be: the ill day, a low in it, a start of the app, the needle's own question",
    facts: at(asked(fixedCard)),
    texts: { reading: ["120"], dial: ["6"], "reading when ill": ["62", "180"], "recheck after low": ["110"] },
    around: [...seconds(16 * 60), STARTS[0] ?? { kind: "pass", seconds: 0 }],
    scouts: 20,
    follows: all(
      (i, w) =>
        (i.do === "report" && atNeedle(w) && TOLD_THERE.includes(i.mishap) && !walkOf(w)?.ill) || i.do === "leave" || toTheEnd(i, w),
      // Left with nothing told, and before and after the needle: others walk.
      (i, w) => i.do !== "leave" || (atNeedle(w) && Boolean(walkOf(w)?.mishap ?? walkOf(w)?.ill)),
      shortLow,
      not("cannot eat", "no meter", "button feels", "window not seen", "needle came out early", "doubt clock"),
      (i, w) => i.do !== "open meal" || w.house.people.odile?.doses.length === 0,
      (i) => i.do !== "answer meal" || i.ate === "all",
    ),
  },
  {
    ...base,
    name: "not eaten whole",
    looksAt: "half, hardly any, not kept down: the watch, its readings, food later, a low, the insulin's end",
    facts: at(asked(fixedCard)),
    texts: { reading: ["120"], dial: ["6"], "recheck after low": ["66", "110"] },
    around: seconds(16 * 60, 65 * 60, 5 * 3600),
    scouts: 30,
    follows: all(
      (i, w) =>
        i.do === "answer meal" ||
        (i.do === "open mishap" && i.mishap === "vomiting") ||
        (i.do === "leave" && Boolean(walkOf(w)?.low)) ||
        toTheEnd(i, w),
      not("cannot swallow", "no meter", "cannot eat"),
      // One meal a day is enough here, and an ill day is gone through the shortest way.
      (i, w) => i.do !== "open meal" || (w.house.people.odile?.doses.length === 0 && oneMeal(i, w)),
      (i, w) => !walkOf(w)?.ill || (i.do !== "leave" && !(i.do === "danger signs" && i.any)),
    ),
  },
  {
    ...base,
    name: "not eaten whole, after a start",
    looksAt: "the same watch when the app starts again: day and time agreed, or said to be wrong",
    facts: at(asked(fixedCard)),
    texts: { reading: ["120"], dial: ["6"], "recheck after low": ["110"] },
    around: [...seconds(65 * 60, 5 * 3600), STARTS[0] ?? { kind: "pass", seconds: 0 }],
    atRest: seconds(25 * 3600),
    scouts: 20,
    follows: all(
      (i, w) => (i.do === "answer meal" && i.ate === "hardly any") || (i.do !== "answer meal" && toTheEnd(i, w)),
      not("cannot swallow", "no meter", "cannot eat", "took sugar"),
      (i, w) => i.do !== "open meal" || (w.house.people.odile?.doses.length === 0 && oneMeal(i, w)),
    ),
  },
];

function never(): never {
  throw new Error("the card has no ketones");
}
