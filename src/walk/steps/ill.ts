// An ill day, or a reading that the card wants ketones looked for: danger signs, the number, ketones, the card's own words, one at a time.
// It tells no dose, and nothing in it leads to one: a correction is the card's alone, and its spacing holds however high the reading stays (mistake 25).
import type { Happened } from "#events/happened.ts";
import type { Intent } from "#events/intent.ts";
import { MINUTE } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import type { NumberSlot } from "#events/told.ts";
import { highBy } from "#rules/glucose/high.ts";
import { ketonesDue, ketonesRaiseCall, stripLevels } from "#rules/glucose/ketones.ts";
import { oldestAge } from "#rules/time/elapsed.ts";
import { type Ctx, happen, type Offer, type Outcome, press, type StepRules } from "#walk/context.ts";
import type { Walk } from "#walk/state.ts";
import { decideNumber, isNumberIntent, numberOffers } from "./number.ts";
import { glucoseOf, words } from "./reading.ts";

export type IllStage = "number" | "call" | "danger" | "reading" | "test again" | "high" | "ketones" | "result" | "rule" | "end";

/** What comes first of all is never stopped: long-acting insulin goes on (sick-day leaflets agree: never stop basal insulin; keep drinking). */
export type SickDayRule = { say: "long-acting" } | { say: "own"; text: string } | { say: "card"; text: string } | { say: "drink" };

/** One a screen: what leaflets agree on, the card's words for an ill day, its sick-day rules. Of a blank card only what leaflets agree on is left. */
export function sickDayRules(c: Ctx): SickDayRule[] {
  const own = c.card?.advice.ill ?? null;
  const typed = c.card?.sickDay?.rules ?? [];
  return [
    { say: "long-acting" },
    ...(own === null ? [] : [{ say: "own" as const, text: own }]),
    ...typed.map((text) => ({ say: "card" as const, text })),
    ...(own === null && typed.length === 0 ? [{ say: "drink" as const }] : []),
  ];
}

/** A reading walk has nothing after it that would ask: HI twice in it is very high, however somebody feels. */
const asksDanger = ({ ill, kind }: Walk): boolean => ill !== null && (ill.feelsIll || (ill.because === "HI again" && kind === "reading"));

export function illStage(c: Ctx): IllStage {
  const { ill, draft } = c.walk;
  if (draft) return "number";
  if (!ill) return "end";
  if (ill.callRaised) return "call";
  if (asksDanger(c.walk) && ill.danger === null) return "danger";
  if (ill.reading?.word === "HI" && c.walk.his === 1 && !ill.noMeter) return "test again";
  if (ill.feelsIll && !ill.reading && !ill.noMeter) return "reading";
  const due = ketonesDue(c.card?.ketones, ill.reading, ill.feelsIll);
  const by = highBy(c.card, ill.reading?.glucose ?? null);
  // Where ketones are asked for, they say what to do; the default is for a card that says nothing at all.
  const high = ill.reading?.word === "HI" || by === "card" || (by === "default" && !due);
  if (high && !ill.highHeard) return "high";
  if (due && ill.ketones === null && !ill.noStrips) return "ketones";
  if (due && !ill.ketonesHeard) return "result";
  if (ill.feelsIll && ill.rulesHeard < sickDayRules(c).length) return "rule";
  return "end";
}

const stop = press("stop", { do: "leave" });
/** It may get worse at any moment. */
const danger = press("wrong", { do: "danger signs", any: true });
const noMeter = press("choice", { do: "no meter" });

function ketoneOffers(c: Ctx): Offer[] {
  const test = c.card?.ketones?.test ?? "blood";
  const none = press("choice", { do: "no ketone strips" });
  if (test === "blood") return [...numberOffers(c, ["ketones"]), none];
  // The highest first: of many answers the first few stand on the screen, and a press too high calls somebody, one too low does not.
  return [
    ...stripLevels(test)
      .toReversed()
      .map((level) => press("choice", { do: "read strip", level })),
    none,
  ];
}

function offers(c: Ctx): Offer[] {
  switch (illStage(c)) {
    case "number":
      return numberOffers(c, []);
    case "call":
      return [press("main", { do: "finish ill" }), ...numberOffers(c, ["reading when ill"]), stop];
    case "danger":
      return [press("wrong", { do: "danger signs", any: true }), press("no", { do: "danger signs", any: false })];
    case "reading":
    case "test again":
      return [...numberOffers(c, ["reading when ill"]), ...words, noMeter, danger];
    case "ketones":
      return [...ketoneOffers(c), danger];
    case "high":
    case "result":
    case "rule":
      return [press("main", { do: "heard ill advice" }), danger];
    case "end":
      return [press("main", { do: "finish ill" }), danger];
  }
}

/** A number that is high, in somebody who feels well, by a card that wants no ketones for it. */
function wasAll(c: Ctx): boolean {
  const { ill } = c.walk;
  return ill?.because === "high reading" && !ill.feelsIll && !ketonesDue(c.card?.ketones, ill.reading, false);
}

/** What was heard last. Whoever feels well has nothing more to hear once the card's line for the ketones was said. */
function heard(c: Ctx): Happened[] {
  const { ill } = c.walk;
  const rules = ill?.rulesHeard ?? 0;
  switch (illStage(c)) {
    case "high":
      return [{ type: "ill advice heard", what: "high", rules }, ...(wasAll(c) ? ended(c) : [])];
    case "result":
      return [{ type: "ill advice heard", what: "ketones", rules }, ...(ill?.because === "high reading" && !ill.feelsIll ? ended(c) : [])];
    case "rule":
      return [{ type: "ill advice heard", what: "rule", rules: rules + 1 }];
    default:
      return [];
  }
}

function ended(c: Ctx): Happened[] {
  return [{ type: "ill ended" }, ...(c.walk.kind === "mishap" ? [{ type: "walk ended" as const, how: "whole walk" as const }] : [])];
}

function accept(c: Ctx, slot: NumberSlot, text: string): Outcome {
  const draft = c.walk.draft;
  const known = { via: draft?.via ?? "touch", helper: draft?.helper ?? null };
  if (slot === "ketones") {
    const rule = c.card?.ketones;
    const value = Number(text);
    const call: Happened[] = rule && ketonesRaiseCall(rule, value) ? [{ type: "call raised", why: "ketones" }] : [];
    return happen({ type: "ketones read", test: rule?.test ?? "blood", value, ...known }, ...call);
  }
  const glucose = glucoseOf(c, text);
  const low: Happened[] = c.guards.isLow(glucose, c.card) ? [{ type: "low began", because: "reading" }] : [];
  return happen({ type: "reading taken", glucose, source: c.me.person.readsFrom ?? "finger", ...known }, ...low);
}

export const ill: StepRules = {
  offers,
  decide(c: Ctx, intent: Intent) {
    switch (intent.do) {
      case "danger signs":
        return happen(
          { type: "danger signs answered", any: intent.any },
          ...(intent.any ? [{ type: "call raised" as const, why: "danger signs" as const }] : []),
        );
      case "no meter":
        return happen({ type: "cannot measure" });
      case "read word":
        return happen(
          { type: "meter word read", word: intent.word, via: intent.via },
          ...(intent.word === "LO" ? [{ type: "low began" as const, because: "meter word" as const }] : []),
        );
      case "read strip":
        return decideNumber(c, { do: "give number", slot: "ketones", text: String(intent.level), via: "touch", helper: null }, ill);
      case "no ketone strips":
        return happen({ type: "cannot test ketones" });
      case "heard ill advice":
        return happen(...heard(c));
      case "finish ill":
        return happen(...ended(c));
      default:
        return isNumberIntent(intent) ? decideNumber(c, intent, ill) : happen();
    }
  },
  accept,
};

/** Our choice, no source, as in a low. To be drowsy is a danger sign itself; later strips are fetched and dipped, and silence means nothing. */
const UNANSWERED_MS = 5 * MINUTE;

/** Has nobody answered the question about danger signs, and nobody left it? */
export function unansweredIll(walk: Walk, now: Stamp, sure: boolean): boolean {
  if (!asksDanger(walk) || walk.ill?.danger !== null || walk.ill.callRaised || walk.left || walk.low || walk.mishap) return false;
  return (oldestAge(walk.touchedAt, now, sure) ?? now.mono) >= UNANSWERED_MS;
}
