import { describe, expect, it } from "vitest";
import { holdCount } from "#app/hold-count.ts";
import { fixedCard, odile, odilePen } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

/** The button of the pen is down: the card's 10 seconds run. */
const holding = () =>
  new Table([{ person: odile, card: fixedCard, pens: [odilePen] }])
    .send({ do: "open meal", person: "odile", meal: "breakfast" }, { do: "already washed" })
    .number("reading", "120")
    .send(
      { do: "exercise", hard: false },
      { do: "meal is ready" },
      { do: "heard dose" },
      { do: "pick pen", pen: "odile-meal", how: "mark" },
    )
    .send({ do: "insulin looks", look: "as it should be" }, { do: "needle fitted" }, { do: "primed", stream: true })
    .number("dial", "6")
    .send({ do: "take spot" }, { do: "skin cleaned", how: "clean without a wipe" }, { do: "button is down" });

/** What is counted when the clock is read after these seconds, one after another. */
function counted(seconds: readonly number[]): (string | null)[] {
  const t = holding();
  const count = holdCount();
  let at = 0;
  return seconds.map((second) => {
    t.pass(second - at);
    at = second;
    return count(t.state, t.now);
  });
}

describe("the count of the hold", () => {
  it("says each second once, from one to the last", () => {
    expect(counted([0, 0.5, 1, 1.5, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11])).toEqual([
      null,
      null,
      "1",
      null,
      ...["2", "3", "4", "5", "6", "7", "8", "9", "10"],
      null,
    ]);
  });

  it("leaves out what a slow tablet missed, and never counts back", () => {
    expect(counted([1, 4, 4.2, 5])).toEqual(["1", "4", null, "5"]);
  });

  it("begins anew with the next hold", () => {
    const t = holding();
    const count = holdCount();
    t.pass(7);
    expect(count(t.state, t.now)).toBe("7");
    t.pass(3);
    t.send({ do: "wait is over" });
    expect(count(t.state, t.now)).toBeNull();
    const next = holding();
    next.pass(2);
    expect(count(next.state, next.now)).toBe("2");
  });
});
