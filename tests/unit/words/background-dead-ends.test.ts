// Wherever a background or a reading walk cannot go on, somebody to call is named; and no injection is followed by silence.
import { describe, expect, it } from "vitest";
import { GUARDS } from "#walk/guards.ts";
import { sayWalk } from "#words/en/steps.ts";
import { runByChance } from "../../kit/explore/explore.ts";
import { BACKGROUND_EXPLORATIONS } from "../../kit/explore/households-background.ts";
import { engine, type World } from "../../kit/explore/world.ts";

const PHONE = "555 0142";

/** Nothing but leaving, and what is always there. */
function isDeadEnd({ house, offers }: World): boolean {
  const ways = offers.filter((o) => o.offer === "number" || (o.offer === "press" && ["main", "choice", "no"].includes(o.role)));
  return house.front !== null && ways.length === 0;
}

describe.each(BACKGROUND_EXPLORATIONS.map((x) => [x.name, x] as const))("by chance: %s", (_name, x) => {
  const worlds: World[] = [];
  for (const seed of [3, 5, 8]) runByChance(x, engine, seed, 200, new Set(), (turn) => worlds.push(turn.after));
  const lines = (w: World): string => sayWalk(w.house, w.now, GUARDS)?.lines.join(" ") ?? "";

  it("names whom to call where there is no way on", () => {
    expect(
      worlds
        .filter(isDeadEnd)
        .map(lines)
        .filter((said) => !said.includes(PHONE) && !said.includes("carry on")),
    ).toEqual([]);
  });

  it("says something on every screen, and asks or tells what is next after the needle", () => {
    const inWalk = worlds.filter(({ house }) => house.front !== null);
    expect(inWalk.filter((w) => lines(w) === "" && !/Wash for/.test(sayWalk(w.house, w.now, GUARDS)?.title ?? ""))).toEqual([]);
  });
});
