// How the simulated person answers up to the dose: taken, wash, reading, plate, card; and a low.
import type { MealName } from "#events/card.ts";
import { offers } from "#walk/offers.ts";
import { sugarsOffered } from "#walk/steps/low.ts";
import { inUnit, viaOf, within } from "./habits.ts";
import type { Answer, Walker } from "./walker.ts";

export const taken: Answer = (w) => w.home.send({ do: "answer taken", answer: w.is("asks for a second dose") ? "yes" : "no" });

export const wash: Answer = (w) => {
  if (w.chance.happens(w.habits.alreadyWashed)) {
    w.home.send({ do: "already washed" });
    return;
  }
  w.home.send({ do: "begin wait" });
  w.waitOut();
  w.home.send({ do: "wait is over" });
};

export const reading: Answer = (w) => {
  if (w.slips("types the other unit")) {
    w.home.slip({ do: "give number", slot: "reading", text: w.habits.otherUnit, via: "touch", helper: null });
    w.pause(8, 20);
  }
  w.number("reading", w.plan.reading, viaOf(w.habits, w.chance));
};

/** Shares of counted meals that are a usual meal or a number of grams; the rest are foods put on the plate one by one. */
const USUAL_MEAL = 0.6;
const GRAMS = 0.25;
const FOODS: Readonly<Record<MealName, readonly string[]>> = {
  breakfast: ["porridge-milk", "toast-white"],
  lunch: ["toast-white", "apple"],
  dinner: ["potato-boiled", "apple"],
  snack: ["apple"],
};

function fillPlate(w: Walker, meal: MealName): void {
  const { usualMeals } = w.me.person;
  const index = usualMeals.findIndex((usual) => usual.meal === meal);
  const how = w.chance.next();
  if (index < 0 || how >= USUAL_MEAL + GRAMS) {
    for (const food of FOODS[meal]) {
      w.pause(4, 9);
      w.home.send({ do: "add food", food, portions: w.chance.whole(2, 4) / 2 });
    }
    w.home.send({ do: "plate is complete" });
  } else if (how < USUAL_MEAL) {
    w.home.send({ do: "usual meal", index });
  } else {
    const usual = usualMeals[index]?.grams ?? 0;
    w.number("grams", `${Math.round(usual * w.chance.between(0.7, 1.3))}`);
    return;
  }
  w.pause(3, 6);
  w.home.send({ do: "agree number" });
}

export const plate: Answer = (w, walk) => {
  const high = w.me.card?.card.high?.value ?? Number.POSITIVE_INFINITY;
  if (!walk.highHeard && (walk.reading?.glucose?.value ?? 0) >= high) w.home.send({ do: "heard high advice" });
  else if (walk.exercise === null) w.home.send({ do: "exercise", hard: w.is("hard exercise") });
  else if (walk.plate) w.home.send({ do: "meal is ready" });
  else fillPlate(w, walk.meal ?? "snack");
};

const CALLER = "Nurse Adeyemi";

export const card: Answer = (w, walk) => {
  if (w.is("snack not eaten after all") || (walk.silent && !w.is("snack by telephone"))) w.home.send({ do: "leave" });
  else if (walk.told) w.home.send(walk.told.units === 0 ? { do: "finish" } : { do: "heard dose" });
  else {
    // The clinic is called and gives a number.
    w.pause(120, 200);
    w.number("telephoned number", "2", "touch", CALLER);
  }
};

/** The test is done, and what the card says to it is heard. */
export const ill: Answer = (w) => {
  const asked = offers(w.home.state, w.home.stamp()).some((o) => o.offer === "number" && o.slot === "ketones");
  if (!asked) w.home.send({ do: "heard ill advice" });
  else {
    w.pause(60, 120);
    w.number("ketones", `0.${w.chance.whole(1, 3)}`);
  }
};

export const low: Answer = (w, walk) => {
  if (walk.low?.due === "treat") {
    const sugars = sugarsOffered();
    const sugar = sugars[w.chance.whole(0, sugars.length - 1)];
    if (sugar) w.home.send({ do: "took sugar", food: sugar.food.id, grams: sugar.grams });
    return;
  }
  w.waitOut();
  const twoRounds = w.is("low first, two rounds") || w.is("feels low later, two rounds");
  // Still low after the first round, though above the very low of ADA level 2.
  const stillLow = inUnit(w.habits, w.habits.low[1] - (w.habits.unit === "mg/dL" ? 3 : 0.2));
  w.number("recheck after low", twoRounds && walk.low?.rounds.length === 1 ? stillLow : within(w.habits, w.habits.recovered, w.chance));
};
