import { describe, expect, it } from "vitest";
import { chance } from "../../kit/bodies.ts";
import { TRIED } from "../../measure/mistakes/chances.ts";
import { interval } from "../../measure/mistakes/interval.ts";
import { KINDS, type Outcome } from "../../measure/mistakes/kinds.ts";
import { SEEDS } from "../../measure/mistakes/seeds.ts";

const outcomes = async (id: number, days: number, who = TRIED): Promise<Outcome[]> => {
  const all: Outcome[] = [];
  for (let day = 0; day < days; day++) all.push(await (SEEDS[id]?.(chance(100 * id + day), who) ?? "missed"));
  return all;
};

describe("seeded mistakes", () => {
  it("have a day each", () => {
    expect(Object.keys(SEEDS).map(Number)).toEqual(KINDS.map(({ id }) => id));
  });

  it.each(KINDS.filter(({ whyMissed, nurseSees }) => whyMissed === "" && nurseSees).map(({ id, name }) => [id, name]))(
    "of kind %d (%s) are never missed",
    async (id) => {
      expect(await outcomes(id, 5)).not.toContain("missed");
    },
    30_000,
  );

  it("are seen to reach the body where somebody echoes every told number", async () => {
    expect(await outcomes(11, 4, { ...TRIED, echoes: 1 })).toEqual(["missed", "missed", "missed", "missed"]);
  });

  it("are missed where somebody says yes to every like number", async () => {
    expect(await outcomes(1, 4, { ...TRIED, yesToLike: 1 })).toContain("missed");
  });

  it("are known to be reported only where a truthful answer was all", async () => {
    expect(new Set(await outcomes(11, 6, { ...TRIED, echoes: 0 }))).toEqual(new Set(["reported"]));
  });
});

describe("the interval of a share", () => {
  // Wilson 1927; 0 of 10 and 5 of 10 as common tables give them, from memory: 0 to 0.278, 0.237 to 0.763.
  it.each([
    [0, 10, 0, 0.278],
    [5, 10, 0.237, 0.763],
  ])("of %d in %d is %d to %d", (hits, of, low, high) => {
    const [from, to] = interval(hits, of);
    expect([Math.round(from * 1000) / 1000, Math.round(to * 1000) / 1000]).toEqual([low, high]);
  });
});
