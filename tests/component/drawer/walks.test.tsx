// @vitest-environment jsdom
import { cleanup, render, screen } from "@testing-library/preact";
import { afterEach, describe, expect, it } from "vitest";
import type { Happened } from "#events/happened.ts";
import type { LogRow } from "#events/log-port.ts";
import { DAY } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { odile } from "../../kit/people.ts";
import { rowOf } from "../../unit/reports/rows.ts";
import { begun, enter, ines, Kitchen, NOW, openWithPin, withFacts } from "./kitchen-drawer.tsx";

afterEach(() => cleanup());

const home = withFacts([begun, ines, { person: "odile", walk: null, event: { type: "person added", person: odile } }]);

/** One walk a day for so many days: stopped at the pen thrice, not sure once, a slip at the dial each. */
function book(now: Stamp): LogRow[] {
  const rows: LogRow[] = [];
  for (let day = 1; day <= 4; day++) {
    const put = (event: Happened) =>
      rows.push(rowOf(rows.length + 1, { ...now, wall: now.wall - day * DAY, mono: now.mono - day * DAY }, "odile", `w${day}`, event));
    put({ type: "walk opened", kind: "meal", meal: "lunch" });
    put({ type: "near miss", step: "dial", what: "dialled is not the card", detail: "9 for 6" });
    if (day < 4) put({ type: "walk left", step: "pen", why: "stopped by the person" });
    else put({ type: "needle question answered", wentIn: "not sure" });
  }
  return rows;
}

describe("how the walks go, in the drawer", () => {
  const lines = () => [...document.querySelectorAll(".drawer section")].map((one) => [...one.children].map((child) => child.textContent));

  it("tells a keeper what the book counts, read when the page is opened", async () => {
    const asked: number[][] = [];
    const rowsBetween = async (from: number, to: number) => {
      asked.push([from, to]);
      return book(NOW);
    };
    render(<Kitchen start={home} rowsBetween={rowsBetween} />);
    await openWithPin();
    expect(asked).toEqual([]);
    await enter("How the walks go: Odile");
    await screen.findByText("4 walks begun, 0 walked to the end.");
    expect(asked).toEqual([[NOW.wall - 56 * DAY, NOW.wall + 1]]);
    expect(lines()).toEqual([
      ["Stopped on the way", "At the pen: 3 times.", "Again and again at the pen. Ask what is hard there."],
      ["Not sure", "Not sure if insulin went in: once."],
      ["Slips that were caught", "At the dial: 4 times.", "Every slip here went no further. Blame nobody for it."],
      ["Cut short", "Nothing was cut short."],
      ["How long a walk takes", "Too few walks to tell."],
    ]);
  });

  it("says so where there is nothing to tell", async () => {
    render(<Kitchen start={home} />);
    await openWithPin();
    await enter("How the walks go: Odile");
    await screen.findByText("0 walks begun, 0 walked to the end.");
    expect(lines().map(([, line]) => line)).toEqual([
      "None was stopped on the way.",
      "Nobody was unsure.",
      "None was written down.",
      "Nothing was cut short.",
      "Too few walks to tell.",
    ]);
  });
});

describe("practice, from the drawer", () => {
  it("is one press away", async () => {
    let begun = 0;
    render(<Kitchen start={home} onPractise={() => begun++} />);
    await openWithPin();
    await enter("Practice");
    expect(begun).toBe(1);
  });
});
