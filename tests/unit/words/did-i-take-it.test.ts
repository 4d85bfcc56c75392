// "Did I take it?": a missed or doubted dose is never repeated on doubt, so the answer says what is known and what is not (design, promise 10).
import { describe, expect, it } from "vitest";
import { fold } from "#walk/fold.ts";
import { didITakeIt } from "#words/en/did-i.ts";
import { dose, GLARGINE, nightCard, open, toDose, toNeedle, whole, withNight } from "../../kit/background-walk.ts";
import { bring, me, odileAlone, odileAt } from "../../kit/explore/at-table.ts";
import { fixedCard, odile, odileNight, odilePen } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const HOUR = 3600;
const says = (t: Table) => didITakeIt(t.state, me(t), t.now);
const taken = () => bring(odileAlone(), "done").send({ do: "finish" });

describe("did I take it?", () => {
  it("is answered by person, insulin, amount and time, at any hour", () => {
    const t = taken();
    t.pass(3 * HOUR);
    expect(says(t)).toEqual(["Odile: 6 units of mealtime insulin, 3 hours ago.", "That was today at 12:00 in the afternoon."]);
    t.pass(13 * HOUR);
    expect(says(t)[1]).toBe("That was yesterday, Friday at 12:00 in the afternoon.");
  });

  it("says that nothing is in the book, never that nothing was taken", () => {
    expect(says(odileAlone())).toEqual([
      "Odile, no recent mealtime insulin is in the book.",
      "I know only what I was told.",
      "In doubt: no dose.",
    ]);
    expect(says(taken())).not.toContain("In doubt: no dose.");
  });

  it("says a dose told later with what is not known of it", () => {
    const t = odileAlone().send({ do: "tell a dose later", person: "odile", units: 4, minutesAgo: 60 });
    expect(says(t)).toContain("That was told later. It counts as taken.");
    expect(says(t)[0]).toBe("Odile: 4 units of mealtime insulin, 1 hour ago.");
    const u = odileAlone().send({ do: "tell a dose later", person: "odile", units: null, minutesAgo: null });
    expect(says(u).slice(0, 2)).toEqual(["Odile: mealtime insulin, amount not known.", "When is not known."]);
  });

  it("says the dose that was seen behind one that is in doubt", () => {
    const t = taken();
    t.pass(HOUR);
    t.send({ do: "open mishap", person: "odile", mishap: "too much" }, { do: "heard mishap advice" });
    expect(says(t)).toContain("Before it: 6 units of mealtime insulin, 1 hour ago.");
  });

  it("says that nobody knows yet while the needle's question is open", () => {
    const t = odileAt("inject").send({ do: "leave" });
    expect(says(t)).toContain("Nobody knows yet if it went in. It counts as taken.");
  });

  it("says that long-acting insulin is not in the book, where the person has a pen that no card names", () => {
    const t = new Table([{ person: odile, card: fixedCard, pens: [odilePen, odileNight] }]);
    expect(says(t)).toContain("Insulin glargine is not in this book.");
    expect(says(odileAlone()).join(" ")).not.toContain("not in this book");
  });

  it("says of a dose that nobody is sure of that it is not certain, and of none that was seen", () => {
    const t = odileAt("inject");
    t.restart();
    t.send({ do: "needle went in", answer: "not sure" });
    expect(says(t)[0]).toBe("Odile: mealtime insulin, amount not known, 0 minutes ago.");
    expect(says(t)).toContain("It is not certain that all of it went in.");
    expect(says(taken()).join(" ")).not.toContain("not certain");
  });

  it("says the hour of a dose told later, and not the hour of the telling", () => {
    const t = odileAlone().send({ do: "tell a dose later", person: "odile", units: 4, minutesAgo: 60 });
    expect(says(t)[1]).toBe("That was today at 11:00 in the morning.");
  });

  it("says no more of the needle once the dose is in the book", () => {
    expect(says(odileAt("put away"))).toEqual([
      "Odile: 6 units of mealtime insulin, 0 minutes ago.",
      "That was today at 12:00 in the afternoon.",
    ]);
  });

  it("names no pen that was put aside", () => {
    const t = new Table([{ person: odile, card: fixedCard, pens: [odilePen, odileNight] }]);
    const retired = { readable: true, seq: t.state.lastSeq + 1, at: t.now, person: "odile", walk: null } as const;
    t.state = fold(t.state, { ...retired, event: { type: "pen retired", pen: "odile-night", why: "empty" } });
    expect(says(t).join(" ")).not.toContain("not in this book");
  });

  it("says so after a start of the app, when the clock is not sure", () => {
    const t = taken();
    t.restart();
    expect(says(t)[0]).toBe("Odile: 6 units of mealtime insulin.");
    expect(says(t)).toContain("The tablet's clock is not sure now.");
  });
});

// An empty or an unclear book is no leave to inject: whatever it does not hold may have been taken elsewhere (promise 10).
describe("a book that is empty or unclear", () => {
  const NOTHING = ["I know only what I was told.", "In doubt: no dose."];
  const GAP = "The tablet was not here all the time. It may not know all.";
  const away = (t: Table): Table => {
    t.pass(50 * HOUR);
    return t;
  };
  const again = (t: Table): Table => {
    t.restart();
    return t;
  };
  const atNight = () => toNeedle(toDose(open(withNight()))).send({ do: "leave" });
  const books: readonly [string, Table][] = [
    ["one insulin", odileAlone()],
    ["two insulins", withNight()],
    ["mealtime insulin taken, the other not known", bring(withNight(), "done").send({ do: "finish" })],
    ["the other taken, mealtime insulin not known", whole(withNight())],
    ["nobody was here for 2 days", away(withNight())],
    ["the app started again", again(odileAlone())],
    ["at the needle of the other insulin", atNight()],
    ["at that needle, and the app started again", again(atNight())],
  ];

  it.each(books)("says so, and in doubt no dose, never that nothing was taken: %s", (_name, t) => {
    expect(says(t)).toEqual(expect.arrayContaining(NOTHING));
    expect(says(t).join(" ")).not.toMatch(
      /\b(not|never|nothing|no dose was|none was) (yet )?(taken|injected)|\bno,|did not|you may|free to/i,
    );
  });

  it("says each insulin by itself: what is in the book, and what is not", () => {
    expect(says(withNight()).slice(0, 2)).toEqual([
      "Odile, no recent mealtime insulin is in the book.",
      "No recent insulin glargine is in the book.",
    ]);
    const meal = bring(withNight(), "done").send({ do: "finish" });
    expect(says(meal).slice(0, 3)).toEqual([
      "Odile: 6 units of mealtime insulin, 0 minutes ago.",
      "That was today at 12:00 in the afternoon.",
      "No recent insulin glargine is in the book.",
    ]);
    const detemir = { ...GLARGINE, id: "detemir-100", name: "insulin detemir" };
    const two = whole(withNight({ ...nightCard, background: [dose("21:30", 14), dose("08:00", 10, { insulin: detemir })] }));
    expect(says(two)).toEqual([
      "Odile, no recent mealtime insulin is in the book.",
      "14 units of insulin glargine, 0 minutes ago.",
      "That was today at 12:00 in the afternoon.",
      "No recent insulin detemir is in the book.",
      ...NOTHING,
    ]);
  });

  it("says that the tablet was away, and of no book that it kept without a gap", () => {
    expect(says(away(odileAlone()))).toContain(GAP);
    expect(says(again(odileAlone()))).toEqual(expect.arrayContaining([GAP, "The tablet's clock is not sure now."]));
    expect(says(odileAlone())).not.toContain(GAP);
    // 17 hours after noon: inside the window of the night dose, outside that of the meal.
    const late = new Table([{ person: odile, card: nightCard, pens: [odilePen, odileNight] }]);
    late.state = { ...late.state, clearSince: late.now.wall - 17 * HOUR * 1000 };
    expect(says(late)).toContain(GAP);
  });

  it("names the insulin at the open needle once, and says the other one beside it", () => {
    expect(says(atNight())).toEqual([
      "Odile, your last walk stopped at the needle.",
      "Nobody knows yet if it went in. It counts as taken.",
      "It is about insulin glargine.",
      "Odile, no recent mealtime insulin is in the book.",
      ...NOTHING,
    ]);
    expect(says(again(odileAt("inject").send({ do: "leave" })))).toEqual([
      "Odile, your last walk stopped at the needle.",
      "Nobody knows yet if it went in. It counts as taken.",
      "The tablet's clock is not sure now.",
    ]);
  });
});

describe("something wrong that is told in the kitchen", () => {
  it("opens its own advice with nobody's walk, and ends when it was heard", () => {
    const t = odileAlone().send({ do: "open mishap", person: "odile", mishap: "wrong insulin" });
    expect(t.step()).toBe("mishap");
    t.send({ do: "heard mishap advice" });
    expect(me(t)).toMatchObject({ walk: null, cleanWalks: 0 });
  });

  it("counts insulin that may be in, so that the next meal asks first", () => {
    const t = odileAlone().send({ do: "open mishap", person: "odile", mishap: "not sure" }, { do: "heard mishap advice" });
    expect(t.send({ do: "open meal", person: "odile", meal: "lunch" }).step()).toBe("taken");
    const ill = odileAlone().send(
      { do: "open mishap", person: "odile", mishap: "feeling ill" },
      { do: "leave" },
      { do: "set aside", person: "odile" },
    );
    expect(ill.send({ do: "open meal", person: "odile", meal: "lunch" }).step()).toBe("wash");
  });

  it("can be left, and is offered again", () => {
    const t = odileAlone().send({ do: "open mishap", person: "odile", mishap: "too much" }, { do: "leave" });
    expect(t.send({ do: "turn to", person: "odile" }).step()).toBe("mishap");
  });
});
