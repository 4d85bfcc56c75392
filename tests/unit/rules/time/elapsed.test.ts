import { describe, expect, it } from "vitest";
import { HOUR, MINUTE } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { clockJump } from "#rules/time/clock-jump.ts";
import { elapsed, oldestAge } from "#rules/time/elapsed.ts";

const EIGHT = Date.UTC(2026, 2, 28, 7);
const from: Stamp = { wall: EIGHT, mono: 5000, boot: "a", zone: "Europe/Berlin", offset: 60 };
const later = (mono: number, wall: number): Stamp => ({ ...from, mono: from.mono + mono, wall: from.wall + wall });
const restarted = (wall: number): Stamp => ({ ...from, boot: "b", mono: 10, wall: from.wall + wall });

describe("how long ago", () => {
  it("is counted by the monotonic clock within one start, whatever the wall clock did", () => {
    expect(elapsed(from, later(HOUR, 5 * HOUR), true)).toBe(HOUR);
    expect(elapsed(from, later(HOUR, -5 * HOUR), false)).toBe(HOUR);
  });

  it("is counted by the wall clock over a restart, only while it is sure", () => {
    expect(elapsed(from, restarted(2 * HOUR), true)).toBe(2 * HOUR);
    expect(elapsed(from, restarted(2 * HOUR), false)).toBeNull();
  });

  it("is not known when the wall clock runs backwards over a restart, or a stamp lies ahead", () => {
    expect(elapsed(from, restarted(-MINUTE), true)).toBeNull();
    expect(elapsed(later(MINUTE, MINUTE), from, true)).toBeNull();
    expect(elapsed(from, from, true)).toBe(0);
  });

  it("is the same over the night of a clock change: three hours stay three hours", () => {
    // 00:30 summer time begins at 02:00: the wall of the kitchen shows 04:30, and only three hours have passed.
    const dose: Stamp = { ...from, wall: Date.UTC(2026, 2, 28, 23, 30), offset: 60 };
    const now: Stamp = { ...dose, boot: "b", mono: 0, wall: dose.wall + 3 * HOUR, offset: 120 };
    expect(elapsed(dose, now, true)).toBe(3 * HOUR);
  });

  it("takes the larger clock for what must be fresh: the monotonic one sleeps with the tablet", () => {
    const slept = later(2 * MINUTE, 62 * MINUTE);
    expect(elapsed(from, slept, true)).toBe(2 * MINUTE);
    expect(oldestAge(from, slept, true)).toBe(62 * MINUTE);
    expect(oldestAge(from, later(20 * MINUTE, -HOUR), true)).toBe(20 * MINUTE);
    expect(oldestAge(from, restarted(HOUR), false)).toBeNull();
  });
});

describe("a jump of the clock", () => {
  it("is none while both clocks agree, wobbles and small corrections included", () => {
    expect(clockJump(from, later(HOUR, HOUR))).toBeNull();
    expect(clockJump(from, later(HOUR, HOUR + 30_000))).toBeNull();
    expect(clockJump(from, later(0, -1000))).toBeNull();
    expect(clockJump(from, later(HOUR, HOUR - 30_000))).toBeNull();
  });

  it("is a restart when the app began anew, whatever the clocks show", () => {
    expect(clockJump(from, restarted(0))).toBe("restart");
    expect(clockJump(from, restarted(-HOUR))).toBe("restart");
  });

  it("is forward when the wall ran ahead by more than half a minute", () => {
    expect(clockJump(from, later(MINUTE, MINUTE + 30_001))).toBe("forward jump");
  });

  it("is behind when the wall shows a time before the last entry", () => {
    expect(clockJump(from, later(0, -1001))).toBe("behind the last entry");
    expect(clockJump(from, later(5000, -1001))).toBe("behind the last entry");
  });

  it("is behind too when the wall was set back but is still ahead of the entry", () => {
    expect(clockJump(from, later(2 * HOUR, HOUR))).toBe("behind the last entry");
  });

  it("is none when summer time begins: the zone is the same, and both clocks count on", () => {
    expect(clockJump(from, { ...later(HOUR, HOUR), offset: 120 })).toBeNull();
  });

  it("is another time zone when the hour of the day moved with the zone", () => {
    expect(clockJump(from, { ...later(HOUR, HOUR), zone: "America/Chicago", offset: -360 })).toBe("another time zone");
    // The same hour under another name changes nothing that a card goes by.
    expect(clockJump(from, { ...later(HOUR, HOUR), zone: "Europe/Paris" })).toBeNull();
  });
});
