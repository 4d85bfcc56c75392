// A day with meal hours: whether and when the tablet reminds.
import type { Intent } from "#events/intent.ts";
import type { NewFact } from "#walk/decide.ts";
import { fixedCard, odilePen } from "../people.ts";
import { base, begin, ever, lasting, Odile, seconds } from "./households.ts";
import type { Exploration } from "./moves.ts";
import type { Move } from "./world.ts";

const HOUR = 3600;
/** A nap that begins while a call may still come. */
const NAP = { from: "15:00", until: "16:00" } as const;
const napping = (facts: readonly NewFact[]): NewFact[] =>
  facts.map((f) =>
    f.event.type === "household begun" ? { ...f, event: { ...f.event, household: { ...f.event.household, quietHours: NAP } } } : f,
  );
const FOLLOWED: readonly Intent["do"][] = ["open meal", "leave", "turn to", "answer reminder", "agree clock", "doubt clock"];
/** In half hours, as the state key counts them. */
const AROUND: readonly Move[] = [...seconds(HOUR / 2), { kind: "start again", afterSeconds: HOUR / 2, rowLost: null }];

export const REMINDER_EXPLORATIONS: readonly Exploration[] = [
  {
    ...base,
    name: "reminders",
    scouts: 40,
    looksAt:
      "a meal with usual hours and quiet ones after it: walks opened and left, calls answered and not, clocks in doubt, a new start of the app",
    facts: napping(
      begin([
        {
          person: {
            ...Odile,
            mealHours: [{ meal: "lunch", from: "12:30", until: "13:30" }],
          },
          card: lasting(fixedCard),
          pens: [ever(odilePen)],
        },
      ]),
    ),
    around: AROUND,
    follows: (i) => FOLLOWED.includes(i.do) && (i.do !== "open meal" || i.meal === "lunch"),
  },
];
