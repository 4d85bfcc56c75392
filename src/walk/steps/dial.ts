// Step 8: the dose is dialled in silence, and the number is said before the tablet says anything.
import type { Intent } from "#events/intent.ts";
import { units } from "#events/quantity.ts";
import type { NumberSlot } from "#events/told.ts";
import { type Ctx, happen, type Outcome, press, refuse, type StepRules } from "#walk/context.ts";
import { helpers } from "./card.ts";
import { decideNumber, isNumberIntent, numberOffers } from "./number.ts";
import { oldCard } from "./old-card.ts";
import { oldReading } from "./old-reading.ts";

function accept(c: Ctx, _slot: NumberSlot, text: string): Outcome {
  const told = c.walk.told;
  if (!told) return refuse({ no: "not offered here" });
  const dialled = units(Number(text));
  const draft = c.walk.draft;
  if (!c.guards.dialFits(dialled, told.units)) {
    return refuse(
      { no: "dial is not the card", dialled, told: told.units },
      { type: "near miss", step: "dial", what: "dialled is not the card", detail: `${dialled} for ${told.units}` },
      { type: "number turned down", slot: "dial" },
    );
  }
  const by = c.me.person.dialBy;
  // Known by clicks alone: counted a second time from zero, as the keeper chose.
  if (by === "counts twice" && draft?.first === null) return happen({ type: "digits asked again", slot: "dial" });
  const how = by === "counts twice" ? "counted twice" : by === "helper" || draft?.helper ? "read by a helper" : "read";
  return happen({ type: "dose dialled", units: dialled, via: draft?.via ?? "touch", helper: draft?.helper ?? c.walk.helper, how });
}

/** A dial that only a helper reads is read by nobody until somebody is named. */
export const needsReader = (c: Ctx): boolean => c.me.person.dialBy === "helper" && c.walk.helper === null;

export const dial: StepRules = {
  arrive: (c) => [...oldCard(c, "dial"), ...oldReading(c)].slice(0, 1),
  offers(c: Ctx) {
    if (needsReader(c)) return [...helpers(c), press("stop", { do: "leave" })];
    const stop = c.walk.draft ? [] : [press("stop", { do: "leave" })];
    return [...numberOffers(c, ["dial"]), ...stop];
  },
  decide(c: Ctx, intent: Intent) {
    if (intent.do === "name helper") return happen({ type: "helper named", name: intent.name });
    return isNumberIntent(intent) ? decideNumber(c, intent, dial) : happen();
  },
  accept,
};
