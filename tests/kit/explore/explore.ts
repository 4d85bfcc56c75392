// Breadth first over every move in every state that has a key of its own, and long runs by chance that merge nothing.
import { frontPerson } from "#walk/offers.ts";
import { judge, type Violation, withoutNetwork } from "./judge.ts";
import { type Exploration, movesAt } from "./moves.ts";
import { chance } from "./random.ts";
import { stateKey } from "./state-key.ts";
import { type Engine, type Move, setUp, tell, type Turn, type World } from "./world.ts";

export interface Found extends Violation {
  exploration: string;
  /** The moves that lead there, oldest first. */
  path: string[];
}

export interface Explored {
  name: string;
  keys: Set<string>;
  transitions: number;
  violations: Found[];
  /** Moves on offer that decide would not take, and presses on offer twice. */
  badOffers: string[];
}

interface Node {
  world: World;
  from: Node | null;
  move: Move | null;
}

function pathTo(node: Node, last: Move | null): string[] {
  const path: string[] = last ? [tell(last)] : [];
  for (let n: Node | null = node; n !== null; n = n.from) if (n.move) path.unshift(tell(n.move));
  return path;
}

export interface Limits {
  /** Ends at the first broken promise: for planted faults. */
  stopAtFirst?: boolean;
  /** Ends as soon as this promise was broken. */
  stopAt?: number;
  /** A bound that no exploration is to reach: reaching it is an error. */
  mostStates?: number;
}

/** Two presses with the same meaning would be two buttons for one thing. */
function twice(world: World): string[] {
  const presses = world.offers.flatMap((o) => (o.offer === "press" ? [JSON.stringify(o.intent)] : []));
  return presses.filter((p, i) => presses.indexOf(p) !== i).map((p) => `twice: ${p}`);
}

function stepName(world: World): string {
  return frontPerson(world.house)?.walk?.id ?? "kitchen";
}

export function explore(x: Exploration, engine: Engine, limits: Limits = {}): Explored {
  const start = setUp(x.facts, engine, x.hours);
  const keys = new Set<string>([stateKey(start.house, start.now)]);
  const found: Explored = { name: x.name, keys, transitions: 0, violations: [], badOffers: [] };
  const queue: Node[] = [{ world: start, from: null, move: null }];
  const told = new Set<string>();
  withoutNetwork(() => {
    for (let i = 0; i < queue.length; i++) {
      const node = queue[i];
      if (!node) break;
      found.badOffers.push(...twice(node.world));
      for (const move of movesAt(node.world, x)) {
        found.transitions++;
        const { turn, violations } = judge(node.world, move, engine);
        for (const v of violations) {
          // The same breach at the same place once: a fault shows itself in thousands of states.
          const where = `${v.promise} ${v.what.replace(/[\d.]+/g, "#")} ${move.kind === "want" ? move.intent.do : move.kind}`;
          if (told.has(where)) continue;
          told.add(where);
          found.violations.push({ ...v, exploration: x.name, path: pathTo(node, move) });
          if (limits.stopAtFirst || limits.stopAt === v.promise) return;
        }
        if (!turn) continue;
        if (turn.decision.refusal?.no === "not offered here") found.badOffers.push(`${tell(move)} in ${stepName(node.world)}`);
        const key = stateKey(turn.after.house, turn.after.now);
        if (keys.has(key)) continue;
        keys.add(key);
        queue.push({ world: turn.after, from: node, move });
        if (keys.size > (limits.mostStates ?? 100_000)) throw new Error(`${x.name}: more than ${limits.mostStates} states`, { cause: keys });
      }
      // The world of a state that was done with is let go; its moves are kept for the path.
      node.world = { ...node.world, house: start.house, ledger: start.ledger, offers: [] };
    }
  });
  return found;
}

export interface Ran {
  steps: number;
  outside: string[];
  violations: Found[];
}

/** One run by chance: nothing is merged, every state is a state of its own; its key is only looked up. */
export function runByChance(x: Exploration, engine: Engine, seed: number, steps: number, explored: ReadonlySet<string>, each?: (turn: Turn) => void): Ran {
  const dice = chance(seed);
  const ran: Ran = { steps: 0, outside: [], violations: [] };
  let world = setUp(x.facts, engine, x.hours);
  const path: string[] = [];
  withoutNetwork(() => {
    for (let i = 0; i < steps; i++) {
      const moves = movesAt(world, x);
      const wants = moves.filter((m) => m.kind === "want");
      // Three moves in four are answers, or a run would be all waiting.
      const move = dice.pick(wants.length > 0 && dice.below(4) > 0 ? wants : moves);
      path.push(tell(move));
      const { turn, violations } = judge(world, move, engine);
      for (const v of violations) ran.violations.push({ ...v, exploration: x.name, path: [...path] });
      if (!turn) return;
      each?.(turn);
      world = turn.after;
      ran.steps++;
      const key = stateKey(world.house, world.now);
      if (!explored.has(key)) ran.outside.push(`${key} after ${path.slice(-12).join(" > ")}`);
    }
  });
  return ran;
}
