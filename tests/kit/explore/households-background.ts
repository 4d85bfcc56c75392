// The households of background insulin and of the reading walk, each small enough to be walked to its end.
import type { BackgroundDose, DoseCard } from "#events/card.ts";
import type { Intent } from "#events/intent.ts";
import { units } from "#events/quantity.ts";
import { dose, nightCard, twiceCard } from "../background-walk.ts";
import { fixedCard, odileNight, odilePen } from "../people.ts";
import { all, base, begin, ever, LOOKS_RIGHT, lasting, not, Odile, oneMeal, STREAMS, seconds, signed } from "./households.ts";
import { type Exploration, JUMPS, LOST_ROWS, STARTS } from "./moves.ts";
import type { World } from "./world.ts";

const both = [ever(odilePen), ever(odileNight)];
/** In the quiet hours, so that no reminder is due: those are looked at in households-reminders.ts. */
const HOURS: Readonly<Record<string, string>> = { "21:30": "22:30", "20:00": "22:30", "08:00": "04:00" };
const atNight = (card: DoseCard): DoseCard => ({
  ...lasting(card),
  background: (card.background ?? []).map((line) => ({ ...line, at: HOURS[line.at] ?? line.at })),
});
const at = (card: DoseCard, pens = both) => begin([{ person: Odile, card: atNight(card), pens }]);
const withLines = (background: BackgroundDose[]): DoseCard => ({ ...fixedCard, background });

/** What the explorations of meals leave out, and of the kitchen only what is looked at here. */
const opens =
  (...doses: Intent["do"][]): Exploration["follows"] =>
  (i, w) => {
    if (["open meal", "open reading", "open background", "open low", "tell a dose later"].includes(i.do))
      return doses.includes(i.do) && (i.do !== "open meal" || i.meal === "breakfast");
    return oneMeal(i, w);
  };

const usual = all(
  opens("open background"),
  not("report", "set aside", "skip washing", "begin wait", "not this spot"),
  LOOKS_RIGHT,
  STREAMS,
);
const noWipe: Exploration["follows"] = (i) => i.do !== "skin cleaned" || i.how === "clean without a wipe";
const stays: Exploration["follows"] = (i, w: World) =>
  i.do !== "leave" || (w.house.front !== null && Boolean(w.house.people[w.house.front]?.walk?.silent));
const upToTheDose = all(usual, not("heard dose", "took sugar", "cannot swallow"));
const kept = { ...base, hours: 20 };

export const BACKGROUND_EXPLORATIONS: readonly Exploration[] = [
  {
    ...kept,
    name: "background",
    looksAt: "a background dose by the clock, left and taken up again at every step, without a reading, and a second one inside its window",
    facts: at(nightCard),
    texts: { "left in window": ["1", "15"] },
    around: seconds(16 * 60),
    atRest: seconds(19 * 3600),
    follows: all(usual, noWipe, not("read word", "back")),
  },
  {
    ...kept,
    name: "background readings",
    looksAt: "what may be given as a reading before it, or left out: lows treated first, HI and LO, Back",
    facts: at(nightCard),
    texts: { reading: ["70", "71", "300", "25", "5.5"], "recheck after low": ["66", "71"] },
    vias: ["touch"],
    around: seconds(16 * 60),
    follows: all(opens("open background"), not("report", "set aside", "skip washing", "begin wait", "heard dose", "leave")),
  },
  {
    ...kept,
    name: "background and a meal",
    looksAt: "both insulins of one person, one after the other: neither counts as the other, each pen stops the other's walk",
    facts: at(nightCard),
    texts: { reading: ["120"] },
    around: seconds(3 * 3600 + 60),
    atRest: seconds(19 * 3600),
    follows: all(
      opens("open background", "open meal"),
      not(
        "report",
        "set aside",
        "skip washing",
        "begin wait",
        "not this spot",
        "read word",
        "back",
        "cannot eat",
        "answer meal",
        "change number",
      ),
      noWipe,
      stays,
      LOOKS_RIGHT,
      STREAMS,
      (i) => i.do !== "exercise" || !i.hard,
    ),
  },
  {
    ...kept,
    name: "background two times a day",
    looksAt: "two doses of one insulin, each with its hour and its window",
    facts: at(twiceCard),
    texts: {},
    around: seconds(3600, 9 * 3600),
    follows: all(usual, noWipe, stays, not("read word", "back", "change number")),
  },
  {
    ...kept,
    name: "background told later",
    scouts: 100,
    looksAt: "either insulin taken away from home and told later, before, in and after a walk, up to the dose",
    facts: at(nightCard),
    texts: {},
    around: seconds(16 * 60, 3 * 3600, 19 * 3600),
    follows: all(
      (i, w) => i.do === "tell a dose later" || (i.do === "open meal" && i.meal === "breakfast") || upToTheDose(i, w),
      not("read word", "back"),
    ),
    extra: (i) =>
      i.do === "tell a dose later"
        ? [
            { ...i, units: 14, minutesAgo: 0 },
            { ...i, units: 14, minutesAgo: 20 * 60 },
          ]
        : [],
  },
  {
    ...kept,
    name: "background in doubt",
    looksAt: "the clock set, the app started again: at every step of a background walk",
    facts: at(nightCard),
    texts: { dial: ["14"] },
    around: [...seconds(61 * 60), ...JUMPS.slice(0, 1), ...STARTS.slice(0, 1)],
    scouts: 12,
    follows: all(usual, noWipe, stays, not("read word", "back", "change number", "answer meal")),
  },
  {
    ...kept,
    name: "background lost rows",
    looksAt: "rows that nobody can read, up to the dose",
    facts: at(nightCard),
    texts: { reading: ["120"] },
    around: [...seconds(16 * 60, 19 * 3600), ...LOST_ROWS],
    follows: all(upToTheDose, stays, not("read word", "back", "change number")),
  },
  {
    ...kept,
    name: "background mishaps",
    looksAt: "a background walk with something wrong at every step, and the meal after it up to the dose",
    facts: at(nightCard),
    texts: { "left in window": ["1"], "recheck after low": ["110"] },
    around: seconds(3600, 19 * 3600),
    follows: all(
      (i, w) =>
        (i.do === "report" && ["too much", "wrong insulin", "not sure", "it hurt or bled"].includes(i.mishap)) ||
        (i.do === "open mishap" && i.mishap === "wrong insulin") ||
        usual(i, w),
      noWipe,
      stays,
      not("read word", "back", "change number"),
    ),
  },
  {
    ...kept,
    name: "background pens",
    looksAt: "the right pen, nearly empty; the mealtime pen, one typed as the other, one that cannot show the dose; another name on it",
    facts: at(nightCard, [
      { ...ever(odileNight), unitsWhenOpened: 20 },
      ever(odilePen),
      { ...ever(odilePen), id: "odd", insulinId: "glargine-100", mark: "a bead" },
      { ...ever(odileNight), id: "twos", unitsPerClick: "5", mark: "two beads" },
    ]),
    texts: {},
    around: [],
    follows: all(usual, noWipe, stays, not("read word", "back", "change number", "begin wait")),
  },
  {
    ...kept,
    name: "background card: blank",
    looksAt: "the window of a background dose left blank",
    facts: at(withLines([dose("21:30", 14, { windowMinutes: null })])),
    texts: { reading: ["120"] },
    around: seconds(16 * 60, 25 * 3600),
    follows: all(upToTheDose, not("read word")),
  },
  {
    ...kept,
    name: "background card: ended",
    looksAt: "valid until yesterday",
    facts: begin([{ person: Odile, card: { ...atNight(nightCard), validUntil: "2026-06-02" }, pens: both }]),
    texts: { reading: ["70", "120"], "recheck after low": ["71"] },
    around: seconds(16 * 60),
    follows: all(upToTheDose, (i) => i.do !== "took sugar" || i.food === "glucose-tablets"),
  },
  {
    ...kept,
    name: "background drawer",
    looksAt: "a keeper signs a card with other units, and one without the dose, in the middle of the walk",
    facts: at(nightCard),
    texts: { dial: ["14", "15"] },
    around: [
      ...seconds(61 * 60),
      { kind: "keeper", person: "odile", event: signed(atNight({ ...nightCard, background: [dose("21:30", 15)] }), "other units") },
      { kind: "keeper", person: "odile", event: signed(lasting(fixedCard), "without") },
    ],
    follows: all(usual, noWipe, stays, not("read word", "back", "change number")),
  },
  {
    ...base,
    name: "reading walk",
    looksAt: "a reading by itself: low, high, HI, LO, both units, left, something wrong; no dose is told",
    facts: at({ ...fixedCard, largestDose: units(20) }),
    texts: { reading: ["70", "71", "120", "300", "25", "5.5"], "recheck after low": ["66", "71"] },
    around: seconds(0, 21, 16 * 60),
    follows: all(opens("open reading"), not("skip washing", "answer meal"), (i) => i.do !== "report" || i.mishap === "too much"),
  },
];
