// Breadth first over every move in every state that has a key of its own, and long runs by chance that merge nothing.
// Two states of one key may differ in what the key takes as one (an age inside its class), and the first one met stands for both. What only the other one
// leads to is found by scouts: runs by chance with seeds of their own, whose new keys are then explored breadth first like any other.
import { emptyHouse } from "#walk/state.ts";
import { judge, type Violation, withoutNetwork } from "./judge.ts";
import { emptyLedger } from "./ledger.ts";
import { type Exploration, movesAt } from "./moves.ts";
import { chance } from "./random.ts";
import { stateKey } from "./state-key.ts";
import { type Engine, type Move, setUp, type Turn, tell, type World } from "./world.ts";

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
  /** The moves from there to here. */
  moves: readonly string[];
}

function pathTo(node: Node, last: Move): string[] {
  const path: string[] = [tell(last)];
  for (let n: Node | null = node; n !== null; n = n.from) path.unshift(...n.moves);
  return path;
}

export interface Limits {
  /** Ends as soon as this promise was broken. */
  stopAt?: number;
  /** Instead of the exploration's own number. */
  scouts?: number;
}

/** Far more than any exploration has: one that grows past it has to be cut smaller. */
const MOST_STATES = 60_000;
const SCOUTS = 6;
const SCOUT_STEPS = 300;
/** Seeds of the scouts lie apart from those of the runs that prove that nothing is left outside. */
const SCOUT_SEED = 1_000_000;

/** Two presses with the same meaning would be two buttons for one thing. */
function twice(world: World): string[] {
  const presses = world.offers.flatMap((o) => (o.offer === "press" ? [JSON.stringify(o.intent)] : []));
  return presses.filter((p, i) => presses.indexOf(p) !== i).map((p) => `twice: ${p}`);
}

class Explorer {
  readonly found: Explored;
  private readonly told = new Set<string>();
  private queue: Node[] = [];
  /** The promise that was looked for is broken. */
  stopped = false;

  constructor(
    private readonly x: Exploration,
    private readonly engine: Engine,
    private readonly limits: Limits,
  ) {
    this.found = { name: x.name, keys: new Set(), transitions: 0, violations: [], badOffers: [] };
    this.meet(setUp(x.facts, engine, x.hours), null, []);
  }

  private meet(world: World, from: Node | null, moves: readonly string[]): void {
    const key = stateKey(world.house, world.now);
    if (this.found.keys.has(key)) return;
    this.found.keys.add(key);
    this.queue.push({ world, from, moves });
    if (this.found.keys.size > MOST_STATES) throw new Error(`${this.x.name}: more than ${MOST_STATES} states`);
  }

  breadthFirst(): void {
    for (let i = 0; i < this.queue.length && !this.stopped; i++) {
      const node = this.queue[i];
      if (!node) break;
      this.found.badOffers.push(...twice(node.world));
      for (const move of movesAt(node.world, this.x)) this.try(node, move);
      // The world of a state that was done with is let go; its moves are kept for the path.
      node.world = { ...node.world, house: emptyHouse, ledger: emptyLedger, offers: [] };
    }
    this.queue = [];
  }

  private try(node: Node, move: Move): void {
    this.found.transitions++;
    const { turn, violations } = judge(node.world, move, this.engine);
    for (const v of violations) {
      // The same breach by the same move once: a fault shows itself in thousands of states.
      const where = `${v.promise} ${v.what.replace(/[\d.]+/g, "#")} ${move.kind === "want" ? move.intent.do : move.kind}`;
      if (this.told.has(where)) continue;
      this.told.add(where);
      this.found.violations.push({ ...v, exploration: this.x.name, path: pathTo(node, move) });
      if (this.limits.stopAt === v.promise) this.stopped = true;
    }
    if (!turn) return;
    if (turn.decision.refusal?.no === "not offered here") this.found.badOffers.push(pathTo(node, move).slice(-3).join(" > "));
    this.meet(turn.after, node, [tell(move)]);
  }

  scout(seed: number): void {
    const moves: string[] = [];
    const { violations } = runByChance(this.x, this.engine, seed, SCOUT_STEPS, this.found.keys, (turn) => {
      moves.push(tell(turn.move));
      this.meet(turn.after, null, [...moves]);
    });
    for (const v of violations) {
      this.found.violations.push(v);
      if (this.limits.stopAt === v.promise) this.stopped = true;
    }
  }
}

export function explore(x: Exploration, engine: Engine, limits: Limits = {}): Explored {
  const explorer = new Explorer(x, engine, limits);
  withoutNetwork(() => explorer.breadthFirst());
  for (let i = 0; i < (limits.scouts ?? x.scouts ?? SCOUTS) && !explorer.stopped; i++) {
    explorer.scout(SCOUT_SEED + i);
    withoutNetwork(() => explorer.breadthFirst());
  }
  return explorer.found;
}

export interface Ran {
  steps: number;
  outside: string[];
  violations: Found[];
}

/** One run by chance: nothing is merged, every state is a state of its own; its key is only looked up. */
export function runByChance(
  x: Exploration,
  engine: Engine,
  seed: number,
  steps: number,
  explored: ReadonlySet<string>,
  each?: (turn: Turn) => void,
): Ran {
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
