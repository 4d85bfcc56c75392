// No source for any figure here but the household's own: hours, quiet hours and pauses are our choices (walk/reminders.ts, rules/time/house-hours.ts).
import { describe, expect, it } from "vitest";
import type { DoseCard } from "#events/card.ts";
import type { Person } from "#events/person.ts";
import { type Due, dueNext, dueToday } from "#walk/due.ts";
import { GUARDS } from "#walk/guards.ts";
import { offers } from "#walk/offers.ts";
import { dueNow } from "#words/en/kitchen.ts";
import { sayWalk } from "#words/en/steps.ts";
import { open, whole, withNight } from "../../kit/background-walk.ts";
import { backgroundOnlyCard } from "../../kit/cards.ts";
import { bring, led, me, odileAlone, setClock } from "../../kit/explore/at-table.ts";
import type { Table } from "../../kit/table.ts";

const MINUTE = 60;
const HOUR = 60 * MINUTE;
const MEALS: Person["mealHours"] = [
  { meal: "breakfast", from: "07:00", until: "09:30" },
  { meal: "lunch", from: "11:30", until: "13:00" },
  { meal: "dinner", from: "17:30", until: "19:00" },
];
/** The table stands at noon. */
const table = (card: Partial<DoseCard> = {}, person: Partial<Person> = {}): Table => odileAlone(card, { mealHours: MEALS, ...person });
const quietFrom = (t: Table, from: string, until: string): Table => {
  t.state = { ...t.state, household: { kind: "home", emergencyNumber: "911", country: "US", quietHours: { from, until } } };
  return t;
};
/** Ticks through so many minutes, as the app does, and gives the calls. */
function tick(t: Table, minutes: number): string[] {
  const calls: string[] = [];
  for (let i = 0; i < minutes; i++) {
    t.pass(MINUTE);
    for (const { event } of t.try({ do: "pass time" }).facts)
      if (event.type === "reminder called") calls.push(event.reminder.of === "meal" ? event.reminder.meal : event.reminder.insulinId);
  }
  return calls;
}
const answers = (t: Table) =>
  offers(t.state, t.now).flatMap((o) => (o.offer === "press" && o.intent.do === "answer reminder" ? [o.intent] : []));
const say = (t: Table, answer: "eaten elsewhere" | "not eating" | "later") => {
  const found = answers(t).find((a) => a.answer === answer);
  if (!found) throw new Error(`${answer} is not offered`);
  return t.send(found);
};
const states = (t: Table): Record<string, Due["state"]> =>
  Object.fromEntries(dueToday(me(t), t.now).map(({ what, state }) => [what.of === "meal" ? what.meal : `${what.of} ${what.at}`, state]));

describe("what is due", () => {
  it("is the meals by their usual hours, what the card gives by the clock and the readings, in the order of the clock", () => {
    const t = table({ background: backgroundOnlyCard.background }, { readingTimes: ["22:00", "03:00"] });
    expect(Object.keys(states(t))).toEqual(["reading 03:00", "breakfast", "lunch", "dinner", "background 21:30", "reading 22:00"]);
    expect(states(t)).toMatchObject({ breakfast: "passed", lunch: "now", dinner: "to come" });
    expect(dueNext(dueToday(me(t), t.now))?.what).toEqual({ of: "meal", meal: "lunch" });
    t.pass(2 * HOUR);
    expect(dueNext(dueToday(me(t), t.now))?.what).toEqual({ of: "meal", meal: "dinner" });
  });

  it("is in the book once a walk was opened for the meal, inside its hours or not", () => {
    const t = table();
    bring(t, "reading");
    expect(states(t).breakfast).toBe("in the book");
    t.pass(24 * HOUR);
    expect(states(t).breakfast).toBe("passed");
  });

  it("is in the book where a dose was taken elsewhere inside its hours, or at a time that nobody knows", () => {
    const later = (minutesAgo: number | null) => table().send({ do: "tell a dose later", person: "odile", units: 4, minutesAgo });
    expect(states(later(20)).lunch).toBe("in the book");
    expect(states(later(180)).lunch).toBe("now");
    expect(states(later(null)).lunch).toBe("in the book");
  });

  it("is a background dose of a card in force alone, and in the book once it was told, at whatever time", () => {
    const background = backgroundOnlyCard.background;
    expect(states(table({ background }))).toHaveProperty("background 21:30", "to come");
    expect(states(table({ background, validUntil: "2026-06-02" }))).not.toHaveProperty("background 21:30");
    // An insulin that needs a meal has no walk by the clock: a call for it could never be answered.
    const premixed = background?.map((dose) => ({ ...dose, insulin: { ...dose.insulin, kind: "premixed" as const } }));
    expect(states(table({ background: premixed }))).not.toHaveProperty("background 21:30");
    const told = table({ background });
    told.pass(9 * HOUR);
    told.send({ do: "tell a dose later", person: "odile", units: 14, minutesAgo: null, insulin: "glargine-100" });
    expect(states(told)).toHaveProperty("background 21:30", "in the book");
  });
});

describe("a background dose taken around midnight", () => {
  /** The walk of 21:30, taken so many minutes after noon. */
  const takenAt = (minutes: number) => {
    const t = withNight();
    // Something in the book by the way: a day without any entry would be asked about.
    t.pass((minutes / 2) * MINUTE);
    t.send({ do: "open reading", person: "odile" }, { do: "leave" }, { do: "set aside", person: "odile" });
    t.pass((minutes / 2) * MINUTE);
    return whole(t);
  };

  it("is that of the evening before, and leaves the next evening to come and to be called for", () => {
    const t = takenAt(12 * 60 + 12);
    expect(me(t).backgroundDoses[0]).toMatchObject({ dose: "21:30" });
    expect(states(t)).toHaveProperty("background 21:30", "to come");
    t.pass(21 * HOUR + 18 * MINUTE);
    expect(states(t)).toHaveProperty("background 21:30", "now");
    expect(tick(t, 30)).toEqual(["glargine-100"]);
  });

  it("is that of the same evening from twelve hours before it, by a walk or told later", () => {
    expect(states(takenAt(10 * 60))).toHaveProperty("background 21:30", "in the book");
    const early = takenAt(0);
    expect(states(early)).toHaveProperty("background 21:30", "in the book");
    early.pass(24 * HOUR);
    expect(states(early)).toHaveProperty("background 21:30", "to come");
    const told = withNight();
    told.pass(11 * HOUR);
    told.send({ do: "tell a dose later", person: "odile", units: 14, minutesAgo: 9 * 60, insulin: "glargine-100" });
    expect(states(told)).toHaveProperty("background 21:30", "in the book");
  });
});

describe("a background walk while a call for its dose stands", () => {
  const called = () => {
    const t = withNight();
    t.pass(9 * HOUR);
    expect(tick(t, 60)).toEqual(["glargine-100"]);
    return t;
  };

  it("asks once if it was taken without the tablet, though the book can vouch for itself", () => {
    const t = open(called());
    expect(t.step()).toBe("taken");
    expect(sayWalk(t.state, t.now, GUARDS)?.lines).toContain("Did you take insulin glargine without me?");
    t.send({ do: "answer taken", answer: "no" });
    expect(t.step()).toBe("wash");
    const yes = open(called()).send({ do: "answer taken", answer: "yes" });
    expect(me(yes)).toMatchObject({ walk: null, backgroundDoses: [{ insulinId: "glargine-100" }] });
  });

  it("asks too after Later, and not where no call stands", () => {
    expect(open(say(called(), "later")).step()).toBe("taken");
    const none = withNight();
    none.pass(9 * HOUR);
    expect(open(none).step()).toBe("wash");
  });
});

describe("a reminder", () => {
  it("calls once when a meal's hours have passed with nothing in the book, and never again for it", () => {
    const t = table();
    expect(tick(t, 59)).toEqual([]);
    expect(tick(t, 4 * 60)).toEqual(["lunch"]);
    expect(dueNow(t.state, t.now).join(" ")).toContain("no lunch is in the book. Is it time to eat?");
    expect(tick(t, 3 * 60)).toEqual(["dinner"]);
  });

  it("is not called again by a start of the app, and not while the clock is in doubt", () => {
    const t = table();
    expect(tick(t, 61)).toEqual(["lunch"]);
    t.restart();
    expect(tick(t, 8 * 60)).toEqual([]);
    t.send({ do: "agree clock" });
    expect(me(t).day.called).toHaveLength(1);
    expect(tick(t, 5)).toEqual([]);
  });

  it("is not called after the clock was set back and agreed to: the day has had its call", () => {
    const t = table();
    tick(t, 61);
    setClock(t, -HOUR);
    t.send({ do: "pass time" }, { do: "agree clock" });
    expect(tick(t, 4 * 60)).toEqual([]);
  });

  it("calls for nothing in the quiet hours, and not after them for what they hid", () => {
    const t = quietFrom(table(), "12:30", "21:00");
    expect(tick(t, 12 * 60)).toEqual([]);
    const usual = table({ background: backgroundOnlyCard.background }, { mealHours: [] });
    usual.pass(9 * HOUR + 29 * MINUTE);
    // 21:30 and half an hour end where the quiet hours begin: the call comes a quarter of an hour before them.
    expect(tick(usual, 15)).toEqual([]);
    expect(tick(usual, 1)).toEqual(["glargine-100"]);
    expect(tick(usual, 10 * 60)).toEqual([]);
  });

  it("waits while a walk is in front, while a bell counts and while a low is open", () => {
    const open = table();
    open.send({ do: "open meal", person: "odile", meal: "snack" });
    expect(tick(open, 4 * 60)).toEqual([]);
    const low = table();
    low.send({ do: "open low", person: "odile" }, { do: "leave" });
    expect(tick(low, 4 * 60)).toEqual([]);
    const bell = bring(table({}, { mealHours: [{ meal: "lunch", from: "11:30", until: "12:10" }] }), "eat").send({ do: "leave" });
    expect(tick(bell, 60)).toEqual([]);
  });

  it("comes late rather than not at all, and after two hours not any more", () => {
    const t = table();
    t.send({ do: "open meal", person: "odile", meal: "snack" });
    t.pass(2 * HOUR);
    // A snack at noon lies inside the hours of lunch: nobody is asked about it.
    expect(states(t).lunch).toBe("in the book");
    const off = table();
    off.pass(HOUR + 119 * MINUTE);
    expect(tick(off, 1)).toEqual([]);
    const late = table();
    late.pass(HOUR + 118 * MINUTE);
    expect(tick(late, 1)).toEqual(["lunch"]);
  });

  it("keeps its question on the screen until it is answered, and silence is no answer", () => {
    const t = table();
    tick(t, 61);
    expect(answers(t).map(({ answer }) => answer)).toEqual(["eaten elsewhere", "not eating", "later"]);
    say(t, "later");
    expect(answers(t).map(({ answer }) => answer)).toEqual(["eaten elsewhere", "not eating"]);
    expect(states(t).lunch).toBe("passed");
    expect(tick(t, 120)).toEqual([]);
    say(t, "not eating");
    expect(states(t).lunch).toBe("not eating");
    expect(answers(t)).toEqual([]);
  });

  it("goes when the meal is begun after all, or when the next meal's hours begin", () => {
    const begun = table();
    tick(begun, 61);
    begun.send({ do: "open meal", person: "odile", meal: "lunch" }, { do: "leave" });
    expect(answers(begun)).toEqual([]);
    const overtaken = table();
    tick(overtaken, 61);
    tick(overtaken, 4 * 60 + 20);
    expect(answers(overtaken)).not.toEqual([]);
    tick(overtaken, 15);
    expect(answers(overtaken)).toEqual([]);
  });

  it("answers nothing for the dose: no walk is opened and nothing counts as taken", () => {
    const t = table();
    tick(t, 61);
    const [elsewhere] = answers(t);
    if (!elsewhere) throw new Error("no answer");
    expect(led(t, elsewhere)).toEqual(["reminder answered"]);
    expect(me(t)).toMatchObject({ walk: null, doses: [] });
  });
});
