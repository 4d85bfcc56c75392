// @vitest-environment jsdom
import { act, cleanup, render, screen, within } from "@testing-library/preact";
import { afterEach, describe, expect, it, vi } from "vitest";
import type { LogRow } from "#events/log-port.ts";
import { DAY } from "#events/quantity.ts";
import { type DayBookProps, DayBookScreen } from "#screens/daybook/day-book-screen.tsx";
import { GuardProvider } from "#ui/guard-context.tsx";
import { bandsCard, bram, bramPen, odile, odilePen, ratioCard } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";
import { rowsOf, unreadable } from "../../unit/reports/rows.ts";
import { buttons, guard, press } from "../calm-press.ts";

afterEach(() => cleanup());

/** A table at which Odile has had breakfast. */
function afterBreakfast() {
  const t = new Table([
    { person: odile, card: bandsCard, pens: [odilePen] },
    { person: bram, card: ratioCard, pens: [bramPen] },
  ]);
  const before = t.state.lastSeq;
  t.send({ do: "open meal", person: "odile", meal: "breakfast" }, { do: "already washed" }).number("reading", "132");
  t.send(
    { do: "exercise", hard: false },
    { do: "meal is ready" },
    { do: "heard dose" },
    { do: "pick pen", pen: "odile-meal", how: "mark" },
  );
  t.send({ do: "insulin looks", look: "as it should be" }, { do: "needle fitted" }, { do: "primed", stream: true }).number("dial", "4");
  t.send({ do: "take spot" }, { do: "skin cleaned", how: "wiped" });
  t.pass(25);
  t.send({ do: "wait is over" }, { do: "button is down" });
  t.pass(12);
  t.send({ do: "wait is over" }, { do: "window is at zero" }, { do: "put away" });
  t.pass(6 * 60);
  t.send({ do: "eating" }, { do: "finish" });
  return { t, rows: rowsOf(t.facts).filter((row) => row.seq > before) };
}

const between =
  (rows: readonly LogRow[]): DayBookProps["rowsOfDay"] =>
  async (from, to) =>
    rows.filter((row) =>
      row.readable ? row.at.wall >= from && row.at.wall < to : row.wall === null || (row.wall >= from && row.wall < to),
    );

async function open(props: DayBookProps) {
  const drawn = render(
    <GuardProvider guard={guard}>
      <DayBookScreen {...props} />
    </GuardProvider>,
  );
  await settle();
  return drawn;
}
const settle = () => act(async () => new Promise((done) => setTimeout(done, 0)));
const turn = async (name: string) => {
  press(name);
  await settle();
};
const lines = () =>
  within(screen.getByRole("main"))
    .queryAllByRole("heading", { level: 2 })
    .map((time) => time.closest("li")?.querySelector("p")?.textContent?.replaceAll("\u00a0", " "));

describe("the day book", () => {
  it("shows a walk and an unreadable row, in the order of the log", async () => {
    const { t, rows } = afterBreakfast();
    await open({
      rowsOfDay: between([...rows, unreadable(t.state.lastSeq + 1, t.now.wall)]),
      house: t.state,
      now: t.now,
      onClose: vi.fn(),
    });
    const [walk, row, ...others] = lines();
    expect(walk).toMatch(/^Breakfast\. Reading 132 mg\/dL\. 4 units, .+ side of the belly\. Ate after 6 minutes\.$/);
    expect(row).toBe("A row could not be read. It may hold a dose.");
    expect(others).toEqual([]);
  });

  it("shows every step only when asked", async () => {
    const { t, rows } = afterBreakfast();
    await open({ rowsOfDay: between(rows), house: t.state, now: t.now, onClose: vi.fn() });
    expect(screen.queryByText(/Dialed 4 units/)).toBeNull();
    await turn("All steps");
    expect(screen.getByText(/Dialed 4 units, read on the dial/)).toBeTruthy();
    await turn("Fewer words");
    expect(screen.queryByText(/Dialed 4 units/)).toBeNull();
  });

  it("keeps each person's page apart", async () => {
    const { t, rows } = afterBreakfast();
    await open({ rowsOfDay: between(rows), house: t.state, now: t.now, onClose: vi.fn() });
    await turn("Bram");
    expect(screen.getByText("Nothing was written on this day.")).toBeTruthy();
    expect(screen.getByRole("button", { name: "Bram" }).getAttribute("aria-pressed")).toBe("true");
    await turn("Odile");
    expect(lines()).toHaveLength(1);
  });

  it("turns the days, never past today, and says which day it is", async () => {
    const { t, rows } = afterBreakfast();
    const tomorrow = { ...t.now, wall: t.now.wall + DAY };
    await open({ rowsOfDay: between(rows), house: t.state, now: tomorrow, onClose: vi.fn() });
    const title = () => screen.getByRole("heading", { level: 1 }).textContent ?? "";
    expect(title()).toMatch(/^Today, /);
    expect(buttons()).not.toContain("Day after");
    await turn("Day before");
    expect(title()).not.toMatch(/Today/);
    expect(lines()).toHaveLength(1);
    await turn("Day after");
    expect(title()).toMatch(/^Today, /);
    expect(screen.getByText("Nothing was written on this day.")).toBeTruthy();
  });

  it("drops an answer that comes after the page was turned", async () => {
    const { t, rows } = afterBreakfast();
    const waiting: ((rows: LogRow[]) => void)[] = [];
    const slow: DayBookProps["rowsOfDay"] = () => new Promise((done) => waiting.push(done));
    await open({ rowsOfDay: slow, house: t.state, now: t.now, onClose: vi.fn() });
    await turn("Day before");
    waiting[0]?.(rows);
    await settle();
    expect(screen.getByText("One moment. The day is being read.")).toBeTruthy();
    waiting[1]?.([]);
    await settle();
    expect(screen.getByText("Nothing was written on this day.")).toBeTruthy();
    await turn("Today");
    await turn("Day before");
    waiting[3]?.([]);
    await settle();
    waiting[2]?.(rows);
    await settle();
    expect(screen.getByText("Nothing was written on this day.")).toBeTruthy();
  });

  it("says so when the day could not be read, and never shows it as empty", async () => {
    const { t } = afterBreakfast();
    await open({ rowsOfDay: () => Promise.reject(new Error("closed")), house: t.state, now: t.now, onClose: vi.fn() });
    expect(screen.getByText(/The day could not be read/)).toBeTruthy();
    expect(screen.queryByText("Nothing was written on this day.")).toBeNull();
  });

  it("can be scrolled from the keyboard, by a region with a name", async () => {
    const { t, rows } = afterBreakfast();
    await open({ rowsOfDay: between(rows), house: t.state, now: t.now, onClose: vi.fn() });
    const region = screen.getByRole("region");
    expect(region.tabIndex).toBe(0);
    expect(region.getAttribute("aria-label")).toMatch(/^Today, /);
  });

  it("closes by Back", async () => {
    const onClose = vi.fn();
    const { t, rows } = afterBreakfast();
    await open({ rowsOfDay: between(rows), house: t.state, now: t.now, onClose });
    press("Back");
    expect(onClose).toHaveBeenCalledOnce();
  });
});

describe("the body chart", () => {
  it("draws the spots of 12 weeks and tells the same in a table", async () => {
    const { t, rows } = afterBreakfast();
    await open({ rowsOfDay: between(rows), house: t.state, now: t.now, onClose: vi.fn() });
    await turn("Body chart");
    expect(screen.getByRole("heading", { level: 1 }).textContent).toBe("Odile: belly");
    const cells = within(screen.getByRole("table"))
      .getAllByRole("row")
      .slice(1)
      .map((row) => [...row.children].map((cell) => cell.textContent ?? ""));
    expect(cells).toHaveLength(1);
    expect(cells[0]?.[0]).toBe("Today");
    expect(cells[0]?.[1]).toMatch(/navel/);
    expect(screen.getByRole("img", { name: "Spots of the last 12 weeks: belly" }).textContent).toContain("today");
    await turn("Next part");
    expect(screen.getByRole("heading", { level: 1 }).textContent).toBe("Odile: left thigh");
    expect(screen.getByText("No spot was used here in 12 weeks.")).toBeTruthy();
    await turn("To the day");
    expect(lines()).toHaveLength(1);
  });

  it("leaves out what is older than 12 weeks", async () => {
    const { t, rows } = afterBreakfast();
    await open({ rowsOfDay: between(rows), house: t.state, now: { ...t.now, wall: t.now.wall + 85 * DAY }, onClose: vi.fn() });
    await turn("Body chart");
    expect(screen.getByText("No spot was used here in 12 weeks.")).toBeTruthy();
  });

  it("shows 4 weeks in place of 12, and keeps the part", async () => {
    const { t, rows } = afterBreakfast();
    await open({ rowsOfDay: between(rows), house: t.state, now: { ...t.now, wall: t.now.wall + 40 * DAY }, onClose: vi.fn() });
    await turn("Body chart");
    expect(screen.getAllByRole("row")).toHaveLength(2);
    await turn("4 weeks");
    expect(screen.queryAllByRole("row")).toEqual([]);
    expect(screen.getByText("No spot was used here in 4 weeks.")).toBeTruthy();
    expect(screen.getByRole("heading", { level: 1 }).textContent).toBe("Odile: belly");
    await turn("12 weeks");
    expect(screen.getAllByRole("row")).toHaveLength(2);
  });

  it("prints the whole body from a button: name, days, card and a table with codes, unseen until then", async () => {
    const print = vi.spyOn(window, "print").mockImplementation(() => undefined);
    const { t, rows } = afterBreakfast();
    await open({ rowsOfDay: between(rows), house: t.state, now: t.now, onClose: vi.fn() });
    await turn("Body chart");
    const paper = document.querySelector<HTMLElement>(".chart-paper");
    expect(paper?.hidden).toBe(true);
    expect(paper?.querySelector("h1")?.textContent).toBe("Body chart of Odile");
    expect(paper?.textContent).toContain("13 March 2026 to 5 June 2026");
    expect(paper?.textContent).toContain("The card of Harbour Clinic lets each spot rest 28 days.");
    const cells = [...(paper?.querySelectorAll("tbody tr") ?? [])].map((row) => [...row.children].map((cell) => cell.textContent));
    expect(cells).toEqual([
      [
        "5 June 2026",
        "0",
        expect.stringMatching(/side of the belly$/),
        expect.stringMatching(/^[LR][LU]AQ$/),
        expect.stringMatching(/^\d+, -?\d+ mm$/),
      ],
    ]);
    await turn("Print");
    expect(print).toHaveBeenCalledOnce();
    print.mockRestore();
  });
});
