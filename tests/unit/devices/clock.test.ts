import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type ClockSources, startClock } from "#devices/clock.ts";
import type { Stamp as EventStamp } from "#events/stamp.ts";
import { stamp } from "#events/stamp.ts";

const home = process.env.TZ;
const inZone = (zone: string) => {
  process.env.TZ = zone;
};
beforeEach(() => inZone("Europe/Vienna"));
afterEach(() => {
  if (home === undefined) delete process.env.TZ;
  else process.env.TZ = home;
});

const sources = (changes: Partial<ClockSources> = {}): ClockSources => ({
  wall: () => Date.UTC(2026, 0, 15, 12),
  mono: () => 1234.5,
  zone: () => "Europe/Vienna",
  random: () => "00ff",
  ...changes,
});

describe("the clock", () => {
  it("gives a stamp of the shape that events carry", () => {
    const now: EventStamp = startClock().now();
    expect(stamp.parse(now)).toEqual(now);
    expect(now.boot).toMatch(/^[0-9a-f]{16}$/);
    expect(Math.abs(now.wall - Date.now())).toBeLessThan(5000);
  });

  it("counts on monotonically and keeps its name within one start", async () => {
    const clock = startClock();
    const first = clock.now();
    await new Promise((resolve) => setTimeout(resolve, 5));
    const second = clock.now();
    expect(second.mono).toBeGreaterThan(first.mono);
    expect(second.boot).toBe(first.boot);
  });

  it("has another name at every start", () => {
    expect(new Set(Array.from({ length: 50 }, () => startClock().now().boot)).size).toBe(50);
  });

  it.each([
    ["Europe/Vienna", "2026-03-29T00:59:59Z", 60],
    ["Europe/Vienna", "2026-03-29T01:00:00Z", 120],
    ["Europe/Vienna", "2026-10-25T01:00:00Z", 60],
    ["America/New_York", "2026-01-15T12:00:00Z", -300],
    ["America/New_York", "2026-07-15T12:00:00Z", -240],
    ["Asia/Kolkata", "2026-07-15T12:00:00Z", 330],
    ["Europe/London", "2026-01-15T12:00:00Z", 0],
  ])("tells minutes east of UTC: %s at %s is %i", (zone, at, offset) => {
    inZone(zone);
    const now = startClock(sources({ wall: () => Date.parse(at), zone: () => zone })).now();
    expect(now).toMatchObject({ zone, offset });
  });

  it("asks for the zone anew each time, because a tablet travels", () => {
    const zones = ["Europe/Vienna", "Europe/London"];
    const clock = startClock(sources({ zone: () => zones.shift() }));
    expect([clock.now().zone, clock.now().zone]).toEqual(["Europe/Vienna", "Europe/London"]);
  });

  it("says UTC for the zone where the tablet does not know", () => {
    expect(startClock(sources({ zone: () => undefined })).now().zone).toBe("UTC");
  });
});
