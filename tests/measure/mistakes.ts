import { chance } from "../kit/bodies.ts";
import type { Measured, Row } from "./measured.ts";
import { HURRIED, type Perception, TRIED } from "./mistakes/chances.ts";
import { interval } from "./mistakes/interval.ts";
import { KINDS, type Kind } from "./mistakes/kinds.ts";
import { foundOnPaper } from "./mistakes/paper.ts";
import { SEEDS } from "./mistakes/seeds.ts";

const share = (hits: number, of: number): number => (of === 0 ? 0 : Math.round((hits / of) * 10_000) / 10_000);
const span = (hits: number, of: number): string =>
  interval(hits, of)
    .map((end) => (100 * end).toFixed(1))
    .join(" to ");

interface Count {
  seeded: number;
  before: number;
  after: number;
  reported: number;
  missed: number;
  paper: number;
}

const NONE: Count = { seeded: 0, before: 0, after: 0, reported: 0, missed: 0, paper: 0 };

/** 27, the pen that runs empty: the one mistake that only the window shows. */
const AT_THE_WINDOW = 27;

async function play(days: number, who: Perception, only: number | null = null): Promise<(id: number) => Count> {
  const next = chance(2026);
  const found = new Map<number, Count>();
  for (let day = 0; day < days; day++) {
    const kind = KINDS[Math.floor(next() * KINDS.length)];
    const seed = kind && SEEDS[kind.id];
    if (!seed) throw new Error("a mistake without a day");
    if (only !== null && kind.id !== only) continue;
    const count = { ...(found.get(kind.id) ?? NONE) };
    count.seeded += 1;
    count[await seed(chance(10_000 + day), who)] += 1;
    count.paper += Number(foundOnPaper(kind.id, chance(1_000_000 + day)));
    found.set(kind.id, count);
  }
  return (id) => found.get(id) ?? NONE;
}

const total = (kinds: readonly Kind[], of: (id: number) => number): number => kinds.reduce((sum, { id }) => sum + of(id), 0);

/**
 * Household days, each with one mistake of a kind drawn at random, driven through the real walk and log by a person who answers from what they perceive
 * (mistakes/chances.ts), beside the same days with a paper card and a kitchen timer. Argument: number of days.
 */
export async function measure([wanted = "10000"]: readonly string[] = []): Promise<Measured> {
  const days = Number(wanted);
  const tried = await play(days, TRIED);
  const hurried = await play(days, HURRIED);
  // An open question tells nothing to say back; whoever never looks may still say nought, which it mostly is. This is the worst that could make of it.
  const byHabit = await play(days, { ...TRIED, seesTheExpected: TRIED.echoes }, AT_THE_WINDOW);
  const rows: Row[] = KINDS.map(({ id, name, nurseSees, whyMissed }) => {
    const c = tried(id);
    return {
      "no.": id,
      mistake: name,
      "a nurse sees": nurseSees ? "yes" : "no",
      seeded: c.seeded,
      "caught before": c.before,
      "caught after": c.after,
      "reported only": c.reported,
      missed: c.missed,
      "missed %, 95 %": span(c.missed, c.seeded),
      "missed when hurried": hurried(id).missed,
      "found on paper": c.paper,
      "a miss is": c.missed > 0 ? whyMissed : "",
    };
  });
  const seen = KINDS.filter(({ nurseSees }) => nurseSees);
  const caught = (count: (id: number) => Count) =>
    share(
      total(seen, (id) => count(id).seeded - count(id).missed),
      total(seen, (id) => count(id).seeded),
    );
  return {
    rows,
    figures: {
      days,
      seeded: total(KINDS, (id) => tried(id).seeded),
      caughtBefore: total(KINDS, (id) => tried(id).before),
      caughtAfter: total(KINDS, (id) => tried(id).after),
      reportedOnly: total(KINDS, (id) => tried(id).reported),
      missed: total(KINDS, (id) => tried(id).missed),
      shareCaught: caught(tried),
      shareCaughtUnasked: share(
        total(seen, (id) => tried(id).before + tried(id).after),
        total(seen, (id) => tried(id).seeded),
      ),
      missedIfNoughtIsSaidUnread: byHabit(AT_THE_WINDOW).missed,
      shareCaughtHurried: caught(hurried),
      sharePaper: share(
        total(seen, (id) => tried(id).paper),
        total(seen, (id) => tried(id).seeded),
      ),
      byKind: Object.fromEntries(KINDS.map(({ id }) => [id, tried(id)])),
    },
  };
}
