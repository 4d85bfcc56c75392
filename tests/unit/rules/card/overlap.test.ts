import { describe, expect, it } from "vitest";
import { overlap } from "#rules/card/overlap.ts";

const days = (validFrom: string, validUntil: string | null) => ({ validFrom, validUntil });
const SPRING = days("2026-03-01", "2026-05-31");

describe("two cards", () => {
  it("overlap on a day that both hold, the last day of one included", () => {
    expect(overlap(SPRING, days("2026-05-31", null))).toBe(true);
    expect(overlap(SPRING, days("2026-06-01", null))).toBe(false);
    expect(overlap(SPRING, days("2026-01-01", "2026-03-01"))).toBe(true);
    expect(overlap(SPRING, days("2026-01-01", "2026-02-28"))).toBe(false);
    expect(overlap(SPRING, days("2026-04-01", "2026-04-02"))).toBe(true);
  });

  it("overlap always where neither ends, whichever comes first", () => {
    expect(overlap(days("2026-03-01", null), days("2027-01-01", null))).toBe(true);
    expect(overlap(days("2027-01-01", null), days("2026-03-01", null))).toBe(true);
    expect(overlap(days("2026-06-01", null), SPRING)).toBe(false);
  });
});
