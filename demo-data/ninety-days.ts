// Ninety days of the demo household, made on the tablet at its first start by the real walk, so that the last day is today.
// One seed and one day give one log. Figures of readings and hands: habits.ts. How often each twist comes: story.ts. In numbers:
//   3 mealtime walks a day and person, but for the days away: about 270 each
//   lows: 13 for Marta, 6 for Henk; of these 3 need two rounds of sugar (13 % were still low after 15 min of glucose tablets: first-aid table of 2015)
//   meals past the card's latest minute: 9 for Marta, 6 for Henk; meals half eaten 4 and 2, hardly eaten 1; no answer to the question after 8 % of meals
//   near misses: another number dialled 4 and 2, the wrong pen 1 and 1, the other unit 1 and 2, a second dose asked 2 and 1,
//   the needle out early 2, drying cut short 3 and 2
//   once each: a number by telephone, a snack not eaten after all, units left in the window, the app stopped at the needle, a lump found
//   Henk: hard exercise before 12 meals; two days away, ended by a dose told later
//   three times each: the question about lumps, answered with none
//   the house: one day without an entry, one evening with the tablet off (told later next morning), a new start of the app every 2 to 5 days,
//   a new card for Marta on day 30, mealtime pens used up in about 12 days, long-acting ones put aside after at most their 28 or 42 days.
import { MINUTE } from "#events/quantity.ts";
import { lumpQuestionDue } from "#walk/lump-question.ts";
import { Agenda } from "./agenda.ts";
import { Chance } from "./chance.ts";
import { DAYS, daysBefore, type Place } from "./days.ts";
import { HABITS, MEALS } from "./habits.ts";
import { Home, type TimedFact } from "./home.ts";
import { addMeal, type Kitchen } from "./meals.ts";
import { PenDrawer } from "./pens.ts";
import { type HashOf, setUp, signMartasNewCard } from "./set-up.ts";
import { AWAY_DAYS, awayFrom, EMPTY_DAY, NEW_CARD_DAY, OFF_EVENING, slotName, storyOf } from "./story.ts";

export interface DemoSettings extends Place {
  seed: string;
  hashOf: HashOf;
  newWalkId(wall: number): string;
}

const SET_UP_MINUTE = 15 * 60 + 10;
/** Nothing of a walk lies nearer to now, so that whoever opens the demo may begin a meal at once. */
const CALM_MS = 180 * MINUTE;
/** An ordinary walk with its meal takes less; the last days have no other. */
const LONGEST_WALK_MS = 30 * MINUTE;
/** The tablet starts again after so many days, between half past six and five past seven. Own figures. */
const DAYS_BETWEEN_STARTS = [2, 5] as const;
const START_MINUTE = [390, 425] as const;

const LUMPS_MINUTE = 16 * 60 + 30;

/** On the days it comes, both feel and find none: the lump of the story is met at the needle. */
function answerAboutLumps({ home }: Kitchen): void {
  for (const { person } of HABITS)
    if (lumpQuestionDue(home.state, home.person(person), { wall: home.wall })) home.send({ do: "feel for lumps", person, found: "none" });
}

/** What happens to the house on this day, beside the meals. */
function addHouse(k: Kitchen, day: number, hashOf: HashOf): void {
  const { home, agenda, days } = k;
  const tellLater = (person: string, minuteOfDay: number, units: number, minutesAgo: number) =>
    agenda.add(days.wall(day, minuteOfDay), k.lastNote, () => home.send({ do: "tell a dose later", person, units, minutesAgo }));
  if (day !== EMPTY_DAY && day !== OFF_EVENING) agenda.add(days.wall(day, LUMPS_MINUTE), k.lastNote, () => answerAboutLumps(k));
  switch (day) {
    case NEW_CARD_DAY:
      agenda.add(days.wall(day, 16 * 60), k.lastNote, () => signMartasNewCard(home, days.date(day), hashOf));
      break;
    case AWAY_DAYS[1]:
      tellLater("henk", 20 * 60 + 25, 6.5, 140);
      break;
    case OFF_EVENING + 1:
      tellLater("marta", 7 * 60 + 12, 7, 13 * 60);
      tellLater("henk", 7 * 60 + 14, 6.5, 12 * 60 + 45);
      break;
    default:
      break;
  }
}

/** The facts in order, each with its stamp. Pure: the same settings give the same facts. */
export function ninetyDays(settings: DemoSettings): TimedFact[] {
  const { seed, now, hashOf } = settings;
  const days = daysBefore(settings);
  const home = new Home(settings, days.wall(-1, SET_UP_MINUTE), settings.newWalkId);
  const pens = new PenDrawer(home);
  const agenda = new Agenda(home);
  const k: Kitchen = { home, pens, days, agenda, lastWalk: now.wall - CALM_MS - LONGEST_WALK_MS, lastNote: now.wall - MINUTE };
  setUp(home, pens, days.date(-1), hashOf);

  const people = HABITS.map((habits) => ({ habits, story: storyOf(habits.person, seed) }));
  const starts = new Chance(`${seed} starts`);
  let nextStart = starts.whole(...DAYS_BETWEEN_STARTS);
  for (let day = 0; day < DAYS; day++) {
    if (day === OFF_EVENING + 1 || (day >= nextStart && day !== EMPTY_DAY)) {
      agenda.add(days.wall(day, starts.whole(...START_MINUTE)), k.lastNote, () => home.startAgain());
      nextStart = day + starts.whole(...DAYS_BETWEEN_STARTS);
    }
    addHouse(k, day, hashOf);
    for (const { habits, story } of people) {
      for (const meal of MEALS) {
        if (awayFrom(habits.person, day, meal)) continue;
        const chance = new Chance(`${seed} ${day} ${habits.person} ${meal}`);
        addMeal(k, { habits, day, meal, twist: story.get(slotName(day, meal)) ?? null, chance });
      }
    }
    agenda.run();
  }
  return home.facts;
}
