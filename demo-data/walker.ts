// A simulated person at the tablet: whose hands, how fast, and the one twist of this walk.
import type { MealName } from "#events/card.ts";
import type { NumberSlot, Via } from "#events/told.ts";
import type { Walk } from "#walk/state.ts";
import type { Chance } from "./chance.ts";
import type { Habits } from "./habits.ts";
import type { Home } from "./home.ts";
import type { Twist } from "./story.ts";

export interface WalkPlan {
  /** null: a low between meals. */
  meal: MealName | null;
  reading: string;
  twist: Twist | null;
  /** Minutes from the needle to the first bite. */
  bite: number;
}

/** Answers what a step asks. */
export type Answer = (walker: Walker, walk: Walk) => void;

export class Walker {
  private slipped = false;

  constructor(
    readonly home: Home,
    readonly habits: Habits,
    readonly plan: WalkPlan,
    readonly chance: Chance,
  ) {}

  get me() {
    return this.home.person(this.habits.person);
  }

  is(twist: Twist): boolean {
    return this.plan.twist === twist;
  }

  /** True once: a slip is not made twice. */
  slips(twist: Twist): boolean {
    if (!this.is(twist) || this.slipped) return false;
    this.slipped = true;
    return true;
  }

  /** Seconds go by, at this person's pace. */
  pause(least: number, most: number): void {
    this.home.pass(this.chance.between(least, most) * this.habits.pace);
  }

  /** Until the wait of the card has run out, and a moment longer. */
  waitOut(): void {
    this.home.pass((this.me.walk?.wait?.ms ?? 0) / 1000 + this.chance.between(1, 8));
  }

  /** Given, read back and agreed; given again where the walk asks for the digits a second time. */
  number(slot: NumberSlot, text: string, via: Via = "touch", helper: string | null = null): void {
    const give = { do: "give number", slot, text, via, helper } as const;
    this.home.send(give);
    this.pause(2, 5);
    this.home.send({ do: "agree number" });
    if (this.me.walk?.draft?.text !== "") return;
    this.pause(3, 7);
    this.home.send(give);
  }
}
