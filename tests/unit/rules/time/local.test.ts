import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DAY, HOUR, MINUTE } from "#events/quantity.ts";
import { addDays, compareDates, daysBetween, isBetween, isRealDate, localParts, minuteOf } from "#rules/time/local.ts";

const day = fc.integer({ min: -200_000, max: 200_000 }).map((n) => addDays("1970-01-01", n));

describe("the day and the clock of the place", () => {
  it("are those of the offset, not of UTC", () => {
    const newYear = Date.UTC(2026, 0, 1, 3, 5, 59);
    expect(localParts(newYear, -300)).toEqual({
      date: "2025-12-31",
      minuteOfDay: 22 * 60 + 5,
      weekday: 3,
      year: 2025,
      month: 12,
      day: 31,
      hour: 22,
      minute: 5,
    });
    expect(localParts(newYear, 345)).toMatchObject({ date: "2026-01-01", hour: 8, minute: 50, weekday: 4 });
  });

  it("agree with the calendar of the language for any instant and offset", () => {
    const anyInstant = fc.integer({ min: -5_000_000_000_000, max: 8_000_000_000_000 });
    fc.assert(
      fc.property(anyInstant, fc.integer({ min: -720, max: 840 }), (wall, offset) => {
        const shifted = new Date(wall + offset * MINUTE);
        const parts = localParts(wall, offset);
        expect(parts.date).toBe(shifted.toISOString().slice(0, 10));
        expect([parts.weekday, parts.hour, parts.minute]).toEqual([shifted.getUTCDay(), shifted.getUTCHours(), shifted.getUTCMinutes()]);
        expect(parts.minuteOfDay).toBe(parts.hour * 60 + parts.minute);
        expect(parts.date).toBe(`${parts.year}-${String(parts.month).padStart(2, "0")}-${String(parts.day).padStart(2, "0")}`);
      }),
      { numRuns: 2000 },
    );
  });

  it("count 28 days from 1 February 2026 to 1 March, and know leap years", () => {
    expect(addDays("2026-02-01", 28)).toBe("2026-03-01");
    expect(addDays("2028-02-28", 1)).toBe("2028-02-29");
    expect(addDays("2100-02-28", 1)).toBe("2100-03-01");
    expect(addDays("2000-02-29", -366)).toBe("1999-02-28");
  });

  it("count days, not hours divided by 24: the day of the clock change has 23", () => {
    expect(daysBetween("2026-03-28", "2026-03-30")).toBe(2);
    expect(daysBetween("2026-03-30", "2026-03-28")).toBe(-2);
    // Noon before the change to noon after it is 47 hours, and two days.
    const before = Date.UTC(2026, 2, 28, 11);
    const after = before + 47 * HOUR;
    expect(daysBetween(localParts(before, 60).date, localParts(after, 120).date)).toBe(2);
    expect(localParts(after, 120).hour).toBe(12);
    expect((after - before) / DAY).toBeLessThan(2);
  });

  it("add and take away to the same day", () => {
    fc.assert(fc.property(day, fc.integer({ min: -40_000, max: 40_000 }), (date, n) => daysBetween(date, addDays(date, n)) === n));
  });

  it("put days in order", () => {
    expect([
      compareDates("2026-03-01", "2026-02-28"),
      compareDates("2026-03-01", "2026-03-01"),
      compareDates("2025-12-31", "2026-01-01"),
    ]).toEqual([1, 0, -1]);
  });

  it("know that 30 February is no day", () => {
    expect(["2026-02-30", "2026-02-29", "2026-13-01", "2026-00-10", "26-1-1", ""].map(isRealDate)).toEqual(Array(6).fill(false));
    expect(["2028-02-29", "2026-12-31"].map(isRealDate)).toEqual([true, true]);
  });

  it("throw for a text that is no date at all, because a schema should have stopped it", () => {
    expect(() => addDays("tomorrow", 1)).toThrow(RangeError);
  });

  it("take a night from its first minute to just before its last, over midnight", () => {
    const at = (time: string) => isBetween(minuteOf(time), "21:00", "05:00");
    expect(["20:59", "21:00", "23:59", "00:00", "04:59", "05:00"].map(at)).toEqual([false, true, true, true, true, false]);
    const noon = (time: string) => isBetween(minuteOf(time), "12:00", "13:00");
    expect(["11:59", "12:00", "12:59", "13:00"].map(noon)).toEqual([false, true, true, false]);
    expect(isBetween(600, "08:00", "08:00")).toBe(true);
  });
});
