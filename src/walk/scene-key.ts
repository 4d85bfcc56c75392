// Names what is on the screen: when it changes, the screen is a new one and is said; a running clock does not change it.
import type { Stamp } from "#events/stamp.ts";
import { askedAgain } from "./asked-again.ts";
import { bellNow } from "./bell.ts";
import { waitOver } from "./context.ts";
import { clockQuestion, frontPerson, mealQuestionDue } from "./offers.ts";
import { type HouseState, stepOf } from "./state.ts";

export function sceneKey(house: HouseState, now: Stamp): string {
  const me = frontPerson(house);
  if (!me?.walk) return "kitchen";
  if (clockQuestion(house)) return `${me.walk.id} clock ${house.doubt}`;
  const w = me.walk;
  const sure = house.doubt === null;
  const step = stepOf(w);
  const again = askedAgain({ walk: w, now, sure });
  const parts: unknown[] = [w.id, step, w.draft, w.unitAgreed, w.wait?.for, waitOver(w, now, sure), w.waitDone, again];
  switch (step) {
    case "reading":
      parts.push(w.reading?.word);
      break;
    case "plate":
      parts.push(w.highHeard, w.exercise, w.lines.length, w.plate?.grams);
      break;
    case "card":
      parts.push(w.told?.units, w.silent?.why, w.ownNumber, w.helper);
      break;
    case "pen":
      parts.push(w.penCheck, w.helper);
      break;
    case "dial":
      parts.push(w.helper);
      break;
    case "place":
      parts.push(w.offered?.spot, w.noSpot);
      break;
    case "skin":
      parts.push(w.cleaned);
      break;
    case "inject":
      parts.push(w.pressed, w.windowUnseen);
      break;
    case "done":
      parts.push(mealQuestionDue(me, now, sure));
      break;
    case "eat":
      parts.push(me.bell ? bellNow(me.bell, now, sure).level : null);
      break;
    case "low":
      parts.push(w.low?.rounds.length, w.low?.readings.length, w.low?.callRaised, w.low?.noMeter, w.low?.helpSteps, sure, house.doubt);
      break;
    case "ill":
      parts.push(w.ill, w.his);
      break;
    case "mishap":
      parts.push(w.mishap);
      break;
    default:
      break;
  }
  return JSON.stringify(parts);
}
