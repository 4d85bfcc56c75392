import { describe, expect, it } from "vitest";
import type { Spot } from "#events/spot.ts";
import { DEFAULT_BODY } from "#rules/body/area.ts";
import { denseSpots } from "#rules/body/dense.ts";
import { directions } from "#rules/body/directions.ts";
import { lattice } from "#rules/body/lattice.ts";
import { whyNot } from "#rules/body/limits.ts";
import { nextSpot, type PlanQuestion } from "#rules/body/planner.ts";
import { at, gap, plan, rules, used } from "../../../kit/bodies.ts";

const offered = (own: Partial<PlanQuestion> = {}): { spot: Spot; restDays: number; fullRest: boolean } => {
  const next = nextSpot(plan(own));
  if (next.none) throw new Error(next.why);
  return next;
};

const spotsOf = (region: "belly" | "arm") => (["left", "right"] as const).flatMap((side) => lattice(region, side, DEFAULT_BODY, 17));

/** Skin that no easy spot reaches, and only the dense pattern does. */
const beyond = (region: "belly" | "arm"): Spot[] => {
  const easy = spotsOf(region);
  return (["left", "right"] as const)
    .flatMap((side) => denseSpots(region, side, DEFAULT_BODY, 17))
    .filter((spot) => easy.every((other) => gap(other.spot, spot) >= 17));
};

describe("the first spot", () => {
  it("is on the belly, fully rested, and told in whole fingers", () => {
    const { spot, restDays, fullRest } = offered();
    expect([spot.region, restDays, fullRest]).toEqual(["belly", 28, true]);
    expect(directions(spot, DEFAULT_BODY).steps.every(({ count }) => Number.isInteger(count))).toBe(true);
  });

  it("is the same each time the same question is asked", () => {
    expect(nextSpot(plan())).toEqual(nextSpot(plan()));
  });

  it("keeps to the region of the meal", () => {
    for (const region of ["belly", "thigh", "arm", "buttock"] as const) expect(offered({ region }).spot.region).toBe(region);
  });

  it("moves on to another region when one is left out", () => {
    expect(offered({ leftOutRegions: ["belly"] }).spot.region).toBe("thigh");
    expect(offered({ leftOutRegions: ["belly", "thigh", "buttock"] }).spot.region).toBe("arm");
  });
});

describe("the spot after others", () => {
  it("changes sides", () => {
    const first = offered().spot;
    const second = offered({ uses: [used(first, 0)] }).spot;
    const third = offered({ uses: [used(second, 0), used(first, 0)] }).spot;
    expect([second.side === first.side, third.side === first.side]).toEqual([false, true]);
  });

  it("changes sides within its own region, whatever the other meals used", () => {
    const uses = [used(at("thigh", "left", 34, 120), 0), used(at("belly", "left", 102, 0), 1)];
    expect(offered({ uses, region: "belly" }).spot.side).toBe("right");
  });

  it("takes the longest rested of rested skin, before skin that is easier to find", () => {
    const left = spotsOf("belly").filter(({ spot }) => spot.side === "left");
    const oldest = left.at(-1)?.spot;
    if (oldest === undefined) throw new Error("no spots");
    const uses = [used(at("belly", "right", 102, 0), 1), ...left.map(({ spot }) => used(spot, spot === oldest ? 61 : 60))];
    expect(offered({ uses }).spot).toEqual(oldest);
  });

  it("lets the sides take turns before it looks for the longest rest", () => {
    const uses = [used(at("belly", "left", 102, 0), 1), ...spotsOf("belly").map(({ spot }) => used(spot, spot.side === "left" ? 60 : 30))];
    expect(offered({ uses, region: "belly" }).spot.side).toBe("right");
  });
});

describe("when four weeks do not fit", () => {
  const arm = spotsOf("arm");
  const lines = arm;
  const last = used(at("belly", "left", 102, 0), 0);

  it("tells the rest of the finger around the spot", () => {
    const uses = [last, ...lines.map(({ spot }) => used(spot, 20)), ...beyond("arm").map((spot) => used(spot, 20))];
    const next = offered({ uses, region: "arm" });
    expect([next.fullRest, next.restDays]).toEqual([false, 20]);
  });

  it("offers the longest rested spot again rather than one beside a use of this week", () => {
    const oldest = lines[7]?.spot;
    const uses = [last, ...lines.map(({ spot }) => used(spot, spot === oldest ? 19 : 3)), ...beyond("arm").map((spot) => used(spot, 3))];
    expect(nextSpot(plan({ uses, region: "arm" }))).toEqual({ spot: oldest, restDays: 19, fullRest: false });
  });

  it("offers what the check then lets pass under the reported rest, and under nothing longer", () => {
    const uses = [last, ...arm.map(({ spot }, i) => used(spot, 1 + (i % 20))), ...beyond("arm").map((spot) => used(spot, 20))];
    const q = plan({ uses, region: "arm" });
    const { spot, restDays } = offered(q);
    expect(whyNot(spot, { ...q, rules: rules({ acceptedRestDays: restDays }) })).toBeNull();
    expect(whyNot(spot, { ...q, rules: rules({ acceptedRestDays: restDays + 1 }) })?.why).toBe("still resting");
    expect(whyNot(spot, q)?.why).toBe("still resting");
  });

  it("goes to the next region first, unless one is kept for the meal", () => {
    const uses = [last, ...spotsOf("belly").map(({ spot }) => used(spot, 10)), ...beyond("belly").map((spot) => used(spot, 10))];
    expect(offered({ uses }).spot.region).toBe("thigh");
    expect(offered({ uses, region: "belly" }).fullRest).toBe(false);
  });

  it("stays away from the last one even when all else is worse rested", () => {
    const near = arm.filter(({ spot }) => spot.side === "left" && gap(spot, at("arm", "left", 34, 160)) < 51);
    const uses = [used(at("arm", "left", 34, 160), 0), ...arm.filter((c) => !near.includes(c)).map(({ spot }) => used(spot, 2))];
    expect(gap(offered({ uses, region: "arm" }).spot, at("arm", "left", 34, 160))).toBeGreaterThanOrEqual(51);
  });
});

describe("declined places", () => {
  it("do not come back, nor their neighbours within a finger, until none is left", () => {
    const declined: Spot[] = [];
    for (;;) {
      const next = nextSpot(plan({ region: "buttock", declined }));
      if (next.none) {
        expect(next.why).toBe("every place was declined");
        break;
      }
      for (const before of declined) expect(gap(before, next.spot)).toBeGreaterThanOrEqual(17);
      declined.push(next.spot);
    }
    expect(declined.length).toBeGreaterThanOrEqual(50);
  });
});

describe("no place at all", () => {
  const why = (own: Partial<PlanQuestion>) => {
    const next = nextSpot(plan(own));
    return next.none ? next.why : next.spot;
  };

  it("says whether every region is left out", () => {
    expect(why({ region: "belly", leftOutRegions: ["belly"] })).toBe("no region may be used");
    expect(why({ leftOutRegions: ["belly", "thigh", "arm", "buttock"] })).toBe("no region may be used");
  });

  it("says whether marks rule every place out", () => {
    const noGo = [{ id: "s", spot: at("belly", "left", 0, 0), radiusMm: 300, kind: "scar" } as const];
    expect(why({ region: "belly", noGo })).toBe("every place is ruled out");
  });

  it("says whether only the last injection is in the way", () => {
    const uses = [used(at("belly", "left", 102, 0), 1)];
    expect(why({ region: "belly", uses, rules: rules({ lastSpotMm: 900 }) })).toBe("every place is too near the last one");
  });
});
