// A person at one meal walk: answers what is asked from what they perceive. Every habit is truthful unless a seeded mistake changes it.
import type { MealName } from "#events/card.ts";
import type { Intent } from "#events/intent.ts";
import type { GlucoseUnit } from "#events/quantity.ts";
import type { Via } from "#events/told.ts";
import type { Kitchen } from "./kitchen.ts";

export interface Habits {
  person: string;
  meal: MealName;
  /** What the meter shows. */
  reading: number;
  /** What reaches the tablet as the reading, at each try from 0. */
  readingGiven(go: number): { text: string; via: Via };
  unitOfMeter: GlucoseUnit;
  grams: number;
  gramsGiven(go: number): string;
  hardExercise: boolean;
  /** At "taken already?": what is answered, having heard the screen. */
  taken(said: string): Intent;
  /** Units that come under the pen's mark by turning. */
  turned(told: number, go: number): number;
  /** What is said to stand in the window. */
  window(told: number, turned: number): number;
  /** The pen in the hand, and the one that it is taken for. */
  pen(go: number): { held: string; saidToBe: string };
  look(): Extract<Intent, { do: "insulin looks" }>["look"];
  /** The stream was really seen. */
  primes(): boolean;
  saysPrimed(really: boolean): boolean;
  mixes(): boolean;
  takesTheSpot(): boolean;
  waitsForSkin(): boolean;
  /** Seconds that the needle stays in; less than ten only where it is pulled early. */
  holds(): number;
  saysHeldShort(): boolean;
  /** Units still in the pen's way when the button will not go further. */
  leftInWindow(dialled: number): number;
  saysLeft(left: number): number;
  /** Instead of pressing the button: nothing goes in, and the window shows zero. */
  turnsBack: boolean;
  /** Between two answers at this step. */
  before(step: string): Promise<void>;
  /** Gets up from the table: ends the walk where it stands. */
  stopsAt: string | null;
}

const wordsOf = (grams: number): string => String(grams);

export const truthful = (k: Kitchen, over: Partial<Habits> = {}): Habits => {
  const habits: Habits = {
    person: "odile",
    meal: "lunch",
    reading: 130,
    readingGiven: () => ({ text: String(habits.reading), via: "touch" }),
    unitOfMeter: "mg/dL",
    grams: 40,
    gramsGiven: () => wordsOf(habits.grams),
    hardExercise: false,
    taken: () => ({ do: "answer taken", answer: "no" }),
    turned: (told, go) => (go === 0 && k.may(k.who.miscounts) ? told + 1 : told),
    window: (told, turned) => (k.may(k.who.echoes) ? told : turned),
    pen: () => ({ held: `${habits.person}-meal`, saidToBe: `${habits.person}-meal` }),
    look: () => "as it should be",
    primes: () => true,
    saysPrimed: (really) => really || k.may(k.who.echoes),
    mixes: () => k.may(k.who.doesAsTold),
    takesTheSpot: () => true,
    waitsForSkin: () => true,
    holds: () => 10,
    saysHeldShort: () => true,
    leftInWindow: () => 0,
    // Asked openly, with no number told: there is nothing to say back, and only what is overlooked is missed.
    saysLeft: (left) => (left > 0 && k.may(k.who.seesTheExpected) ? 0 : left),
    turnsBack: false,
    before: async () => {},
    stopsAt: null,
    ...over,
  };
  return habits;
};

/** What went on in one walk, as it truly was. */
export interface Truth {
  primed: boolean;
  mixed: boolean;
  onItsSpot: boolean;
  skinDry: boolean;
  heldSeconds: number | null;
  turned: number | null;
  told: number | null;
  left: number;
  injected: boolean;
  /** Where the walk ended. */
  endedAt: string;
}

/** Two numbers that are taken for each other: the same digits but one, or the same ones in another order. */
const isLike = (a: string, b: string): boolean => a !== b && Math.abs(a.length - b.length) <= 1;

const MOST_ANSWERS = 150;

/** From the kitchen to the kitchen again, or to where the person stops. */
export async function meal(k: Kitchen, h: Habits): Promise<Truth> {
  const truth: Truth = {
    primed: false,
    mixed: false,
    onItsSpot: true,
    skinDry: false,
    heldSeconds: null,
    turned: null,
    told: null,
    left: 0,
    injected: false,
    endedAt: "kitchen",
  };
  const tries: Record<string, number> = {};
  const go = (what: string): number => {
    tries[what] = (tries[what] ?? -1) + 1;
    return tries[what];
  };
  let held = "";
  await k.send({ do: "open meal", person: h.person, meal: h.meal });
  for (let i = 0; i < MOST_ANSWERS && k.step() !== "kitchen"; i++) {
    const step = k.step();
    if (step === h.stopsAt || step === "low" || step === "mishap" || step === "needle question") {
      truth.endedAt = step;
      return truth;
    }
    await h.before(step);
    if (k.step() !== step) continue;
    if (k.offered("agree clock")) {
      truth.endedAt = "clock";
      return truth;
    }
    if (k.walk()?.silent) {
      truth.endedAt = "card silent";
      await k.send({ do: "leave" });
      return truth;
    }
    await k.pass(5);
    if (k.step() !== step) continue;
    await answer(step);
  }
  return truth;

  async function number(slot: "reading" | "grams" | "dial" | "left in window", meant: string, text: string, via: Via): Promise<void> {
    const draft = k.walk()?.draft;
    if (!draft || draft.text === "") {
      await k.send({ do: "give number", slot, text, via, helper: null });
      return;
    }
    if (k.offered("choose unit")) {
      await k.send({ do: "choose unit", unit: h.unitOfMeter });
      return;
    }
    const yes = draft.text === meant || (isLike(draft.text, meant) && k.may(k.who.yesToLike));
    await k.send(yes ? { do: "agree number" } : { do: "change number" });
  }

  async function answer(step: string): Promise<void> {
    const walk = k.walk();
    if (!walk) return;
    switch (step) {
      case "taken":
        await k.send(h.taken(k.said()));
        return;
      case "wash":
        await k.send({ do: "already washed" });
        return;
      case "reading": {
        const given = !walk.draft || walk.draft.text === "" ? h.readingGiven(go("reading")) : { text: "", via: "touch" as const };
        await number("reading", String(h.reading), given.text, given.via);
        return;
      }
      case "plate": {
        if (k.offered("heard high advice")) await k.send({ do: "heard high advice" });
        else if (k.offered("exercise")) await k.send({ do: "exercise", hard: h.hardExercise });
        else if (k.offered("meal is ready")) await k.send({ do: "meal is ready" });
        else await number("grams", wordsOf(h.grams), !walk.draft || walk.draft.text === "" ? h.gramsGiven(go("grams")) : "", "touch");
        return;
      }
      case "card":
        truth.told = walk.told?.units ?? null;
        if (k.offered("heard dose")) await k.send({ do: "heard dose" });
        else await k.send({ do: "finish" });
        return;
      case "pen": {
        if (k.offered("pick pen")) {
          const pen = h.pen(go("pen"));
          held = pen.held;
          if (!(await k.send({ do: "pick pen", pen: pen.saidToBe, how: "mark" })) && go("pen refused") > 2) await k.send({ do: "leave" });
        } else if (k.offered("insulin looks")) {
          if (!(await k.send({ do: "insulin looks", look: h.look() }))) await k.send({ do: "leave" });
        } else if (k.offered("insulin mixed")) {
          truth.mixed = h.mixes();
          await k.send({ do: "insulin mixed" });
        } else if (k.offered("needle fitted")) await k.send({ do: "needle fitted" });
        else if (k.offered("primed")) {
          truth.primed = h.primes();
          await k.send({ do: "primed", stream: h.saysPrimed(truth.primed) });
        } else await k.send({ do: "leave" });
        return;
      }
      case "dial": {
        const told = walk.told?.units ?? 0;
        truth.told = told;
        if (!walk.draft || walk.draft.text === "") truth.turned = h.turned(told, go("dial"));
        const shown = h.window(told, truth.turned ?? 0);
        await number("dial", walk.draft?.text || String(shown), String(shown), "touch");
        return;
      }
      case "place":
        if (!k.offered("take spot")) {
          await k.send({ do: "leave" });
          return;
        }
        truth.onItsSpot = h.takesTheSpot();
        await k.send({ do: "take spot" });
        return;
      case "skin":
        if (!walk.cleaned) await k.send({ do: "skin cleaned", how: "wiped" });
        else if (k.offered("wait is over")) {
          truth.skinDry = true;
          await k.send({ do: "wait is over" });
        } else if (h.waitsForSkin()) await k.pass(20);
        else await k.send({ do: "jump wait", reason: "the skin is dry" });
        return;
      case "inject":
        await needle(walk.pressed);
        return;
      case "put away":
        await k.send({ do: "put away" });
        return;
      case "eat":
        await k.send({ do: "eating" });
        return;
      default:
        await k.send({ do: "finish" });
    }
  }

  async function needle(pressed: boolean): Promise<void> {
    const walk = k.walk();
    if (!walk) return;
    if (!pressed) {
      truth.left = h.leftInWindow(truth.turned ?? 0);
      const goesIn = h.turnsBack ? 0 : (truth.turned ?? 0) - truth.left;
      k.body.push({ units: goesIn, pen: held, person: h.person, at: k.now });
      truth.injected = true;
      truth.heldSeconds = h.holds();
      await k.send({ do: "button is down" });
      return;
    }
    if (
      truth.heldSeconds !== null &&
      truth.heldSeconds < 10 &&
      go("held short") === 0 &&
      h.saysHeldShort() &&
      k.offered("needle came out early")
    ) {
      await k.send({ do: "needle came out early" });
      return;
    }
    if (k.offered("wait is over")) {
      await k.send({ do: "wait is over" });
      return;
    }
    if (walk.wait) {
      await k.pass(10);
      return;
    }
    const left = h.saysLeft(truth.left);
    if (walk.draft) await k.send({ do: "agree number" });
    else if (left > 0) await k.send({ do: "give number", slot: "left in window", text: String(left), via: "touch", helper: null });
    else await k.send({ do: "window is at zero" });
  }
}
