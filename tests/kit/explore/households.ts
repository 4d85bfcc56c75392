// The households that are explored, each small enough to be walked to its end: a kind of card, a kind of trouble.
import type { DoseCard } from "#events/card.ts";
import type { Happened, Of } from "#events/happened.ts";
import type { Intent } from "#events/intent.ts";
import type { Pen } from "#events/pen.ts";
import type { Household, Person } from "#events/person.ts";
import { units } from "#events/quantity.ts";
import type { NewFact } from "#walk/decide.ts";
import { backgroundOnlyCard, correctionOnlyCard, fixedPlusCard, fixedTableCard, gridCard, premixedCard, servingsCard } from "../cards.ts";
import { bandsCard, bram, bramPen, fixedCard, odile, odileNight, odilePen, ratioCard } from "../people.ts";
import { type Exploration, JUMPS, LOST_ROWS, STARTS, TIMES } from "./moves.ts";
import type { Move, World } from "./world.ts";

function never(what: string): never {
  throw new Error(`no ${what}`);
}

const FAR = "2099-12-31";

/** Cards and pens that outlast any run of days, so that the calendar is a matter of the explorations that are about it. */
export const lasting = (card: DoseCard): DoseCard => ({ ...card, reviewBy: null, validUntil: null });
/** The question about the meal is always due: it is a matter of the explorations that answer it. */
export const asked = (card: DoseCard): DoseCard => ({ ...lasting(card), care: { ...card.care, askEatenMinutes: 0 } });
/** Corrections at any hour: the night is a matter of the explorations that are about it. */
export const byDay = (card: DoseCard): DoseCard => ({ ...asked(card), bedtime: { from: "21:00", until: "05:00", correction: true } });
export const ever = (pen: Pen): Pen => ({ ...pen, unitsWhenOpened: null, inUseDays: 40_000, expiresOn: FAR });

/** One thigh only: quick to plan. */
const thigh: Person["leftOutRegions"] = ["belly", "arm", "buttock"];

export interface InHouse {
  person: Person;
  card: DoseCard | null;
  pens: readonly Pen[];
}

/** Quiet all day: reminders are walked in households-reminders.ts. */
const household: Household = {
  kind: "home",
  emergencyNumber: "911",
  country: "US",
  quietHours: { from: "00:00", until: "00:00" },
};

export function begin(people: readonly InHouse[]): NewFact[] {
  const facts: NewFact[] = [{ person: null, walk: null, event: { type: "household begun", household } }];
  for (const { person, card, pens } of people) {
    const own = (event: Happened): NewFact => ({ person: person.id, walk: null, event });
    facts.push(own({ type: "person added", person }));
    if (card) facts.push(own(signed(card, `card of ${person.id}`)));
    facts.push(...pens.map((pen) => own({ type: "pen added", pen })));
  }
  return facts;
}

export const signed = (card: DoseCard, cardHash: string): Of<"card signed"> => ({
  type: "card signed",
  card,
  cardHash,
  signature: { keeper: "k1", keeperName: "Ines", signedOn: "2026-01-02", typedTwice: true, readBack: true },
});

export const Odile = { ...odile, leftOutRegions: thigh };
const Bram = { ...bram, leftOutRegions: thigh };
const odileAt = (card: DoseCard | null, person: Partial<Person> = {}, pens: readonly Pen[] = [ever(odilePen)]): NewFact[] =>
  begin([{ person: { ...Odile, ...person }, card, pens }]);
const bramAt = (card: DoseCard, person: Partial<Person> = {}): NewFact[] =>
  begin([{ person: { ...Bram, ...person }, card, pens: [ever(bramPen)] }]);

/** One meal, and of answers that lead where another answer leads too only one: the others are walked in the explorations that are about them. */
export const oneMeal: Exploration["follows"] = (i) => {
  switch (i.do) {
    case "open meal":
      return i.meal === "breakfast";
    // Walked in households-background.ts.
    case "open reading":
    case "open background":
      return false;
    case "tell a dose later":
      return i.insulin === undefined;
    case "report":
      return i.mishap === "nothing came out" || i.mishap === "something else";
    case "open mishap":
      return false;
    case "answer meal":
      // Less than all of it is walked in households-ill.ts.
      return i.ate === "all";
    case "not this spot":
      return i.reason === "cannot reach";
    case "took sugar":
      return i.food === "glucose-tablets";
    case "name helper":
      return i.name === "somebody else";
    default:
      return true;
  }
};

const without =
  (...left: Intent["do"][]): Exploration["follows"] =>
  (i, w) =>
    oneMeal(i, w) && !left.includes(i.do);

/** Away from the kitchen screen and the mishaps. */
const plain: Intent["do"][] = ["report", "open low", "tell a dose later", "set aside", "answer meal"];
export const seconds = (...some: number[]): readonly Move[] => some.map((s) => ({ kind: "pass", seconds: s }));

export const base = { hours: 4, vias: ["touch"] as const, around: TIMES, texts: {}, follows: oneMeal };

/** Up to the dose and what it says: the pen is not picked. */
const upToTheDose = without(...plain, "read word", "heard dose", "took sugar", "cannot swallow", "skip washing", "begin wait");
export const LOOKS_RIGHT: Exploration["follows"] = (i) => !(i.do === "insulin looks" && i.look !== "as it should be");
/** No stream is a matter of the explorations about leaving, Back, mishaps and pens. */
export const STREAMS: Exploration["follows"] = (i) => !(i.do === "primed" && !i.stream);

export const all =
  (...parts: Exploration["follows"][]): Exploration["follows"] =>
  (i, w) =>
    parts.every((part) => part(i, w));

/** The straight way to the needle and past it. */
const straight = all(
  without(...plain, "read word", "skip washing", "begin wait", "not this spot", "skin cleaned", "cannot eat"),
  LOOKS_RIGHT,
  STREAMS,
);
const clean: Exploration["follows"] = (i, w) => straight(i, w) || (i.do === "skin cleaned" && i.how === "clean without a wipe");

export const not =
  (...left: Intent["do"][]): Exploration["follows"] =>
  (i) =>
    !left.includes(i.do);
/** Left only where the card is silent and there is no other way on. */
const staysOn: Exploration["follows"] = (i, w) =>
  i.do !== "leave" || (w.house.front !== null && Boolean(w.house.people[w.house.front]?.walk?.silent));
/** Exercise changes what some cards say; where it does not, one answer is enough. */
export const calm: Exploration["follows"] = (i) => !(i.do === "exercise" && i.hard);
const front = (w: World): string | null => w.house.front;

const oneCard = (name: string, looksAt: string, card: DoseCard | null, reading: readonly string[] = ["120"]): Exploration => ({
  ...base,
  name: `card: ${name}`,
  looksAt,
  facts: odileAt(card),
  texts: { reading, "telephoned number": ["6", "21"] },
  around: seconds(16 * 60, 3 * 3600, 25 * 3600),
  follows: all(upToTheDose, (i, w) => calm(i, w) || name === "exercise"),
});

const oneKind = (name: string, looksAt: string, card: DoseCard, texts: Exploration["texts"] = {}): Exploration => ({
  ...base,
  name: `kind: ${name}`,
  looksAt,
  facts: odileAt(byDay(card)),
  texts: { reading: ["100", "121", "251", "360"], ...texts },
  around: seconds(16 * 60, 3 * 3600),
  follows: all(upToTheDose, calm, not("back", "change number")),
});

const bandsBreakfast = bandsCard.meals.breakfast?.kind === "bands" ? bandsCard.meals.breakfast : never("bands");
/** As bandsCard, with 180 between two rows: 141 to 179, then 181 to 220. */
const bandsWithHole: DoseCard = {
  ...bandsCard,
  meals: {
    ...bandsCard.meals,
    breakfast: { ...bandsBreakfast, bands: bandsBreakfast.bands.map((b) => (b.to === 180 ? { ...b, to: 179 } : b)) },
  },
};
/** A card that prints a table for an insulin that may not correct. */
const premixedTableCard: DoseCard = { ...bandsCard, insulin: premixedCard.insulin };
const mmolBands: DoseCard = {
  ...ratioCard,
  meals: {
    ...ratioCard.meals,
    breakfast: {
      kind: "bands",
      edges: "as printed",
      foodOnly: units(4),
      bands: [
        { from: 4, to: 9.9, units: units(4), call: false },
        { from: 10.1, to: 14, units: units(6), call: false },
      ],
    },
  },
};
const manyPens: readonly Pen[] = [
  { ...ever(odilePen), unitsWhenOpened: 12 },
  ever(odileNight),
  { ...ever(odilePen), id: "expired", expiresOn: "2026-06-02" },
  { ...ever(odilePen), id: "old", openedOn: "2026-05-01", inUseDays: 28 },
  { ...ever(odilePen), id: "cloudy", cloudy: true, openedOn: null },
];
/** Only the buttocks, and a hand so small that few spots fit. */
const littleSkin: Person = { ...odile, leftOutRegions: ["belly", "arm", "thigh"], body: { ...odile.body, handMm: 50, fingerMm: 30 } };

export const EXPLORATIONS: readonly Exploration[] = [
  {
    ...base,
    name: "leaving",
    looksAt: "a whole meal by a card of fixed units, left and taken up again at every step, waits, a second meal inside the window",
    facts: odileAt(lasting(fixedCard)),
    texts: { reading: ["120"], "left in window": ["0", "1", "6", "7"] },
    around: seconds(0, 21, 6 * 60, 16 * 60, 3 * 3600),
    follows: all(without("read word", "open low", "tell a dose later", "cannot eat", "report", "back", "not this spot"), LOOKS_RIGHT, calm),
  },
  {
    ...base,
    name: "back",
    looksAt: "the same meal with Back and No at every step",
    facts: odileAt(lasting(fixedCard)),
    texts: { reading: ["120"], "left in window": ["1"] },
    around: seconds(21, 16 * 60, 3 * 3600),
    follows: all(without("read word", "open low", "tell a dose later", "cannot eat", "report", "leave"), LOOKS_RIGHT),
  },
  {
    ...base,
    name: "mishaps",
    looksAt: "the same meal with something wrong at every step",
    facts: odileAt(lasting(fixedCard)),
    texts: { reading: ["120"], dial: ["6"], "left in window": ["1"], "recheck after low": ["110"] },
    around: seconds(16 * 60, 3 * 3600),
    follows: all(
      (i, w) =>
        // An ill day, and half a meal, are walked in explorations of their own (households-ill.ts).
        (i.do === "report" &&
          !["feeling ill", "half eaten"].includes(i.mishap) &&
          (i.mishap !== "vomiting" || Boolean(w.house.people.odile?.walk?.injected)) &&
          !w.house.people.odile?.walk?.low &&
          !w.house.people.odile?.walk?.ill) ||
        without("read word", "open low", "tell a dose later", "cannot eat", "back", "leave", "change number")(i, w),
      // A low that follows is walked in the explorations about lows: here it is treated once and ends.
      (i, w) => !w.house.people.odile?.walk?.low || not("cannot swallow", "no meter", "eating", "answer meal")(i, w),
      // An ill day is walked in explorations of its own: here it is gone through the shortest way.
      (i, w) => !w.house.people.odile?.walk?.ill || (not("read word", "leave")(i, w) && !(i.do === "danger signs" && i.any)),
      LOOKS_RIGHT,
      calm,
    ),
  },
  {
    ...base,
    name: "told in the kitchen",
    looksAt:
      "something that went wrong and was found out later: too much, the wrong insulin, in doubt; and the meal after it, up to the dose",
    facts: odileAt(lasting(fixedCard)),
    texts: { reading: ["120"] },
    around: [...seconds(16 * 60, 3 * 3600, 10 * 3600), STARTS[0] ?? { kind: "pass", seconds: 0 }],
    follows: all(
      (i, w) => (i.do === "open mishap" && i.mishap !== "vomiting" && i.mishap !== "feeling ill") || upToTheDose(i, w),
      calm,
      not("back", "change number"),
    ),
  },
  {
    ...base,
    name: "readings",
    looksAt: "what may be given as a reading: edges of low and of the usual band, high advice, both units, words, nonsense; up to the dose",
    facts: odileAt(lasting(fixedCard)),
    texts: { reading: ["69", "70", "71", "120", "251", "300", "25", "5.5", "0", "1800", "", "180.5"] },
    vias: ["touch", "voice"],
    around: seconds(21, 16 * 60),
    follows: without(...plain, "heard dose", "took sugar", "cannot swallow"),
  },
  {
    ...base,
    name: "low",
    looksAt: "lows from a reading, a word, the kitchen and a meal that cannot be eaten: treated, tested again, called",
    facts: odileAt(lasting(fixedCard)),
    texts: { reading: ["70", "120"], "recheck after low": ["50", "66", "71"] },
    around: seconds(0, 21, 16 * 60, 3600),
    follows: without("report", "tell a dose later", "answer meal", "exercise", "skip washing", "already washed"),
  },
  {
    ...base,
    name: "low after insulin",
    looksAt: "a meal that cannot be eaten, and a low treated before the dose",
    facts: odileAt(lasting(fixedCard)),
    texts: { reading: ["70", "120"], "recheck after low": ["66", "110"], dial: ["6"] },
    around: seconds(16 * 60, 3 * 3600),
    // The help for whoever cannot swallow is walked in "low"; what was treated before the needle plays no part in a meal that does not come.
    follows: all(
      (i, w) => clean(i, w) || (i.do === "cannot eat" && w.house.people.odile?.walk?.afterLow === false),
      calm,
      not("leave", "back", "change number", "help step done"),
    ),
  },
  {
    ...base,
    name: "after a low",
    looksAt: "a low in the kitchen, or of a meal walk, and the meal after it: the food part alone for two hours",
    facts: odileAt(byDay(bandsCard)),
    texts: { reading: ["70", "200"], "recheck after low": ["110"] },
    around: seconds(16 * 60, 3600),
    follows: all((i, w) => i.do === "open low" || i.do === "took sugar" || upToTheDose(i, w), calm, not("back", "cannot swallow"), oneMeal),
  },
  {
    ...base,
    name: "bands",
    scouts: 30,
    looksAt: "every edge of a band table and its holes, inside and outside the spacing, by day and by night",
    facts: odileAt(asked(bandsWithHole)),
    texts: { reading: ["71", "140", "141", "179", "180", "181", "220", "221", "400", "401"], dial: ["4", "6", "8", "10"] },
    around: seconds(16 * 60, 3 * 3600, 10 * 3600, 25 * 3600),
    follows: all(clean, calm, staysOn, not("back", "change number")),
  },
  {
    ...base,
    name: "bands, no food-only row",
    looksAt: "a table whose food-only row was left blank: asked, never the full band",
    facts: odileAt(byDay({ ...bandsWithHole, meals: { ...bandsWithHole.meals, breakfast: { ...bandsBreakfast, foodOnly: null } } })),
    texts: { reading: ["120", "200"], dial: ["4", "8"] },
    around: seconds(16 * 60, 3 * 3600),
    atRest: seconds(25 * 3600),
    follows: all(clean, calm, staysOn, not("back", "change number")),
  },
  {
    ...base,
    name: "ratio",
    looksAt: "grams and servings by a ratio in mmol/L with insulin on board, the other unit, ten times too much",
    facts: bramAt(byDay({ ...ratioCard, onBoard: { model: "linear", hours: 5 } })),
    texts: {
      reading: ["3.9", "4.6", "10.0", "15.0", "25", "110"],
      grams: ["40", "400", "4000", "0"],
      servings: ["3"],
      "recheck after low": ["7.0"],
    },
    around: seconds(16 * 60, 3 * 3600),
    follows: all(clean, calm, staysOn, not("back")),
  },
  {
    ...base,
    name: "plate",
    looksAt: "foods put on the plate and taken off, a usual meal, back and again",
    facts: bramAt(byDay(ratioCard)),
    texts: { reading: ["7.0"], grams: ["45.5"], servings: ["2"] },
    foods: ["bread-white", "glucose-gel", "no such food"],
    around: seconds(16 * 60),
    follows: upToTheDose,
  },
  {
    ...base,
    name: "mmol bands",
    looksAt: "10.0 mmol/L between a row that ends at 9.9 and one that begins at 10.1",
    facts: bramAt(byDay(mmolBands)),
    texts: { reading: ["4.0", "4.1", "9.9", "10.0", "10.1"] },
    around: seconds(16 * 60),
    follows: upToTheDose,
  },
  {
    ...base,
    name: "grid",
    looksAt: "glucose rows by columns of grams, to every edge, inside and outside the spacing",
    facts: odileAt(byDay(gridCard)),
    texts: { reading: ["71", "150", "151", "260"], grams: ["30", "31", "45", "90"], servings: ["3"], dial: ["2", "4", "6"] },
    around: seconds(16 * 60, 3 * 3600),
    follows: all(clean, calm, staysOn, not("back", "change number")),
  },
  oneKind("servings", "units for each serving of 15 g, with a correction", servingsCard, { grams: ["30", "45"], servings: ["3"] }),
  oneKind("fixed and a correction", "the same units each time, and a correction by a target", fixedPlusCard),
  oneKind("fixed and a table", "the same units each time, and a table of corrections", fixedTableCard),
  oneKind("correction only", "nothing for the food", correctionOnlyCard),
  oneKind("premixed", "cloudy insulin that never corrects, with a table that would", premixedTableCard),
  oneKind("background only", "no dose for any meal", {
    ...backgroundOnlyCard,
    // In the quiet hours: reminders are looked at in households-reminders.ts.
    background: (backgroundOnlyCard.background ?? []).map((line) => ({ ...line, at: "22:30" })),
  }),
  {
    ...base,
    name: "next card",
    looksAt: "a card signed ahead: its day comes before, in and after a walk",
    facts: [
      ...odileAt({ ...lasting(fixedCard), validUntil: "2026-06-03" }),
      {
        person: "odile",
        walk: null,
        event: {
          ...signed(
            {
              ...lasting(fixedCard),
              validFrom: "2026-06-04",
              meals: { ...fixedCard.meals, breakfast: { kind: "fixed units", units: units(5) } },
            },
            "next",
          ),
          waits: true,
        },
      },
    ],
    texts: { reading: ["120"], dial: ["6", "5"] },
    around: seconds(16 * 60, 25 * 3600),
    follows: all(clean, calm, not("back", "change number")),
  },
  oneCard("none", "no card at all", null),
  oneCard("ended", "valid until yesterday", { ...lasting(fixedCard), validUntil: "2026-06-02" }),
  oneCard("last day", "valid until today, and tomorrow not", { ...lasting(fixedCard), validUntil: "2026-06-03" }),
  oneCard("later", "valid from tomorrow", { ...lasting(fixedCard), validFrom: "2026-06-04" }),
  oneCard("review", "review by has passed", { ...lasting(fixedCard), reviewBy: "2026-06-02" }),
  oneCard("no largest", "largest dose left blank", { ...lasting(fixedCard), largestDose: null }),
  oneCard("small largest", "the meal's dose is above the largest", { ...lasting(fixedCard), largestDose: units(5) }),
  oneCard("no window", "window left blank", { ...lasting(fixedCard), windowMinutes: null }),
  oneCard("exercise", "after exercise left blank", { ...lasting(fixedCard), afterExercise: null }),
  {
    ...base,
    name: "telephoned",
    looksAt: "a number given by telephone where the table has a hole: within, above the largest, half a unit, nothing",
    facts: odileAt(byDay(bandsWithHole)),
    texts: { reading: ["180"], "telephoned number": ["6", "7", "20", "21", "6.5", "60", "0"], dial: ["6", "7", "60"] },
    vias: ["touch", "voice"],
    around: seconds(16 * 60),
    follows: all(clean, calm, not("leave")),
  },
  {
    ...base,
    name: "telephoned with a helper",
    looksAt: "a card that lets a telephoned number be used only with somebody at the elbow",
    facts: odileAt({ ...byDay(bandsWithHole), telephonedDose: "with a helper only" }),
    texts: { reading: ["180"], "telephoned number": ["6"], dial: ["6"] },
    around: seconds(16 * 60),
    follows: clean,
  },
  {
    ...base,
    name: "pens",
    looksAt: "the right pen, nearly empty; another person's, long-acting, expired, open too long, cloudy; every look of the insulin",
    facts: begin([
      { person: Odile, card: lasting(fixedCard), pens: manyPens },
      { person: Bram, card: null, pens: [ever(bramPen)] },
    ]),
    texts: { reading: ["120"], dial: ["6"] },
    around: [],
    follows: all(
      (i, w) =>
        clean(i, w) ||
        (i.do === "insulin looks" && i.look === "clumped" && w.house.people.odile?.walk?.penCheck.pen === "cloudy") ||
        !STREAMS(i, w),
      (i) => i.do !== "open meal" || i.person === "odile",
      calm,
      not("leave", "change number"),
      // Back only where no stream came and there is no other way on.
      (i, w) => i.do !== "back" || w.house.people.odile?.walk?.penCheck.dry === 3,
    ),
  },
  {
    ...base,
    name: "clock",
    looksAt: "the clock set back and forward, the tablet asleep, the app started again, at every step",
    facts: odileAt(lasting(fixedCard)),
    texts: { reading: ["120"], dial: ["6"] },
    around: [...seconds(21, 16 * 60), ...JUMPS, ...STARTS],
    follows: all((i, w) => clean(i, w) || i.do === "begin wait" || i.do === "skin cleaned", calm, not("change number", "back")),
  },
  {
    ...base,
    name: "lost rows",
    // A row lost while a needle grows old is rare: with 120 scouts two states stayed outside in 20 runs, with 300 none.
    scouts: 300,
    looksAt: "a row that nobody can read any more, before, within and after a walk",
    facts: odileAt({ ...byDay(bandsWithHole), spacingMinutes: 180 }),
    texts: { reading: ["200"], dial: ["4", "8"] },
    around: [...seconds(16 * 60, 3 * 3600), ...LOST_ROWS],
    atRest: seconds(25 * 3600),
    follows: all(clean, calm, not("change number", "back", "leave")),
  },
  {
    ...base,
    name: "told later",
    looksAt: "doses taken away from the tablet and told later, with and without a time, and a day away",
    facts: odileAt(asked(bandsWithHole)),
    texts: { reading: ["200"], dial: ["4", "8"] },
    around: seconds(16 * 60, 3 * 3600, 10 * 3600, 25 * 3600),
    follows: all((i, w) => clean(i, w) || i.do === "tell a dose later", calm, not("change number", "back", "leave")),
    extra: (i) =>
      i.do === "tell a dose later"
        ? [
            { ...i, units: 4, minutesAgo: 60 },
            { ...i, units: 4, minutesAgo: 260 },
            { ...i, units: 1800, minutesAgo: -60 },
          ]
        : [],
  },
  {
    ...base,
    name: "two people",
    looksAt: "two walks in one kitchen: front, waits kept, the other's bell and low",
    facts: begin([
      { person: Odile, card: lasting(fixedCard), pens: [ever(odilePen)] },
      {
        person: Bram,
        card: lasting({ ...fixedCard, person: "bram", glucoseUnit: "mmol/L", low: { value: 4, counts: "below" }, high: null }),
        pens: [ever(bramPen)],
      },
    ]),
    texts: { reading: ["120"], dial: ["6"], "recheck after low": ["7.0"] },
    around: seconds(16 * 60, 3 * 3600),
    follows: (i, w) => {
      if (i.do === "open meal") return i.meal === "breakfast" && i.person === "odile" && w.house.people.odile?.doses.length === 0;
      if (i.do === "open low") return i.person === "bram";
      if (i.do === "leave") return front(w) === "bram";
      if (i.do === "pick pen") return i.pen === "odile-meal";
      if (i.do === "primed") return i.stream;
      if (i.do === "took sugar") return oneMeal(i, w) && w.house.people.bram?.walk?.low?.rounds.length === 0;
      return all(clean, calm, not("back", "change number", "cannot swallow", "no meter"))(i, w);
    },
  },
  {
    ...base,
    name: "by clicks",
    looksAt: "the dial counted twice by a person who does not see it, the own number said first, numbers by voice",
    facts: odileAt(lasting(fixedCard), { dialBy: "counts twice", sayFirst: true }),
    texts: { reading: ["120"], "own number": ["6", "60"], "left in window": ["1"] },
    vias: ["voice"],
    around: seconds(16 * 60, 3 * 3600),
    follows: all(clean, calm, not("leave")),
  },
  {
    ...base,
    name: "by voice",
    looksAt: "the dial said by voice: its digits a second time",
    facts: odileAt(lasting(fixedCard)),
    texts: { reading: ["120"] },
    vias: ["touch", "voice"],
    around: seconds(16 * 60, 3 * 3600),
    follows: all(clean, calm, not("leave")),
  },
  {
    ...base,
    name: "with a helper",
    looksAt: "a person who injects only with somebody at the elbow, who reads the dial",
    facts: odileAt(lasting(fixedCard), { helperOnly: true, dialBy: "helper" }),
    texts: { reading: ["120"] },
    around: [...seconds(16 * 60, 3 * 3600), STARTS[0] ?? { kind: "pass", seconds: 0 }],
    follows: all(clean, calm, not("change number")),
  },
  {
    ...base,
    name: "after eating",
    looksAt: "a card whose insulin comes after the meal: its food part alone, by the reading from before; no bell once eating is recorded",
    facts: odileAt({ ...asked(bandsWithHole), timing: { when: "after eating", earliestMinutes: 0, latestMinutes: 30 } }),
    texts: { reading: ["200"], dial: ["4", "8"] },
    around: seconds(16 * 60, 3600),
    follows: all(clean, calm, not("change number")),
  },
  {
    ...base,
    name: "little skin",
    looksAt: "a body with few free spots: declined, marked, rested, none left",
    facts: begin([
      { person: littleSkin, card: { ...lasting(fixedCard), care: { ...fixedCard.care, lastSpotMm: 20 } }, pens: [ever(odilePen)] },
    ]),
    texts: { reading: ["120"], dial: ["6"] },
    around: seconds(3 * 3600),
    follows: (i, w) =>
      (clean(i, w) || (i.do === "not this spot" && (i.reason === "sore" || i.reason === "lump"))) &&
      i.do !== "change number" &&
      i.do !== "leave",
  },
  {
    ...base,
    name: "drawer",
    looksAt: "a keeper signs another card, marks a place or puts a pen aside in the middle of a walk",
    facts: odileAt(lasting(fixedCard)),
    texts: { reading: ["120"], dial: ["6", "5"] },
    around: [
      ...seconds(16 * 60),
      {
        kind: "keeper",
        person: "odile",
        event: signed(
          { ...lasting(fixedCard), meals: { ...fixedCard.meals, breakfast: { kind: "fixed units", units: units(5) } } },
          "the new card",
        ),
      },
      { kind: "keeper", person: "odile", event: { type: "pen retired", pen: "odile-meal", why: "other" } },
    ],
    follows: all(clean, calm, not("change number", "leave")),
  },
];
