// What holds on an ill day and after a meal that was not eaten whole: promise 13 goes further than lows. Judged by the tests' own account.
import { GUARDS } from "#walk/guards.ts";
import { stepOf } from "#walk/state.ts";
import { sayWalk } from "#words/en/steps.ts";
import { type Account, passed } from "../ledger.ts";
import type { Turn } from "../world.ts";
import { firstBroken, type PromiseCheck, type Seen, stampOf, wanted } from "./shape.ts";

const MINUTE = 60_000;
const HOURS: Readonly<Record<string, number>> = { "rapid analogue": 4, regular: 8, premixed: 12, intermediate: 12, "long-acting": 24 };

/** Nothing of a dose happens while an ill day is asked about: no mealtime dose, no correction. */
const NOT_ON_AN_ILL_DAY: readonly string[] = ["plate agreed", "dose told", "dose heard", "dose dialled", "inject opened", "food is ready"];
const DOSE_PRESSES: readonly string[] = [
  "heard dose",
  "meal is ready",
  "plate is complete",
  "usual meal",
  "button is down",
  "pick pen",
  "take spot",
  "put away",
];

/** May mealtime insulin still work, by the newest dose? A time that nobody knows counts as now. */
function works(a: Account, s: Seen, trusted: boolean): boolean {
  const hours = HOURS[a.card?.card.insulin.kind ?? "regular"] ?? 24;
  return a.doses.some((d) => {
    const ms = passed(d.from, stampOf(s), trusted);
    return ms === null || ms + (d.ago ?? 0) * MINUTE < hours * 60 * MINUTE;
  });
}

const LEFT: readonly string[] = ["half eaten", "hardly eaten", "vomiting"];

/** Insulin is in, and food is missing: what was told stands as a watch from then on, unless a bell or a low stands already. */
function watchFault(turn: Turn, s: Seen): string | null {
  const { facts } = turn.decision;
  if (s.event.type === "meal answered" && s.event.ate !== "all")
    return facts.some((f) => f.person === s.entry.fact.person && f.event.type === "mishap opened")
      ? null
      : "less than the meal was eaten, and nothing came of it";
  if (s.event.type !== "mishap advice heard" || !LEFT.includes(s.event.kind) || !works(s.a, s, s.entry.was.trusted)) return null;
  if (s.w?.lowOpen || turn.before.house.people[s.entry.fact.person ?? ""]?.walk?.low || s.a.bell?.from !== undefined) return null;
  return facts.some((f) => f.event.type === "low began") ? null : `${s.event.kind} with insulin in, and nobody watches`;
}

/** Blood ketones of 3 and more, by a card whose line there is the emergency number, or calls nobody: help is called in the same turn. */
function ketonesFault(turn: Turn, s: Seen): string | null {
  if (s.event.type !== "ketones read" || s.event.test !== "blood" || s.event.value < 3) return null;
  return turn.decision.facts.some((f) => f.person === s.entry.fact.person && f.event.type === "call raised")
    ? null
    : "ketones of an emergency, and nobody is called";
}

/** Every end of the questions names somebody to call, and so does every mishap. */
function endFault(turn: Turn): string | null {
  const { after } = turn;
  const walk = after.house.front === null ? null : after.house.people[after.house.front]?.walk;
  if (!walk || walk.draft) return null;
  const step = stepOf(walk);
  const ends = step === "mishap" || (step === "ill" && after.offers.some((o) => o.offer === "press" && o.intent.do === "finish ill"));
  const said = ends ? (sayWalk(after.house, after.now, GUARDS)?.lines ?? []).join(" ") : "911";
  return /555 0142|911/.test(said) ? null : `${step} ends without a number to call`;
}

function offeredFault(turn: Turn): string | null {
  const { after } = turn;
  const front = after.house.front;
  const w = front === null ? null : after.ledger.people[front]?.walk;
  if (!w?.illOpen) return null;
  const dose = after.offers.find((o) => o.offer === "press" && DOSE_PRESSES.includes(o.intent.do));
  return dose?.offer === "press" ? `"${dose.intent.do}" is offered on an ill day` : null;
}

/** The question about danger signs was shown and nobody answered for ten minutes: our own bound, the tool waits five. */
function silenceFault(turn: Turn): string | null {
  const { after, before } = turn;
  if (turn.move.kind !== "pass") return null;
  for (const [id, p] of Object.entries(after.house.people)) {
    const was = before.house.people[id]?.walk;
    const veryHigh = was?.kind === "reading" && was.ill?.because === "HI again";
    const asked =
      (was?.ill?.feelsIll || veryHigh) &&
      was?.ill &&
      was.ill.danger === null &&
      !was.ill.callRaised &&
      !was.left &&
      !was.low &&
      !was.mishap;
    const w = after.ledger.people[id]?.walk;
    const silent = w && passed(w.answeredAt, after.now, after.ledger.trusted);
    if (asked && w && typeof silent === "number" && silent > 10 * MINUTE && !w.callRaised)
      return "nobody answers the question about danger signs";
    if (w?.illOpen && !p.walk?.ill) return "an ill day is not looked after";
  }
  return null;
}

export const illPromise: PromiseCheck = {
  number: 13,
  says: "An ill day tells no dose; a danger sign, or silence about them, goes to the loud call; insulin without its food is watched as a fact.",
  broken: (turn) =>
    firstBroken(turn, (s) => {
      if (s.w?.illOpen && NOT_ON_AN_ILL_DAY.includes(s.event.type)) return `${s.event.type} on an ill day`;
      return ketonesFault(turn, s) ?? watchFault(turn, s);
    }) ??
    (wanted(turn)?.do === "danger signs" &&
    JSON.stringify(turn.move).includes("true") &&
    !turn.decision.facts.some((f) => f.event.type === "call raised")
      ? "a danger sign and nobody is called"
      : null) ??
    offeredFault(turn) ??
    silenceFault(turn) ??
    endFault(turn),
};
