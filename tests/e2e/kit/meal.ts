// A whole meal walk, from the kitchen screen to the last sentence, answered by any hand.
import type { MealName } from "#events/card.ts";
import type { Happened } from "#events/happened.ts";
import type { Intent } from "#events/intent.ts";
import type { NumberSlot } from "#events/told.ts";
import { foodById, nameOf } from "#rules/food/foods.ts";
import { clockQuestion, frontPerson } from "#walk/offers.ts";
import { stepOf, type Walk } from "#walk/state.ts";
import { FIXED, PAD_BUTTON } from "#words/en/fixed.ts";
import { labelOf } from "#words/en/labels.ts";
import { groupName, plateWords, portionLabel } from "#words/en/plate.ts";
import { finger, type Hand } from "./hands.ts";
import type { Tablet } from "./tablet.ts";

export interface Meal {
  person: "marta" | "henk";
  meal: MealName;
  reading: string;
  /** What a card that counts carbohydrate is told; not asked for otherwise. */
  plate?: { grams: string } | { foods: readonly { id: string; portions: number }[] };
}

export const LUNCH: Meal = { person: "marta", meal: "lunch", reading: "132" };

/** Where a walk may be stopped on the way: just before this is answered. */
export type Stop =
  | "clock"
  | "taken"
  | "wash"
  | "washing"
  | "reading"
  | "read back"
  | "exercise"
  | "plate"
  | "ready"
  | "card"
  | "pen"
  | "look"
  | "needle"
  | "prime"
  | "dial"
  | "dial read back"
  | "place"
  | "skin"
  | "drying"
  | "inject"
  | "hold"
  | "take out"
  | "window"
  | "put away"
  | "eat"
  | "done";

export const STOPS: readonly Stop[] = [
  "clock",
  "taken",
  "wash",
  "washing",
  "reading",
  "read back",
  "exercise",
  "plate",
  "ready",
  "card",
  "pen",
  "look",
  "needle",
  "prime",
  "dial",
  "dial read back",
  "place",
  "skin",
  "drying",
  "inject",
  "hold",
  "take out",
  "window",
  "put away",
  "eat",
  "done",
];

/** Answers one screen of the walk and waits until the answer is stored. */
export async function answer(tablet: Tablet, hand: Hand, intent: Intent): Promise<void> {
  await hand.press(labelOf(intent, tablet.state));
  await tablet.stored(JSON.stringify(intent));
}

export async function give(tablet: Tablet, hand: Hand, slot: NumberSlot, text: string): Promise<void> {
  await hand.number(slot === "grams" ? plateWords.typeGrams : PAD_BUTTON[slot], text);
  await tablet.stored(`${slot} ${text}`);
}

export const walkOf = (tablet: Tablet): Walk => {
  const walk = frontPerson(tablet.state)?.walk;
  if (!walk) throw new Error("no walk is open");
  return walk;
};

/** Kitchen screen to the first question. Who it is, and nothing else, is always touched or keyed: a voice alone never chooses the person. */
export async function openMeal(tablet: Tablet, hand: Hand, { person, meal }: Meal): Promise<void> {
  await hand.press({ shown: FIXED.meal, said: [FIXED.meal.toLowerCase()] });
  const byHand = hand.how === "voice" ? finger(tablet) : hand;
  const name = tablet.state.people[person]?.person.name ?? "";
  const shape = { marta: "●", henk: "■" }[person];
  await byHand.press({ shown: `${shape} ${name}`, said: [] });
  await answer(tablet, hand, { do: "open meal", person, meal });
}

/** The whole walk, or up to the stop. Answers where it stands: `from` says after which stop it goes on. */
export async function walkMeal(tablet: Tablet, hand: Hand, meal: Meal, until?: Stop, from?: Stop): Promise<void> {
  if (from === undefined) await openMeal(tablet, hand, meal);
  const first = from === undefined ? 0 : STOPS.indexOf(from);
  for (const stop of STOPS.slice(first)) {
    if (stop === until) return;
    await oneScreen(tablet, hand, meal, stop);
  }
}

/** What a person answers at each screen when all is well. */
async function oneScreen(tablet: Tablet, hand: Hand, meal: Meal, stop: Stop): Promise<void> {
  const say = (intent: Intent) => answer(tablet, hand, intent);
  const walk = frontPerson(tablet.state)?.walk;
  switch (stop) {
    case "clock":
      // Asked only after a start of the app.
      return clockQuestion(tablet.state) ? say({ do: "agree clock" }) : undefined;
    case "taken":
      // Asked only where the log cannot vouch for the last hours.
      return walk && stepOf(walk) === "taken" ? say({ do: "answer taken", answer: "no" }) : undefined;
    case "wash":
      return say({ do: "begin wait" });
    case "washing":
      await tablet.pass(20.5);
      return say({ do: "wait is over" });
    case "reading":
      return give(tablet, hand, "reading", meal.reading);
    case "read back":
      return say({ do: "agree number" });
    case "exercise":
      return say({ do: "exercise", hard: false });
    case "plate":
      return meal.plate ? fillPlate(tablet, hand, meal.plate) : undefined;
    case "ready":
      return say({ do: "meal is ready" });
    case "card":
      return say({ do: "heard dose" });
    case "pen":
      return say({ do: "pick pen", pen: penInUse(tablet, meal.person), how: "mark" });
    case "look":
      return say({ do: "insulin looks", look: "as it should be" });
    case "needle":
      return say({ do: "needle fitted" });
    case "prime":
      return say({ do: "primed", stream: true });
    case "dial":
      return give(tablet, hand, "dial", String(walkOf(tablet).told?.units));
    case "dial read back": {
      await say({ do: "agree number" });
      // Heard by voice, a dialled number needs its digits a second time.
      if (walkOf(tablet).draft) await give(tablet, hand, "dial", String(walkOf(tablet).told?.units));
      return;
    }
    case "place":
      return say({ do: "take spot" });
    case "skin":
      return say({ do: "skin cleaned", how: "wiped" });
    case "drying":
      await tablet.pass(20.5);
      return say({ do: "wait is over" });
    case "inject":
      return say({ do: "button is down" });
    case "hold":
      if (hand.how === "voice") await tablet.run(11_500);
      else await tablet.pass(10.5);
      return;
    case "take out":
      return say({ do: "wait is over" });
    case "window":
      // One press; said, it is a number like any other.
      if (hand.how !== "voice") return say({ do: "window is at zero" });
      await give(tablet, hand, "left in window", "0");
      return say({ do: "agree number" });
    case "put away":
      return say({ do: "put away" });
    case "eat":
      await tablet.pass(6 * 60);
      return say({ do: "eating" });
    case "done":
      return say({ do: "finish" });
  }
}

/** The mealtime pen that this person has in use. */
export function penInUse(tablet: Tablet, person: string): string {
  const pens = tablet.state.people[person]?.pens ?? [];
  const pen = pens.find((p) => !p.retired && p.pen.kind === "mealtime" && p.openedOn !== null);
  if (!pen) throw new Error(`${person} has no mealtime pen in use`);
  return pen.pen.id;
}

async function fillPlate(tablet: Tablet, hand: Hand, plate: NonNullable<Meal["plate"]>): Promise<void> {
  if ("grams" in plate) await give(tablet, hand, "grams", plate.grams);
  else await fillWithFoods(tablet, hand, plate.foods);
  await answer(tablet, hand, { do: "agree number" });
}

async function fillWithFoods(tablet: Tablet, hand: Hand, foods: readonly { id: string; portions: number }[]): Promise<void> {
  const press = (name: string) => hand.press({ shown: name, said: [name.toLowerCase()] });
  for (const [place, { id, portions }] of foods.entries()) {
    const food = foodById(id);
    if (!food) throw new Error(`no food ${id}`);
    // A voice names the food at once; a hand finds it by its kind.
    if (hand.how !== "voice") {
      if (place > 0) await press(plateWords.add);
      await press(plateWords.byKind);
      await press(groupName(food.group, "UK"));
    }
    await press(nameOf(food, "UK"));
    await press(portionLabel(portions));
    await tablet.stored(`food ${id}`);
  }
  await answer(tablet, hand, { do: "plate is complete" });
}

/** The types of the walk's own events, in the order they were stored. */
export const typesOf = (events: readonly Happened[]): string[] => events.map((event) => event.type);
