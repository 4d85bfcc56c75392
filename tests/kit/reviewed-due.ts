// What is due, reminders, who can hear the tablet, the page for whoever comes, and the cautions of the day: brought about in the real walk.
import type { Hearer } from "#events/person.ts";
import { GUARDS } from "#walk/guards.ts";
import { standingReminder } from "#walk/reminders.ts";
import { sayEvening } from "#words/en/cautions.ts";
import { sayNext, sayToday } from "#words/en/due.ts";
import { helperPage } from "#words/en/helper.ts";
import { dueNow, sayCaller } from "#words/en/kitchen.ts";
import { afterReminder, sayOnItsScreen } from "#words/en/reminders.ts";
import { sayWalk } from "#words/en/steps.ts";
import { backgroundOnlyCard } from "./cards.ts";
import { bring, me, odileAlone } from "./explore/at-table.ts";
import { fixedCard } from "./people.ts";
import type { ReviewedScreen } from "./reviewed-screens.ts";
import type { Table } from "./table.ts";

const MINUTE = 60;
const HOUR = 60 * MINUTE;
const tick = (t: Table, seconds: number): Table => {
  t.pass(seconds);
  return t.send({ do: "pass time" });
};
const heardBy = (t: Table, hearer: Hearer): Table => {
  const { household } = t.state;
  if (household) t.state = { ...t.state, household: { ...household, hearer } };
  return t;
};
const lunch = { mealHours: [{ meal: "lunch", from: "11:30", until: "13:00" }] } as const;
const called = (): Table => tick(odileAlone({}, { mealHours: [...lunch.mealHours] }), 61 * MINUTE);
const night = (): Table => tick(odileAlone({ background: backgroundOnlyCard.background }), 9 * HOUR + 46 * MINUTE);
const unheard = (): Table => odileAlone().send({ do: "open low", person: "odile" }, { do: "cannot swallow" });
const reading = (text: string): Table => {
  const t = odileAlone();
  t.pass(10 * HOUR);
  return t.send({ do: "open reading", person: "odile" }, { do: "already washed" }).number("reading", text);
};
const exercised = (): Table => bring(bring(odileAlone(), "plate").send({ do: "exercise", hard: true }, { do: "meal is ready" }), "done");

/** A low whose call stands, before the help for who cannot swallow. */
const stillLow = (hearer: Hearer): Table => {
  const t = heardBy(odileAlone(), hearer).send({ do: "open low", person: "odile" });
  for (let round = 0; round < 3 && !me(t).walk?.low?.callRaised; round++) {
    t.send({ do: "took sugar", food: "glucose-tablets", grams: 16 });
    t.pass(15 * MINUTE);
    t.send({ do: "read word", word: "LO", via: "touch" });
  }
  return t;
};

export function dueScreens(clinicWords: string): ReviewedScreen[] {
  const screens: ReviewedScreen[] = [];
  const add = (part: string, when: string, lines: readonly string[], answers: readonly string[] = []) =>
    screens.push({ part, when, lines, answers });
  const walk = (t: Table) => sayWalk(t.state, t.now, GUARDS)?.lines ?? [];
  const page = (t: Table) => {
    const { facts, todo } = helperPage(t.state, me(t), t.now);
    return [...facts, ...todo];
  };
  const standing = (t: Table) => {
    const found = standingReminder(me(t), t.now);
    return found ? sayOnItsScreen(me(t), found) : [];
  };

  const day = odileAlone({ background: backgroundOnlyCard.background }, { mealHours: [...lunch.mealHours], readingTimes: ["22:00"] });
  add("What is due", "a meal is on", sayNext(day.state, day.now));
  add("What is due", "today's list at noon", sayToday(day.state, day.now));
  day.pass(8 * HOUR);
  add("What is due", "the next thing in the evening", sayNext(day.state, day.now));
  add("What is due", "today's list in the evening", sayToday(day.state, day.now));
  const restarted = odileAlone({}, { mealHours: [...lunch.mealHours] });
  restarted.restart();
  add("What is due", "the app has started again", dueNow(restarted.state, restarted.now));
  restarted.send({ do: "doubt clock" });
  add("What is due", "somebody said that the clock is wrong", dueNow(restarted.state, restarted.now));

  const answers = ["Eaten elsewhere", "Not eating", "Later", "Lunch"];
  const meal = called();
  add("A reminder", "no lunch is in the book", standing(meal), answers);
  for (const answer of ["eaten elsewhere", "not eating", "later"] as const)
    add("A reminder", `answered: ${answer}`, afterReminder(me(meal), answer));
  add(
    "A reminder",
    "answered: not eating; the card has its own words",
    afterReminder(me(odileAlone({ advice: { ...fixedCard.advice, mealSkipped: clinicWords } })), "not eating"),
  );
  add("A reminder", "no background insulin is in the book", standing(night()), ["Later", "Away from home", "Long-acting insulin"]);

  for (const [who, hearer] of [
    ["nobody hears the tablet", { who: "nobody" }],
    ["somebody is in the house", { who: "always" }],
  ] as const) {
    const t = stillLow(hearer);
    add("Who can hear", `still low, ${who}`, walk(t));
    add("Who can hear", `called aloud, ${who}`, [sayCaller(t.state, me(t), t.now)]);
  }

  const eat = bring(odileAlone(), "eat");
  eat.pass(16 * MINUTE);
  add("For whoever comes", "the bell is not answered", page(eat));
  add("For whoever comes", "a low, and nothing else is known", page(unheard()));
  const later = odileAlone({}, { glucagonSteps: ["[a step of the kit's own leaflet]"] });
  later.send({ do: "tell a dose later", person: "odile", units: null, minutesAgo: null }, { do: "open low", person: "odile" });
  later.restart();
  add("For whoever comes", "a dose of unknown size, a kit in the house, a clock in doubt", page(later));

  add("Cautions", "hard exercise, at the end of the walk", walk(exercised()));
  add("Cautions", "a bedtime reading near low", walk(reading("92")));
  const evening = exercised().send({ do: "finish" });
  evening.pass(6 * HOUR);
  add("Cautions", "the evening after hard exercise", sayEvening(evening.state, evening.now));
  const sleepy = reading("92").send({ do: "finish" });
  add("Cautions", "the night after a reading near low", sayEvening(sleepy.state, sleepy.now));
  return screens;
}
