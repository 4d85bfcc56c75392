// A clean meal walk from the kitchen to the last sentence, and everything it says on the way.
import type { Intent } from "#events/intent.ts";
import { spokenSeconds } from "#speech/pace.ts";
import { GUARDS } from "#walk/guards.ts";
import { sceneKey } from "#walk/scene-key.ts";
import { sayWalk } from "#words/en/steps.ts";
import { bandsCard, bram, bramPen, fixedCard, odile, odilePen, ratioCard } from "./people.ts";
import { type Placed, Table } from "./table.ts";

export const HOUSEHOLDS: Readonly<Record<"fixed units" | "bands" | "ratio", Placed>> = {
  "fixed units": { person: odile, card: fixedCard, pens: [odilePen] },
  bands: { person: odile, card: bandsCard, pens: [odilePen] },
  ratio: { person: bram, card: ratioCard, pens: [bramPen] },
};

type Move = Intent | { wait: number };

function moves(kind: keyof typeof HOUSEHOLDS): Move[] {
  const { person, pens } = HOUSEHOLDS[kind];
  const number = (slot: Extract<Intent, { do: "give number" }>["slot"], text: string): Move[] => [
    { do: "give number", slot, text, via: "touch", helper: null },
    { do: "agree number" },
  ];
  const plate: Move[] = kind === "ratio" ? [...number("grams", "40")] : [];
  return [
    { do: "open meal", person: person.id, meal: "breakfast" },
    { do: "begin wait" },
    { wait: 20 },
    { do: "wait is over" },
    ...number("reading", kind === "ratio" ? "6.4" : "132"),
    { do: "exercise", hard: false },
    ...plate,
    { do: "meal is ready" },
    { do: "heard dose" },
    { do: "pick pen", pen: pens[0]?.id ?? "", how: "mark" },
    { do: "insulin looks", look: "as it should be" },
    { do: "needle fitted" },
    { do: "primed", stream: true },
    ...number("dial", kind === "ratio" ? "4" : kind === "bands" ? "4" : "6"),
    { do: "take spot" },
    { do: "skin cleaned", how: "wiped" },
    { wait: 20 },
    { do: "wait is over" },
    { do: "button is down" },
    { wait: 10 },
    { do: "wait is over" },
    { do: "window is at zero" },
    { do: "put away" },
    { wait: 6 * 60 },
    { do: "eating" },
    { do: "finish" },
  ];
}

/** Every sentence that a clean walk speaks, screen by screen, with the ten counted aloud. */
export function saidOnCleanWalk(kind: keyof typeof HOUSEHOLDS, cleanWalksBefore = 0): string[][] {
  const t = new Table([HOUSEHOLDS[kind]]);
  const id = HOUSEHOLDS[kind].person.id;
  const me = t.state.people[id];
  if (me) t.state = { ...t.state, people: { ...t.state.people, [id]: { ...me, cleanWalks: cleanWalksBefore } } };
  const said: string[][] = [];
  let shown = "kitchen";
  const look = () => {
    const key = sceneKey(t.state, t.now);
    if (key === shown) return;
    shown = key;
    said.push(sayWalk(t.state, t.now, GUARDS)?.lines ?? []);
  };
  for (const move of moves(kind)) {
    if ("wait" in move) {
      if (t.step() === "inject") for (let n = 1; n <= move.wait; n++) said.push([String(n)]);
      t.pass(move.wait);
    } else t.send(move);
    look();
  }
  if (t.step() !== "kitchen") throw new Error(`the clean walk stopped at ${t.step()}`);
  return said;
}

/** Seconds of speech on a clean walk: what stands between two screens is the person's own time. */
export const secondsOnCleanWalk = (kind: keyof typeof HOUSEHOLDS, cleanWalksBefore = 0): number =>
  saidOnCleanWalk(kind, cleanWalksBefore).reduce((sum, screen) => sum + spokenSeconds(screen), 0);
