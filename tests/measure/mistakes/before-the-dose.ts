// Mistakes made before a dose is told: numbers, readings, cards, meals, persons.

import { CARD, Kitchen } from "./kitchen.ts";
import { meal, truthful } from "./meal.ts";
import { digitsSwapped, type Seed } from "./seed.ts";
import { verdict } from "./verdict.ts";

const readings = (k: Kitchen): number[] => k.events.flatMap((e) => (e.type === "reading taken" ? [e.glucose.value] : []));

/** 1. The ear takes a like-sounding number, spoken once; given again by touch. */
export const misheard: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  const pairs = [
    [115, 150],
    [118, 180],
    [112, 212],
    [130, 113],
    [216, 260],
    [140, 114],
  ] as const;
  const [reading, heard] = pairs[Math.floor(chance() * pairs.length)] ?? pairs[0];
  const h = truthful(k, {
    reading,
    readingGiven: (go) => (go === 0 ? { text: String(heard), via: "voice" } : { text: String(reading), via: "touch" }),
  });
  const truth = await meal(k, h);
  const wrong = readings(k).some((value) => value !== reading);
  return verdict({ harm: wrong && truth.injected, own: !wrong });
};

/** 2. A slip of the finger: two digits exchanged, one doubled, or one beside it. */
export const mistyped: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  const reading = 120 + Math.floor(chance() * 110);
  const text = String(reading);
  const slips = [digitsSwapped(text), `${text}${text.at(-1)}`, `${text.slice(0, -1)}${(Number(text.at(-1)) + 1) % 10}`, text.slice(1)];
  const slip = slips[Math.floor(chance() * slips.length)] ?? text;
  if (slip === text) return mistyped(chance, who);
  const h = truthful(k, { reading, readingGiven: (go) => ({ text: go === 0 ? slip : text, via: "touch" }) });
  const truth = await meal(k, h);
  const wrong = readings(k).some((value) => value !== reading);
  return verdict({ harm: wrong && truth.injected, own: !wrong });
};

/** 3. A borrowed meter that shows mmol/L. Asked for the unit, its owner looks at it or says the usual one. */
export const wrongUnit: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  const shown = Math.round((4.5 + chance() * 25) * 10) / 10;
  const text = String(shown);
  const looks = !k.may(k.who.seesTheExpected);
  const h = truthful(k, {
    reading: shown,
    readingGiven: () => ({ text, via: "touch" }),
    unitOfMeter: looks ? "mmol/L" : "mg/dL",
    // After two refusals somebody fetches the own meter: the walk is left for it.
    before: async (step) => {
      if (step === "reading" && k.seen("near miss") >= 2) await k.send({ do: "leave" });
    },
  });
  const truth = await meal(k, h);
  return verdict({ harm: truth.injected, own: k.seen("near miss") > 0 || k.seen("low began") > 0 });
};

/** 4. Called away for 16 to 90 minutes between the reading and the needle. */
export const stale: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  const at = ["plate", "card", "pen", "dial", "place"][Math.floor(chance() * 5)] ?? "card";
  let away = false;
  let since: number | null = null;
  let oldest = 0;
  const h = truthful(k, {
    before: async (step) => {
      if (step === at && !away) {
        away = true;
        await k.pass((16 + chance() * 74) * 60);
      }
      const reading = k.walk()?.reading;
      if (reading) since = reading.at.wall;
      if (step === "inject" && since !== null && k.walk()?.pressed === false) oldest = Math.max(oldest, k.now.wall - since);
    },
  });
  const truth = await meal(k, h);
  // Half an hour at the needle itself is not part of it: the reading was 15 minutes old at most when the needle's step was opened.
  return verdict({ harm: truth.injected && oldest > 20 * 60_000, own: k.seen("reading grew old") + k.seen("pen check grew old") > 0 });
};

/** 5. The reading is low, and the meal's dose is wanted all the same. */
export const dosingLow: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  const truth = await meal(k, truthful(k, { reading: 45 + Math.floor(chance() * 26) }));
  return verdict({ harm: truth.injected, own: k.seen("low began") > 0 });
};

/** 6. A nought too many at the carbohydrate. */
export const tenTimes: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  const grams = 15 + Math.floor(chance() * 35);
  const truth = await meal(k, truthful(k, { grams, gramsGiven: (go) => (go === 0 ? `${grams}0` : String(grams)) }));
  const wrong = k.events.some((e) => e.type === "plate agreed" && e.grams !== grams);
  return verdict({ harm: wrong && truth.injected, own: !wrong });
};

/** 7. The button of another meal: heard in the sentence that tells the dose, if it is said. */
export const otherMeal: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  const truth = await meal(
    k,
    truthful(k, {
      meal: "dinner",
      before: async (step) => {
        if (step === "card" && k.said().includes("Dinner") && !k.may(k.who.seesTheExpected)) await k.send({ do: "leave" });
        if (k.step() === "card" || k.state.front === null) return;
      },
    }),
  );
  return verdict({ harm: truth.injected, own: true && !truth.injected });
};

/** 8. The card ended yesterday, or a new one was agreed by telephone and nobody typed it in. */
export const expiredCard: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who, { card: { ...CARD, reviewBy: "2026-05-01", validUntil: "2026-06-02" } });
  const truth = await meal(k, truthful(k));
  return verdict({ harm: truth.injected, own: k.seen("card silent") > 0 });
};

/** 9 and 25. A correction went in at lunch; two hours later the reading is still high and another is wanted. */
const correctedTwice =
  (minutes: number, second: "dinner" | "snack"): Seed =>
  async (chance, who) => {
    const k = await Kitchen.open(chance, who);
    await meal(k, truthful(k, { reading: 240 }));
    await k.pass(minutes * 60);
    const before = k.body.length;
    const reading = 230 + Math.floor(chance() * 60);
    await meal(
      k,
      truthful(k, {
        meal: second,
        reading,
        grams: 30,
        turned: (told) => told,
        taken: (said) =>
          k.may(k.who.insists) || !said.includes("went in")
            ? { do: "the first was not taken" }
            : { do: "answer taken", answer: "do not know" },
      }),
    );
    const food = second === "dinner" ? 2 : 0;
    const again = k.body.slice(before).some((dose) => dose.units > food);
    return verdict({ harm: again, own: !again });
  };
export const stacked = correctedTwice(190, "dinner");
export const stillHigh = correctedTwice(60, "snack");

/** 10. The same meal a second time, forgotten or in doubt. */
export const secondDose: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  await meal(k, truthful(k));
  await k.pass((20 + chance() * 140) * 60);
  await meal(
    k,
    truthful(k, {
      taken: () =>
        k.may(k.who.insists) ? { do: "the first was not taken" } : { do: "answer taken", answer: k.may(0.5) ? "do not know" : "yes" },
    }),
  );
  return verdict({ harm: k.body.length > 1, own: k.seen("near miss", "second dose") > 0 });
};

/** 21. Bram presses Odile's name: her card, his pen. */
export const otherPerson: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  const notices = !k.may(k.who.seesTheExpected);
  const truth = await meal(
    k,
    truthful(k, {
      pen: () => ({ held: "bram-meal", saidToBe: k.may(k.who.seesTheExpected) ? "odile-meal" : "bram-meal" }),
      before: async (step) => {
        if (step === "card" && k.said().includes("Odile") && notices) await k.send({ do: "leave" });
      },
    }),
  );
  return verdict({ harm: truth.injected, own: !truth.injected });
};

/** 22. The clock jumps three hours ahead after lunch, and lunch is opened again: its window seems long past. */
export const clockJump: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  await meal(k, truthful(k));
  await k.pass(20 * 60);
  k.jump(3 * 3600 + chance() * 3600);
  const h = truthful(k, { taken: () => ({ do: "answer taken", answer: "do not know" }) });
  const first = await meal(k, h);
  if (first.endedAt === "clock") {
    // "It is ten to four. Is that right?" It is not.
    await k.send({ do: k.may(k.who.seesTheExpected) ? "agree clock" : "doubt clock" });
    if (k.step() === "taken") await k.send({ do: "answer taken", answer: "do not know" });
  }
  for (let i = 0; i < 2 && k.step() !== "kitchen"; i++) await k.send({ do: "leave" });
  return verdict({ harm: k.body.length > 1, own: k.body.length === 1 });
};

/** 26. Six units in a restaurant; at home lunch is opened again an hour later. */
export const takenAway: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  k.body.push({ units: 6, pen: "odile-meal", person: "odile", at: k.now });
  await k.pass(60 * 60);
  const tells = k.may(k.who.tellsLater);
  if (tells) await k.send({ do: "tell a dose later", person: "odile", units: 6, minutesAgo: 60 });
  await meal(k, truthful(k, { taken: () => ({ do: "answer taken", answer: "yes" }) }));
  return verdict({ harm: k.body.length > 1, own: false, answer: tells });
};

/** 28. Two hours of digging: asked, and answered truly or not. */
export const exercise: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who, { card: { ...CARD, afterExercise: "ask" } });
  const says = !k.may(k.who.seesTheExpected);
  const truth = await meal(k, truthful(k, { hardExercise: says }));
  return verdict({ harm: truth.injected, own: false, answer: says });
};

/** 29. The television says a number, or yes, while the tablet listens. */
export const otherVoice: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  const reading = 130;
  const said = ["150", "180", "210"][Math.floor(chance() * 3)] ?? "150";
  const taken = k.may(k.who.earTakesOtherTalk);
  const h = truthful(k, {
    reading,
    readingGiven: (go) => (go === 0 && taken ? { text: said, via: "voice" } : { text: String(reading), via: "touch" }),
  });
  const truth = await meal(k, h);
  const wrong = readings(k).some((value) => value !== reading);
  return verdict({ harm: wrong && truth.injected, own: !wrong });
};

/** 32. Juice against a low, then the meal: the juice is put on the plate, as a food or in the grams. */
export const sugarDosed: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  await k.send({ do: "open low", person: "odile" });
  await k.send({ do: "took sugar", food: "juice-orange", grams: 15 });
  if (k.seen("sugar taken") === 0) await k.send({ do: "took sugar", food: "glucose-tablets", grams: 16 });
  await k.pass(16 * 60);
  await k.send({ do: "give number", slot: "recheck after low", text: "112", via: "touch", helper: null });
  await k.send({ do: "agree number" });
  if (k.step() !== "kitchen") await k.send({ do: "finish" });
  const asFood = k.may(0.5);
  const eaten = 40;
  const truth = await meal(
    k,
    truthful(k, {
      reading: 112,
      grams: eaten,
      gramsGiven: () => String(!asFood && !(k.said().includes("Do not count the sugar") && k.may(k.who.doesAsTold)) ? eaten + 15 : eaten),
      before: async (step) => {
        if (
          step === "plate" &&
          asFood &&
          k.offered("give number") &&
          k.seen("near miss", "sugar for a low on the plate") === 0 &&
          !k.walk()?.draft &&
          k.walk()?.exercise !== null
        )
          await k.send({ do: "add food", food: "juice-orange", portions: 1 });
      },
    }),
  );
  const dosed = truth.injected && k.events.some((e) => e.type === "plate agreed" && (e.grams ?? 0) > 40);
  return verdict({ harm: dosed, own: k.seen("near miss", "sugar for a low on the plate") > 0 });
};
