// Step 6: what the card says, and why. Told once it is stored; silent where the card is silent.
import type { Happened } from "#events/happened.ts";
import type { Intent } from "#events/intent.ts";
import type { Units } from "#events/quantity.ts";
import type { NumberSlot } from "#events/told.ts";
import { whyNotInForce } from "#rules/card/silence.ts";
import { checkUnits } from "#rules/pen/units.ts";
import { isAfterLow } from "#walk/after-low.ts";
import { type Ctx, happen, type Offer, type Outcome, press, refuse, type StepRules } from "#walk/context.ts";
import { isBackground } from "#walk/insulin.ts";
import { askBackground } from "./card-background.ts";
import { decideNumber, isNumberIntent, numberOffers } from "./number.ts";
import { oldReading } from "./old-reading.ts";

/** Asks the card; every doubt goes in at its worst. */
function ask(c: Ctx): Happened {
  const { card, cardHash, walk } = c;
  if (!card || !cardHash) return { type: "card silent", why: "no card", detail: null };
  if (isBackground(walk)) return askBackground(c, card, cardHash);
  if (!walk.reading) return { type: "card silent", why: "no reading", detail: null };
  if (walk.meal === null) return { type: "card silent", why: "no dose for this meal", detail: null };
  const answer = c.guards.lookUp(card, {
    meal: walk.meal,
    reading: walk.reading.glucose,
    readingWord: walk.reading.word,
    grams: walk.plate?.grams ?? null,
    minuteOfDay: c.minuteOfDay,
    today: c.today,
    recent: [...c.guards.recentDoses(c.me, c.now, c.sure), ...c.guards.possibleDoses(c.house, c.now)],
    afterLow: isAfterLow(c),
    hardExercise: walk.exercise ?? false,
    eatenFirst: walk.eatenFirst,
  });
  if (!answer.told) {
    const { told: _told, why, ...rest } = answer;
    return { type: "card silent", why, detail: Object.keys(rest).length > 0 ? JSON.stringify(rest) : null };
  }
  return {
    type: "dose told",
    told: {
      units: answer.units,
      food: answer.food,
      correction: answer.correction,
      cardHash,
      rows: [...answer.rows],
      why: answer.why.map((w) => ({ ...w })),
      cautions: answer.cautions.map((w) => ({ ...w })),
      timing: answer.timing,
      by: "card",
    },
  };
}

export function cardStage(c: Ctx): "silent" | "say first" | "told" | "number" {
  if (c.walk.draft) return "number";
  if (c.walk.silent) return "silent";
  if (c.me.person.sayFirst && !c.walk.ownNumber && c.walk.told?.by === "card") return "say first";
  return "told";
}

function mayTelephone(c: Ctx): boolean {
  // Background insulin is the printed one, or none.
  if (!c.card || c.walk.telephoned || !c.walk.reading?.glucose || isBackground(c.walk)) return false;
  // Out of force, the card's largest dose is no limit any more (promise 2).
  if (whyNotInForce(c.card, c) !== null) return false;
  if (c.guards.isLow(c.walk.reading.glucose, c.card)) return false;
  return c.card.telephonedDose === "anyone" || (c.card.telephonedDose === "with a helper only" && c.walk.helper !== null);
}

function offers(c: Ctx): Offer[] {
  const stop = press("stop", { do: "leave" });
  switch (cardStage(c)) {
    case "number":
      return numberOffers(c, []);
    case "say first":
      return numberOffers(c, ["own number"]);
    case "silent": {
      const phone: Offer[] = mayTelephone(c) ? [{ offer: "number", slot: "telephoned number" }] : [];
      const help = c.card?.telephonedDose === "with a helper only" && c.walk.helper === null ? helpers(c) : [];
      return [stop, ...phone, ...help];
    }
    case "told":
      // A keeper signed another card at this moment: nothing is told until the walk is taken up again.
      if (!c.walk.told) return [stop];
      return c.walk.told.units === 0 ? [press("main", { do: "finish" }), stop] : [press("main", { do: "heard dose" }), stop];
  }
}

export const helpers = (c: Ctx): Offer[] => [
  ...c.house.keepers.map((k) => press("choice", { do: "name helper", name: k.name })),
  press("choice", { do: "name helper", name: "somebody else" }),
];

function accept(c: Ctx, slot: NumberSlot, text: string): Outcome {
  const checked = checkUnits(text, "0.5");
  if (!checked.ok) return refuse({ no: "units", why: checked.why, text });
  const { units } = checked;
  if (slot === "own number") {
    const matches = units === c.walk.told?.units;
    const slip: Happened[] = matches ? [] : [{ type: "near miss", step: "card", what: "own number is not the card's", detail: text }];
    return happen(...slip, { type: "own number given", units, matches });
  }
  return telephoned(c, units);
}

/** A named caller's number: once, never above the largest dose, never in a low (promise 5). */
function telephoned(c: Ctx, units: Units): Outcome {
  const turn: Happened = { type: "number turned down", slot: "telephoned number" };
  const old = oldReading(c);
  if (old.length > 0) return happen(...old);
  if (!c.card || !c.cardHash || !mayTelephone(c)) return refuse({ no: "telephoned number", why: "not allowed", units }, turn);
  if (c.card.largestDose === null) return refuse({ no: "telephoned number", why: "blank field", units }, turn);
  if (units > c.card.largestDose) {
    return refuse(
      { no: "telephoned number", why: "above the largest dose", units },
      { type: "near miss", step: "card", what: "telephoned number above the largest dose", detail: String(units) },
      turn,
    );
  }
  // The pen belongs to the card's step: a number it cannot show was misheard (promise 3).
  const { step } = c.card.rounding;
  if (!checkUnits(String(units), step).ok) return refuse({ no: "units", why: "off the pen's step", text: String(units) }, turn);
  const by = c.walk.draft?.helper ?? c.card.clinic.name;
  return happen({
    type: "dose told",
    told: {
      units,
      food: 0,
      correction: 0,
      cardHash: c.cardHash,
      rows: [],
      why: [{ reason: "telephoned", by }],
      cautions: [],
      timing: c.card.timing.when,
      by,
    },
  });
}

export const card: StepRules = {
  offers,
  arrive(c) {
    // A silent card may mean a long telephone call: the age of the reading is looked at again when the caller's number comes.
    if (c.walk.silent) return [];
    const old = oldReading(c);
    if (old.length > 0) return old;
    return c.walk.told ? [] : [ask(c)];
  },
  decide(c: Ctx, intent: Intent) {
    if (intent.do === "heard dose") {
      const old = oldReading(c);
      return happen(...(old.length > 0 ? old : [{ type: "dose heard" as const }]));
    }
    if (intent.do === "finish") return happen({ type: "walk ended", how: "no dose" });
    if (intent.do === "name helper") return happen({ type: "helper named", name: intent.name });
    return isNumberIntent(intent) ? decideNumber(c, intent, card) : happen();
  },
  accept,
};
