// "Did I take it?": a missed or doubted dose is never repeated on doubt, so the answer says what is known and what is not (design, promise 10).
import { describe, expect, it } from "vitest";
import { didITakeIt } from "#words/en/did-i.ts";
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

  it("says so after a start of the app, when the clock is not sure", () => {
    const t = taken();
    t.restart();
    expect(says(t)[0]).toBe("Odile: 6 units of mealtime insulin.");
    expect(says(t)).toContain("The tablet's clock is not sure now.");
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
