import { describe, expect, it } from "vitest";
import { DAYS, daysBefore, TODAY } from "#demo-data/days.ts";
import { HOUR, MINUTE } from "#events/quantity.ts";
import { localParts } from "#rules/time/local.ts";

/** London in 2026: summer time from 29 March to 25 October, 1:00 UTC each. */
const london = (wall: number) => (wall >= Date.UTC(2026, 2, 29, 1) && wall < Date.UTC(2026, 9, 25, 1) ? 60 : 0);
const nepal = () => 345;

const daysTo = (wall: number, offsetAt: (wall: number) => number) =>
  daysBefore({ now: { wall, mono: 1, boot: "b", zone: "anywhere", offset: offsetAt(wall) }, offsetAt });

describe("the ninety days before now", () => {
  it.each([
    ["just after midnight", Date.UTC(2026, 5, 3, 23, 1), london],
    ["an hour after summer time ended", Date.UTC(2026, 9, 25, 2, 5), london],
    ["late on the day summer time came", Date.UTC(2026, 2, 29, 22, 50), london],
    ["where the offset is no whole hour", Date.UTC(2026, 5, 3, 18, 20), nepal],
  ])("show ten past seven on every kitchen clock of them: %s", (_when, wall, offsetAt) => {
    const days = daysTo(wall, offsetAt);
    const shown = Array.from({ length: DAYS }, (_, day) => {
      const at = days.wall(day, 430);
      const { date, hour, minute } = localParts(at, offsetAt(at));
      return { right: date === days.date(day), hour, minute };
    });
    expect(shown.filter((s) => !s.right || s.hour !== 7 || s.minute !== 10)).toEqual([]);
  });

  it("end with the day of now", () => {
    const wall = Date.UTC(2026, 9, 25, 2, 5);
    const days = daysTo(wall, london);
    expect(days.date(TODAY)).toBe("2026-10-25");
    expect(days.date(0)).toBe("2026-07-28");
    // The day that summer time ends is an hour longer.
    expect(days.wall(TODAY, 12 * 60) - days.wall(TODAY - 1, 12 * 60)).toBe(25 * HOUR);
    expect(days.wall(TODAY, 12 * 60 + 1) - days.wall(TODAY, 12 * 60)).toBe(MINUTE);
  });
});
