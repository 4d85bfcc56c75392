// A table set for one person, brought to a step of a clean walk.
import type { DoseCard } from "#events/card.ts";
import type { Intent } from "#events/intent.ts";
import type { Person } from "#events/person.ts";
import type { PersonState, Walk } from "#walk/state.ts";
import { fixedCard, odile, odilePen } from "../people.ts";
import { Table } from "../table.ts";

type Stop = "taken" | "wash" | "reading" | "plate" | "card" | "pen" | "dial" | "place" | "skin" | "inject" | "put away" | "eat" | "done";

const STOPS: readonly Stop[] = ["wash", "reading", "plate", "card", "pen", "dial", "place", "skin", "inject", "put away", "eat", "done"];

const say = (...intents: Intent[]) => intents;

/** What a person with a card of fixed units answers at each stop, to come to the next one. */
function answer(t: Table, at: Stop, dose: string): void {
  switch (at) {
    case "wash":
      t.send({ do: "already washed" });
      break;
    case "reading":
      t.number("reading", "120");
      break;
    case "plate":
      t.send({ do: "exercise", hard: false }, { do: "meal is ready" });
      break;
    case "card":
      t.send({ do: "heard dose" });
      break;
    case "pen":
      t.send(
        ...say({ do: "pick pen", pen: "odile-meal", how: "mark" }, { do: "insulin looks", look: "as it should be" }),
        ...say({ do: "needle fitted" }, { do: "primed", stream: true }),
      );
      break;
    case "dial":
      t.number("dial", dose);
      break;
    case "place":
      t.send({ do: "take spot" });
      break;
    case "skin":
      t.send({ do: "skin cleaned", how: "clean without a wipe" });
      break;
    case "inject":
      t.send({ do: "button is down" });
      t.pass(10);
      t.send({ do: "wait is over" }, { do: "window is at zero" });
      break;
    case "put away":
      t.send({ do: "put away" });
      break;
    case "eat":
      t.send({ do: "eating" });
      break;
    default:
      break;
  }
}

export function odileAlone(card: Partial<DoseCard> = {}, person: Partial<Person> = {}): Table {
  return new Table([{ person: { ...odile, ...person }, card: { ...fixedCard, ...card }, pens: [odilePen] }]);
}

/** From the step it stands at to the one named; breakfast is opened first where no walk is. */
export function bring(t: Table, to: Stop, dose = "6"): Table {
  if (t.step() === "kitchen") t.send({ do: "open meal", person: "odile", meal: "breakfast" });
  const from = STOPS.indexOf(t.step() as Stop);
  if (from < 0) throw new Error(`cannot begin at ${t.step()}`);
  for (const stop of STOPS.slice(from, STOPS.indexOf(to))) {
    if (t.step() !== stop) throw new Error(`at ${t.step()}, not at ${stop}`);
    answer(t, stop, dose);
  }
  return t;
}

export const odileAt = (to: Stop, card: Partial<DoseCard> = {}, person: Partial<Person> = {}): Table => bring(odileAlone(card, person), to);

export function me(t: Table, id = "odile"): PersonState {
  const found = t.state.people[id];
  if (!found) throw new Error(`nobody is called ${id}`);
  return found;
}

export function walk(t: Table, id = "odile"): Walk {
  const found = me(t, id).walk;
  if (!found) throw new Error(`${id} is in no walk`);
  return found;
}

/** A number outside the usual band: given, agreed, and its digits given again. */
export function twice(
  t: Table,
  slot: "reading" | "reading when ill" | "recheck after low" | "telephoned number" | "dial",
  text: string,
  via: "touch" | "voice" = "touch",
): Table {
  const give = { do: "give number", slot, text, via, helper: slot === "telephoned number" ? "Nurse Adeyemi" : null } as const;
  return t.send(give, { do: "agree number" }, give);
}

/** Types of the facts that this led to. */
export const led = (t: Table, intent: Intent): string[] => t.try(intent).facts.map((f) => f.event.type);

/** Only the wall clock: somebody sets it, or the tablet sleeps. */
export function setClock(t: Table, seconds: number): void {
  t.now = { ...t.now, wall: t.now.wall + seconds * 1000 };
}
