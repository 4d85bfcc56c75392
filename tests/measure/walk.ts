import { secondsOnCleanWalk } from "../kit/clean-walk.ts";
import { explore, runByChance } from "../kit/explore/explore.ts";
import { EXPLORATIONS } from "../kit/explore/households.ts";
import { BACKGROUND_EXPLORATIONS } from "../kit/explore/households-background.ts";
import { ILL_EXPLORATIONS } from "../kit/explore/households-ill.ts";
import { REMINDER_EXPLORATIONS } from "../kit/explore/households-reminders.ts";
import { JUDGED } from "../kit/explore/judge.ts";
import { PLANTED } from "../kit/explore/planted.ts";
import { PLANTED_BACKGROUND } from "../kit/explore/planted-background.ts";
import { PLANTED_ILL } from "../kit/explore/planted-ill.ts";
import { PLANTED_REMINDERS } from "../kit/explore/planted-reminders.ts";
import { PLANTED_WATCH } from "../kit/explore/planted-watch.ts";
import { engine } from "../kit/explore/world.ts";
import type { Measured } from "./measured.ts";

/** Steps of one run by chance. */
const STEPS = 250;
const ALL = [...EXPLORATIONS, ...BACKGROUND_EXPLORATIONS, ...ILL_EXPLORATIONS, ...REMINDER_EXPLORATIONS];
const FAULTS = [...PLANTED, ...PLANTED_BACKGROUND, ...PLANTED_ILL, ...PLANTED_REMINDERS, ...PLANTED_WATCH];

/**
 * The promises of the walk: every move in every state with a key of its own, long runs by chance beside them, and the planted faults.
 * Argument: runs by chance for each exploration.
 */
export async function measure([runs = "10"]: readonly string[] = []): Promise<Measured> {
  const total = { states: 0, transitions: 0, randomRuns: 0, outside: 0, violations: 0 };
  const rows = ALL.map((x) => {
    const found = explore(x, engine);
    let outside = 0;
    let violations = found.violations.length;
    for (let seed = 1; seed <= Number(runs); seed++) {
      const run = runByChance(x, engine, seed, STEPS, found.keys);
      outside += new Set(run.outside.map((o) => o.split(" after ")[0])).size;
      violations += run.violations.length;
      total.randomRuns++;
    }
    total.states += found.keys.size;
    total.transitions += found.transitions;
    total.outside += outside;
    total.violations += violations;
    return { exploration: x.name, states: found.keys.size, transitions: found.transitions, outside, violations };
  });
  const caught = FAULTS.filter((p) => {
    const x = ALL.find((e) => e.name === p.exploration);
    return x !== undefined && explore(x, p.engine, { stopAt: p.promise }).violations.some((v) => v.promise === p.promise);
  });
  const spoken = Math.max(secondsOnCleanWalk("fixed units"), secondsOnCleanWalk("bands"), secondsOnCleanWalk("ratio"));
  return {
    rows,
    figures: {
      ...total,
      promises: new Set(JUDGED.map(({ number }) => number)).size,
      planted: FAULTS.length,
      plantedCaught: caught.length,
      spokenSecondsCleanWalk: Math.round(spoken * 10) / 10,
    },
  };
}
