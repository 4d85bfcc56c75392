// Ninety days of the demo household, made on the tablet at its first start by the real walk, so that the last day is today.
// One seed and one day give one log. Figures of readings and hands: habits.ts. How often each twist comes: story.ts. In numbers:
//   3 mealtime walks a day and person, but for the days away: about 270 each
//   lows: 13 for Marta, 6 for Henk; of these 3 need two rounds of sugar (13 % were still low after 15 min of glucose tablets: first-aid table of 2015)
//   meals past the card's latest minute: 9 for Marta, 6 for Henk; meals half eaten 4 and 2, hardly eaten 1; no answer to the question after 8 % of meals
//   near misses: another number dialled 4 and 2, the wrong pen 1 and 1, the other unit 1 and 2, a second dose asked 2 and 1,
//   the needle out early 2, drying cut short 3 and 2
//   once each: a number by telephone, a snack not eaten after all, units left in the window, the app stopped at the needle, a lump found
//   Henk: hard exercise before 12 meals; two days away, ended by a dose told later
//   the house: one day without an entry, one evening with the tablet off (told later next morning), a new start of the app every 2 to 5 days,
//   a new card for Marta on day 30, mealtime pens used up in about 12 days, long-acting ones put aside after at most their 28 or 42 days.
import type { DoseCard, MealName, Signature } from "#events/card.ts";
import type { LocalDate } from "#events/quantity.ts";
import { MINUTE } from "#events/quantity.ts";
import { addDays } from "#rules/time/local.ts";
import { Agenda } from "./agenda.ts";
import { Chance } from "./chance.ts";
import { DAYS, daysBefore, type Place, TODAY } from "./days.ts";
import { beginMinute, type DailyMeal, HABITS, type Habits, MEALS, readingBefore, within } from "./habits.ts";
import { Home, type TimedFact } from "./home.ts";
import { demoHousehold, henk, henkCard, marta, martaCard, martaFirstCard } from "./household.ts";
import { PenDrawer } from "./pens.ts";
import { AWAY_DAYS, awayFrom, EMPTY_DAY, NEW_CARD_DAY, OFF_EVENING, type Story, slotName, storyOf, type Twist } from "./story.ts";
import { Walker } from "./walker.ts";

export interface DemoSettings extends Place {
  seed: string;
  hashOf(card: DoseCard): string;
  newWalkId(wall: number): string;
}

/** Nothing of a walk lies nearer to now, so that whoever opens the demo may begin a meal at once. */
const CALM_MS = 180 * MINUTE;
/** An ordinary walk with its meal takes less. */
const LONGEST_WALK_MS = 40 * MINUTE;
/** Minutes after the meal at which its question is answered; the card asks after 20. */
const ASKED: readonly [number, number] = [22, 45];
const NOT_ANSWERED = 0.08;
/** Minutes past the card's latest minute of a meal that is late. */
const LATE: readonly [number, number] = [1, 21];
const SNACK_MINUTE = 15 * 60 + 5;
/** A mealtime pen is put aside with less than the largest dose and a priming in it; near now with more, so that it lasts for whoever tries. */
const ONE_DOSE_UNITS = 18;
const PLENTY_UNITS = 100;
/** Twists that come hours after the meal, in a walk of their own. */
const LATER: readonly Twist[] = [
  "asks for a second dose",
  "feels low later",
  "feels low later, two rounds",
  "snack by telephone",
  "snack not eaten after all",
];

const minutes = (n: number): number => n * MINUTE;

/** The facts in order, each with its stamp. Pure: the same settings give the same facts. */
export function ninetyDays(settings: DemoSettings): TimedFact[] {
  const { seed, now } = settings;
  const days = daysBefore(settings);
  const home = new Home(settings, days.wall(-1, 15 * 60 + 10), settings.newWalkId);
  const pens = new PenDrawer(home);
  const agenda = new Agenda(home);
  const lastWalk = now.wall - CALM_MS - LONGEST_WALK_MS;
  const lastNote = now.wall - minutes(1);

  const sign = (card: DoseCard, signedOn: LocalDate): void => {
    const signature: Signature = { keeper: "ines", keeperName: "Ines", signedOn, typedTwice: true, readBack: true };
    home.note(card.person, { type: "card signed", card, cardHash: settings.hashOf(card), signature });
  };

  function setUp(): void {
    const date = days.date(-1);
    const cardDays = { validFrom: addDays(date, -30), reviewBy: addDays(date, 75), validUntil: addDays(date, 330) };
    home.note(null, { type: "household begun", household: demoHousehold });
    home.note("marta", { type: "person added", person: marta });
    home.note("henk", { type: "person added", person: henk });
    home.note("marta", {
      type: "no-go place marked",
      noGo: { id: "marta-scar", spot: { region: "belly", side: "right", outMm: 80, downMm: 70 }, radiusMm: 25, kind: "scar" },
    });
    home.pass(1500);
    sign(martaFirstCard(cardDays), date);
    home.pass(1300);
    sign(henkCard({ ...cardDays, reviewBy: addDays(date, 150) }), date);
    home.pass(300);
    pens.addAll(date);
  }

  /** Nobody in this house asks twice inside the window, but where the story says so. */
  function outsideTheWindow(person: string): void {
    const { card, doses } = home.person(person);
    const last = doses[0];
    if (last) home.passTo(last.at.wall + minutes((card?.card.windowMinutes ?? 0) + 2));
  }

  function afterwards(habits: Habits, day: number, meal: DailyMeal, twist: Twist | undefined, chance: Chance): void {
    const { person } = habits;
    const end = home.wall;
    const { mealQuestion } = home.person(person);
    if (mealQuestion && (twist === "eats half" || twist === "hardly eats" || day >= TODAY - 2 || !chance.happens(NOT_ANSWERED))) {
      const ate = twist === "eats half" ? "half" : twist === "hardly eats" ? "hardly any" : "all";
      agenda.add(end + minutes(chance.between(...ASKED)), lastNote, () => {
        if (home.person(person).mealQuestion?.walk === mealQuestion.walk) home.send({ do: "answer meal", person, ate });
      });
    }
    const walk = (at: number, walked: MealName | null) =>
      agenda.add(at, lastWalk, () => {
        if (walked === "snack") outsideTheWindow(person);
        new Walker(
          home,
          habits,
          { meal: walked, reading: readingBefore(habits, meal, chance), twist: twist ?? null, bite: chance.between(...habits.bite) },
          chance,
        ).run();
      });
    if (twist === "asks for a second dose") walk(end + minutes(chance.between(35, 55)), meal);
    if (twist === "feels low later" || twist === "feels low later, two rounds") walk(end + minutes(chance.between(90, 140)), null);
    if (twist === "snack by telephone" || twist === "snack not eaten after all") walk(days.wall(day, SNACK_MINUTE), "snack");
  }

  function meal(habits: Habits, story: Story, day: number, name: DailyMeal): void {
    const { person } = habits;
    const chance = new Chance(`${seed} ${day} ${person} ${name}`);
    const twist = story.get(slotName(day, name));
    const own = twist && LATER.includes(twist) ? null : (twist ?? null);
    agenda.add(days.wall(day, beginMinute(habits, name, chance)), lastWalk, () => {
      pens.check(person, days.date(day), day >= TODAY - 1 ? PLENTY_UNITS : ONE_DOSE_UNITS);
      outsideTheWindow(person);
      const low = twist === "low first" || twist === "low first, two rounds";
      const reading = low ? within(habits, habits.low, chance) : readingBefore(habits, name, chance);
      const latest = home.person(person).card?.card.timing.latestMinutes ?? 0;
      const bite = twist === "meal late" ? latest + chance.between(...LATE) : chance.between(...habits.bite);
      new Walker(home, habits, { meal: name, reading, twist: own, bite }, chance).run();
      afterwards(habits, day, name, twist, chance);
    });
  }

  function tellLater(person: string, at: number, told: number, minutesAgo: number): void {
    agenda.add(at, lastNote, () => home.send({ do: "tell a dose later", person, units: told, minutesAgo }));
  }

  function house(day: number): void {
    if (day === NEW_CARD_DAY) {
      const date = days.date(day);
      agenda.add(days.wall(day, 16 * 60), lastNote, () =>
        sign(martaCard({ validFrom: date, reviewBy: addDays(date, 120), validUntil: addDays(date, 300) }), date),
      );
    }
    if (day === AWAY_DAYS[1]) tellLater("henk", days.wall(day, 20 * 60 + 25), 6.5, 140);
    if (day === OFF_EVENING + 1) {
      tellLater("marta", days.wall(day, 7 * 60 + 12), 7, 13 * 60);
      tellLater("henk", days.wall(day, 7 * 60 + 14), 6.5, 12 * 60 + 45);
    }
  }

  setUp();
  const stories = HABITS.map((habits) => ({ habits, story: storyOf(habits.person, seed) }));
  const chance = new Chance(`${seed} starts`);
  let nextStart = chance.whole(2, 5);
  for (let day = 0; day < DAYS; day++) {
    if ((day >= nextStart && day !== EMPTY_DAY) || day === OFF_EVENING + 1) {
      agenda.add(days.wall(day, chance.whole(390, 425)), lastNote, () => home.startAgain());
      nextStart = day + chance.whole(2, 5);
    }
    house(day);
    for (const { habits, story } of stories)
      for (const name of MEALS) if (!awayFrom(habits.person, day, name)) meal(habits, story, day, name);
    agenda.run();
  }
  return home.facts;
}
