// A simulated person at the tablet: answers what the walk asks until the walk is over, at a human pace, with one twist at most.
import type { MealName } from "#events/card.ts";
import type { StepName } from "#events/happened-walk.ts";
import { DAY, MINUTE } from "#events/quantity.ts";
import type { NumberSlot, Via } from "#events/told.ts";
import { SILENCE_WRITTEN_AT } from "#walk/bell.ts";
import { clockQuestion } from "#walk/offers.ts";
import { stepOf, type Walk } from "#walk/state.ts";
import { sugarsOffered } from "#walk/steps/low.ts";
import type { Chance } from "./chance.ts";
import { type Habits, inUnit, viaOf, within } from "./habits.ts";
import type { Home } from "./home.ts";
import type { Twist } from "./story.ts";

export interface WalkPlan {
  meal: MealName | null;
  reading: string;
  twist: Twist | null;
  /** Minutes from the needle to the first bite. */
  bite: number;
}

/** Seconds that a person takes before answering at a step: least, most. Own figures, no source. */
const THINKS: Readonly<Record<StepName | "low" | "mishap" | "needle question", readonly [number, number]>> = {
  taken: [4, 12],
  wash: [4, 10],
  reading: [25, 55],
  plate: [6, 15],
  card: [5, 12],
  "eat first": [5, 10],
  pen: [9, 20],
  dial: [10, 25],
  place: [6, 16],
  skin: [6, 12],
  inject: [6, 14],
  "put away": [15, 30],
  eat: [1, 3],
  done: [3, 8],
  low: [20, 50],
  mishap: [8, 15],
  "needle question": [8, 15],
};
/** More answers than this in one walk would be a circle: a defect. */
const MOST_ANSWERS = 120;
/** Shares of Henk's meals that are a usual meal or a number of grams; the rest are foods put on the plate one by one. */
const USUAL_MEAL = 0.6;
const GRAMS = 0.25;
const FOODS: Readonly<Record<MealName, readonly string[]>> = {
  breakfast: ["porridge-milk", "toast-white"],
  lunch: ["toast-white", "apple", "toast-white"],
  dinner: ["potato-boiled", "potato-boiled", "apple"],
  snack: ["apple"],
};

export class Walker {
  private readonly id: string;
  private slipped = false;
  private rounds = 0;

  constructor(
    private readonly home: Home,
    private readonly habits: Habits,
    private readonly plan: WalkPlan,
    private readonly chance: Chance,
  ) {
    this.id = habits.person;
  }

  /** From the first tap until the person has no open walk. */
  run(): void {
    const { home, id: person, plan } = this;
    home.send(plan.meal ? { do: "open meal", person, meal: plan.meal } : { do: "open low", person });
    for (let i = 0; i < MOST_ANSWERS; i++) {
      const { walk } = home.person(person);
      if (!walk) return;
      if (walk.left) home.send({ do: "set aside", person });
      else if (clockQuestion(home.state)) this.then([5, 12], () => home.send({ do: "agree clock" }));
      else this.answer(walk);
    }
    throw new Error(`The demo's walk of ${person} goes in a circle at ${JSON.stringify(home.stamp())}`);
  }

  private is(twist: Twist): boolean {
    return this.plan.twist === twist;
  }

  /** True once: a slip is not made twice. */
  private slips(twist: Twist): boolean {
    if (!this.is(twist) || this.slipped) return false;
    this.slipped = true;
    return true;
  }

  private then(seconds: readonly [number, number], act: () => void): void {
    this.home.pass(this.chance.between(...seconds) * this.habits.pace);
    act();
  }

  /** Until the wait of the card has run out, and a moment longer. */
  private waitOut(): void {
    this.home.pass((this.home.person(this.id).walk?.wait?.ms ?? 0) / 1000 + this.chance.between(1, 8));
  }

  private number(slot: NumberSlot, text: string, via: Via = "touch", helper: string | null = null): void {
    const give = { do: "give number", slot, text, via, helper } as const;
    this.home.send(give);
    this.then([2, 5], () => this.home.send({ do: "agree number" }));
    if (this.home.person(this.id).walk?.draft?.text === "") this.then([3, 7], () => this.home.send(give));
  }

  private answer(walk: Walk): void {
    const step = stepOf(walk);
    this.then(THINKS[step], () => {});
    const { home } = this;
    switch (step) {
      case "taken":
        return home.send({ do: "answer taken", answer: this.is("asks for a second dose") ? "yes" : "no" });
      case "wash":
        return this.wash();
      case "reading":
        if (this.slips("types the other unit"))
          home.slip({ do: "give number", slot: "reading", text: this.habits.otherUnit, via: "touch", helper: null });
        return this.number("reading", this.plan.reading, viaOf(this.habits, this.chance));
      case "plate":
        return this.plate(walk);
      case "card":
        return this.card(walk);
      case "eat first":
        return home.send({ do: "meal eaten first" });
      case "pen":
        return this.pen(walk);
      case "dial":
        return this.dial(walk);
      case "place":
        return this.place(walk);
      case "skin":
        return this.skin();
      case "inject":
        return this.inject(walk);
      case "needle question":
        return home.send({ do: "needle went in", answer: "yes" });
      case "mishap":
        return home.send({ do: "heard mishap advice" });
      case "put away":
        return home.send({ do: "put away" });
      case "eat":
        return this.eat();
      case "done":
        return home.send({ do: "finish" });
      case "low":
        return this.low(walk);
      default:
        return step satisfies never;
    }
  }

  private wash(): void {
    if (this.chance.happens(this.habits.alreadyWashed)) return this.home.send({ do: "already washed" });
    this.home.send({ do: "begin wait" });
    this.waitOut();
    this.home.send({ do: "wait is over" });
  }

  private plate(walk: Walk): void {
    const { home, chance } = this;
    if (walk.exercise === null) {
      const { card } = home.person(this.id);
      const value = walk.reading?.glucose?.value ?? 0;
      if (card?.card.high && value >= card.card.high.value && !walk.highHeard) return home.send({ do: "heard high advice" });
      return home.send({ do: "exercise", hard: this.is("hard exercise") });
    }
    if (walk.plate) return home.send({ do: "meal is ready" });
    const { usualMeals } = home.person(this.id).person;
    const usual = usualMeals.findIndex((m) => m.meal === walk.meal);
    const how = chance.next();
    if (usual >= 0 && how < USUAL_MEAL) {
      home.send({ do: "usual meal", index: usual });
      return this.then([3, 6], () => home.send({ do: "agree number" }));
    }
    if (how < USUAL_MEAL + GRAMS) return this.number("grams", `${Math.round((usualMeals[usual]?.grams ?? 20) * chance.between(0.7, 1.3))}`);
    for (const food of FOODS[walk.meal ?? "snack"])
      this.then([4, 9], () => home.send({ do: "add food", food, portions: chance.whole(1, 4) / 2 }));
    home.send({ do: "plate is complete" });
    return this.then([3, 6], () => home.send({ do: "agree number" }));
  }

  private card(walk: Walk): void {
    if (this.is("snack not eaten after all")) return this.home.send({ do: "leave" });
    if (walk.told) return this.home.send(walk.told.units === 0 ? { do: "finish" } : { do: "heard dose" });
    if (!this.is("snack by telephone")) return this.home.send({ do: "leave" });
    return this.then([120, 200], () => this.number("telephoned number", "2", "touch", "Nurse Adeyemi"));
  }

  private pen({ penCheck }: Walk): void {
    const { home } = this;
    if (!penCheck.pen) {
      if (this.slips("picks the night pen")) home.slip({ do: "pick pen", pen: this.penOf(this.id, "long-acting"), how: "mark" });
      const other = Object.keys(home.state.people).find((id) => id !== this.id) ?? this.id;
      if (this.slips("picks the other's pen")) home.slip({ do: "pick pen", pen: this.penOf(other, "mealtime"), how: "mark" });
      return home.send({ do: "pick pen", pen: this.penOf(this.id, "mealtime"), how: "mark" });
    }
    if (!penCheck.looked) return home.send({ do: "insulin looks", look: "as it should be" });
    return home.send(penCheck.needle ? { do: "primed", stream: true } : { do: "needle fitted" });
  }

  private penOf(person: string, kind: "mealtime" | "long-acting"): string {
    return this.home.person(person).pens.find((p) => p.pen.kind === kind && !p.retired)?.pen.id ?? "";
  }

  private dial(walk: Walk): void {
    const right = walk.told?.units ?? 0;
    if (this.slips("dials another number")) {
      this.home.send({
        do: "give number",
        slot: "dial",
        text: `${right + (this.chance.happens(0.5) ? 1 : -1)}`,
        via: "touch",
        helper: null,
      });
      this.then([2, 5], () => this.home.slip({ do: "agree number" }));
      this.then([8, 20], () => {});
    }
    this.number("dial", `${right}`, viaOf(this.habits, this.chance));
  }

  private place(walk: Walk): void {
    if (!walk.offered) return this.home.send({ do: "leave" });
    if (this.slips("spot is sore")) this.home.send({ do: "not this spot", reason: "sore" });
    if (this.slips("spot has a lump")) this.home.send({ do: "not this spot", reason: "lump" });
    this.then([1, 4], () => this.home.send({ do: "take spot" }));
  }

  private skin(): void {
    const wiped = this.is("drying cut short") || this.chance.happens(this.habits.wiped);
    this.home.send({ do: "skin cleaned", how: wiped ? "wiped" : "clean without a wipe" });
    if (!wiped) return;
    if (this.is("drying cut short")) return this.then([4, 9], () => this.home.send({ do: "jump wait", reason: "the skin is dry" }));
    this.waitOut();
    return this.home.send({ do: "wait is over" });
  }

  private inject(walk: Walk): void {
    const { home } = this;
    if (walk.pressed) return this.window(walk);
    home.send({ do: "button is down" });
    if (this.slips("app stops at the needle")) return this.then([20, 40], () => home.startAgain());
    if (this.is("needle out early")) return this.then([3, 6], () => home.send({ do: "needle came out early" }));
    this.waitOut();
    return home.send({ do: "wait is over" });
  }

  private window(walk: Walk): void {
    if (walk.dial && walk.dial.units > 2 && this.slips("number left in the window")) return this.number("left in window", "1");
    this.home.send({ do: "window is at zero" });
  }

  /** The bell rings as it would: each silence is written when it is due. */
  private eat(): void {
    const { bell } = this.home.person(this.id);
    if (bell) {
      const bite = bell.from.wall + this.plan.bite * MINUTE;
      for (const mark of SILENCE_WRITTEN_AT) {
        const due = bell.from.wall + bell.latestMs + mark * MINUTE;
        if (due >= bite || due - bell.from.wall > DAY) break;
        this.home.passTo(due);
        this.home.send({ do: "pass time" });
      }
      this.home.passTo(bite);
    }
    this.home.send({ do: "eating" });
  }

  private low(walk: Walk): void {
    const { home, habits, chance } = this;
    if (walk.low?.due === "treat") {
      const sugar = sugarsOffered()[chance.whole(0, 3)] ?? sugarsOffered()[0];
      if (sugar) home.send({ do: "took sugar", food: sugar.food.id, grams: sugar.grams });
      return;
    }
    this.waitOut();
    this.rounds += 1;
    const again = this.rounds === 1 && (this.is("low first, two rounds") || this.is("feels low later, two rounds"));
    // Still low after the first round, though above the very low of ADA level 2.
    this.number(
      "recheck after low",
      again ? inUnit(habits, habits.low[1] - (habits.unit === "mg/dL" ? 3 : 0.2)) : within(habits, habits.recovered, chance),
    );
  }
}
