// Every screen of the walks for when it goes wrong, brought about in the real walk: what a clinician reads through, and what the plain-language checks look at.
import type { DoseCard } from "#events/card.ts";
import type { Intent } from "#events/intent.ts";
import type { Person } from "#events/person.ts";
import { GUARDS } from "#walk/guards.ts";
import { offers } from "#walk/offers.ts";
import { KITCHEN_MISHAPS, MISHAPS } from "#walk/steps/mishap.ts";
import { didITakeIt } from "#words/en/did-i.ts";
import { dueNow } from "#words/en/kitchen.ts";
import { labelOf } from "#words/en/labels.ts";
import { PRACTICE } from "#words/en/practice.ts";
import { sayWalk } from "#words/en/steps.ts";
import { bring, me, odileAlone, twice } from "./explore/at-table.ts";
import { fixedCard } from "./people.ts";
import { backgroundBooks, backgroundScenes, readingScenes } from "./reviewed-background.ts";
import { dueScreens } from "./reviewed-due.ts";
import { illScenes } from "./reviewed-ill.ts";
import { watchScreens } from "./reviewed-watch.ts";
import type { Table } from "./table.ts";

export interface ReviewedScreen {
  part: string;
  when: string;
  lines: readonly string[];
  /** The answers on its buttons. */
  answers: readonly string[];
}

/** What stands where a clinic or a keeper types: nothing of it is ours. */
export const CLINIC_WORDS = "[the clinic's own words, 4 units]";
export const KIT_WORDS = "[a step of the kit's own leaflet]";

const MINUTE = 60;
const sugar: Intent = { do: "took sugar", food: "glucose-tablets", grams: 16 };
const heard: Intent = { do: "heard mishap advice" };
const noMeter: Intent = { do: "no meter" };
const LO: Intent = { do: "read word", word: "LO", via: "touch" };
const HI: Intent = { do: "read word", word: "HI", via: "touch" };
const feelsLow: Intent = { do: "open low", person: "odile" };

/** Answers that are on every screen are left out. */
const ALWAYS: readonly Intent["do"][] = ["leave", "report", "open low", "open mishap", "turn to", "back", "open meal", "set aside"];

function answersOf(t: Table): string[] {
  return offers(t.state, t.now).flatMap((o) => {
    if (o.offer === "number") return ["a number"];
    return o.offer === "press" && !ALWAYS.includes(o.intent.do) ? [labelOf(o.intent, t.state).shown] : [];
  });
}

type Scene = readonly [when: string, table: Table];

const treated = (t: Table, minutes = 15): Table => {
  t.send(sugar);
  t.pass(minutes * MINUTE);
  return t;
};
const good = (t: Table): Table => t.number("recheck after low", "110");
const rounds = (t: Table, words: readonly Intent[]): Table => words.reduce((now, word) => treated(now).send(word), t);
const kitchen = (t: Table): Table => t.send({ do: "leave" });
const inUk = (t: Table): Table => {
  t.state = { ...t.state, household: { kind: "home", emergencyNumber: "999", country: "UK" } };
  return t;
};
const later = (t: Table, minutes: number): Table => {
  t.pass(minutes * MINUTE);
  return t.send({ do: "pass time" });
};
const again = (t: Table): Table => {
  t.restart();
  return t;
};

function lows(make: (person?: Partial<Person>) => Table): Scene[] {
  const low = () => make().send(feelsLow);
  const severe = (steps: number, person: Partial<Person> = {}) => {
    const t = make(person).send(feelsLow, { do: "cannot swallow" });
    for (let i = 0; i < steps; i++) t.send({ do: "help step done" });
    return t;
  };
  return [
    ["the reading is low", twice(bring(make(), "reading"), "reading", "62")],
    ["the meter shows LO", bring(make(), "reading").send(LO)],
    ["somebody feels low, in the kitchen", low()],
    ["sugar was taken", treated(low(), 0)],
    ["a good reading too early", good(treated(low(), 5))],
    ["the wait is over", treated(low())],
    ["the clock is not sure", again(treated(low()))],
    ["the meter shows HI after sugar", treated(low()).send(HI)],
    ["the meter shows HI again", treated(low()).send(HI, HI)],
    ["still low", rounds(low(), [LO])],
    ["no meter or strip", rounds(low(), [noMeter])],
    ["no meter or strip, after two treatments", rounds(low(), [noMeter, noMeter])],
    ["still low after three treatments", rounds(low(), [LO, LO, LO])],
    ["still low after three treatments, and sugar was taken", treated(rounds(low(), [LO, LO, LO]), 0)],
    ["still low after three treatments, and its wait is over", treated(rounds(low(), [LO, LO, LO]))],
    ["nobody answers for five minutes", later(low(), 5)],
    ["cannot swallow or does not wake", severe(0)],
    ["the call is made, a kit is in the house", severe(1, { glucagonSteps: [KIT_WORDS] })],
    ["then", severe(1)],
    ["then, without a kit", severe(2)],
    ["then, with a kit", severe(3, { glucagonSteps: [KIT_WORDS] })],
    ["a high reading after sugar", twice(treated(low()), "recheck after low", "320")],
    ["the low is over, in the US", good(treated(low()))],
    ["the low is over, in the evening", good(treated(later(make(), 10 * 60).send(feelsLow)))],
    ["the low is over, in the UK", good(treated(inUk(low())))],
  ];
}

function meals(make: () => Table): Scene[] {
  const none = () => bring(make(), "eat").send({ do: "cannot eat" });
  return [
    ["the bell is not answered", later(bring(make(), "eat"), 16)],
    ["I cannot eat", none()],
    ["a good reading", good(treated(none()))],
    ["the meter shows HI twice", treated(none()).send(HI, HI)],
    ["a high reading", twice(treated(none()), "recheck after low", "320")],
    ["a high reading, and the app started again", twice(again(good(treated(none()))), "recheck after low", "320")],
    ["half an hour later", later(good(treated(none())), 31)],
    ["low again", good(treated(none())).send(LO)],
    ["something was eaten", good(treated(none())).send({ do: "eating" })],
    ["the app started again, and a good reading", good(again(good(treated(none()))))],
    ["the app started again, and the clock is said to be wrong", good(again(good(treated(none())))).send({ do: "doubt clock" })],
    ["the insulin's main action is over", good(later(good(treated(none())), 250))],
  ];
}

function mishaps(make: () => Table): Scene[] {
  const at = (stop: "pen" | "inject" | "eat") => {
    const t = bring(make(), stop);
    return stop === "pen" ? t.send({ do: "pick pen", pen: "odile-meal", how: "mark" }) : t;
  };
  const where = { pen: "while the pen is tested", inject: "at the needle", eat: "after the injection" } as const;
  const left = bring(make(), "inject").send({ do: "button is down" });
  left.pass(10);
  left.send({ do: "wait is over" }).number("left in window", "2");
  const unseen = (...felt: Intent[]) => {
    const t = bring(make(), "inject").send({ do: "button is down" });
    t.pass(10);
    return t.send({ do: "wait is over" }, { do: "window not seen" }, ...felt);
  };
  return [
    ...MISHAPS.flatMap((mishap) =>
      (["pen", "inject", "eat"] as const).map((stop): Scene => [`${mishap}, ${where[stop]}`, at(stop).send({ do: "report", mishap })]),
    ),
    ...KITCHEN_MISHAPS.map((mishap): Scene => [`${mishap}, in the kitchen`, make().send({ do: "open mishap", person: "odile", mishap })]),
    ["number left in the window", left],
    ["the window is not seen", unseen()],
    ["the button stands out", unseen({ do: "button feels", how: "standing out" })],
    ["food did not stay down: the advice was heard", at("eat").send({ do: "report", mishap: "vomiting" }, heard)],
    ["vomiting, in a low", make().send(feelsLow, { do: "report", mishap: "vomiting" })],
    ["vomiting, a while after the injection", later(at("eat"), 40).send({ do: "report", mishap: "vomiting" })],
    ["the app started again at the needle", again(at("inject"))],
  ];
}

const screen = (part: string, [when, t]: Scene): ReviewedScreen => ({
  part,
  when,
  lines: sayWalk(t.state, t.now, GUARDS)?.lines ?? dueNow(t.state, t.now),
  answers: answersOf(t),
});
const told = (part: string, when: string, lines: readonly string[]): ReviewedScreen => ({ part, when, lines, answers: [] });

function forTheHouse(make: () => Table): ReviewedScreen[] {
  const scenes: Scene[] = [
    ["a low", kitchen(make().send(feelsLow))],
    ["a low that needs help", kitchen(make().send(feelsLow, { do: "cannot swallow" }))],
    ["insulin without a meal, watched", kitchen(good(treated(bring(make(), "eat").send({ do: "cannot eat" }))))],
    ["the bell is not answered", kitchen(later(bring(make(), "eat"), 16))],
  ];
  return scenes.map(([when, t]) => told("On the kitchen screen", when, dueNow(t.state, t.now)));
}

function didI(make: () => Table): ReviewedScreen[] {
  const done = () => bring(make(), "done").send({ do: "finish" });
  const elsewhere = (units: number | null, minutesAgo: number | null) =>
    make().send({ do: "tell a dose later", person: "odile", units, minutesAgo });
  const scenes: Scene[] = [
    ["nothing is in the book", make()],
    ["3 hours after a meal's insulin", later(done(), 180)],
    ["taken away from home", elsewhere(4, 60)],
    ["taken away from home, amount and time not known", elsewhere(null, null)],
    ["too much was told", later(done(), 60).send({ do: "open mishap", person: "odile", mishap: "too much" }, heard)],
    ["the walk stopped at the needle", kitchen(bring(make(), "inject"))],
    ["the app has started again", again(done())],
    ...backgroundBooks(),
  ];
  return scenes.map(([when, t]) => told("Did I take it?", when, didITakeIt(t.state, me(t), t.now)));
}

/** By a card that says nothing of its own, and by one that does. */
export function reviewedScreens(): ReviewedScreen[] {
  const own = Object.fromEntries(Object.keys(fixedCard.advice).map((field) => [field, CLINIC_WORDS])) as DoseCard["advice"];
  const all = [fixedCard.advice, own].flatMap((advice) => {
    const make = (person: Partial<Person> = {}) => odileAlone({ advice }, person);
    const by = advice === own ? "; the card has its own words" : "";
    const answered = (["half", "hardly any", "not kept down"] as const).flatMap((ate): Scene[] => {
      const asked = () => later(bring(make(), "done"), 20).send({ do: "answer meal", person: "odile", ate });
      return [
        [`${ate}${by}`, asked()],
        [`${ate}: the advice was heard`, asked().send(heard)],
        [`${ate}: a good reading`, good(later(asked().send(heard), 60))],
      ];
    });
    return [
      ...lows(make).map((scene) => screen("A low", scene)),
      ...meals(make).map(([when, t]) => screen("Insulin is in, and no meal comes", [`${when}${by}`, t])),
      ...mishaps(make).map(([when, t]) => screen("Something is wrong", [`${when}${by}`, t])),
      ...answered.map((scene) => screen("After the meal", scene)),
      ...forTheHouse(make),
      ...Object.entries(PRACTICE).map(([when, words]) => told("Practice", when, typeof words === "string" ? [words] : words)),
      ...didI(make),
    ];
  });
  all.push(...illScenes(CLINIC_WORDS).map((scene) => screen("An ill day", scene)));
  all.push(...backgroundScenes(CLINIC_WORDS).map((scene) => screen("Long-acting insulin", scene)));
  all.push(...dueScreens(CLINIC_WORDS));
  all.push(...watchScreens());
  all.push(...readingScenes().map((scene) => screen("A reading by itself", scene)));
  const seen = new Set<string>();
  return all.filter(({ part, lines, answers }) => {
    const key = JSON.stringify([part, lines, answers]);
    return !seen.has(key) && seen.add(key);
  });
}

/** Line by line, and where a line holds more than one sentence, sentence by sentence; what others type is left out. */
export const sentencesOf = (screens: readonly ReviewedScreen[]): string[] => [
  ...new Set(
    screens
      .flatMap(({ lines }) => lines)
      .filter((line) => !line.includes(CLINIC_WORDS) && !line.includes(KIT_WORDS))
      .flatMap((line) => line.split(/(?<=[.?!])\s+/)),
  ),
];
