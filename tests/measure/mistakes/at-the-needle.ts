// Mistakes with the pen, the skin and the needle, and after it.
import { makeGuard } from "#ui/guards.ts";
import { odileNight, odilePen } from "../../kit/people.ts";
import { CARD, Kitchen } from "./kitchen.ts";
import { meal, truthful } from "./meal.ts";
import type { Seed } from "./seed.ts";
import { verdict } from "./verdict.ts";

/** 11. Clicks miscounted, or 16 turned for 6. */
export const dialled: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  const off = [1, -1, 10, 2][Math.floor(chance() * 4)] ?? 1;
  const truth = await meal(k, truthful(k, { turned: (told, go) => (go === 0 ? Math.max(0, told + off) : told) }));
  const harm = k.body.some((dose) => dose.units !== truth.told);
  return verdict({ harm, own: false, answer: k.seen("near miss") > 0 });
};

/** 12. The long-acting pen, or Bram's, is picked up; its mark is felt, or taken for the right one. */
export const wrongPen: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  const other = k.may(0.5) ? "odile-night" : "bram-meal";
  const feels = !k.may(k.who.seesTheExpected);
  const h = truthful(k, {
    pen: (go) => (go === 0 ? { held: other, saidToBe: feels ? other : "odile-meal" } : { held: "odile-meal", saidToBe: "odile-meal" }),
  });
  await meal(k, h);
  return verdict({ harm: k.body.some((dose) => dose.pen !== "odile-meal"), own: k.seen("near miss") > 0 });
};

/** 13. Past its date, open too long, or spoilt to look at. */
export const spoiltPen: Seed = async (chance, who) => {
  const how = Math.floor(chance() * 3);
  const pen = how === 0 ? { ...odilePen, expiresOn: "2026-05-31" } : how === 1 ? { ...odilePen, openedOn: "2026-05-01" } : odilePen;
  const k = await Kitchen.open(chance, who, { pens: [pen, odileNight] });
  const sees = !k.may(k.who.seesTheExpected);
  const truth = await meal(k, truthful(k, { look: () => (how === 2 && sees ? "clumped" : "as it should be") }));
  return verdict({ harm: truth.injected, own: how < 2 && k.seen("near miss") > 0, answer: how === 2 && sees });
};

/** 14. The test of the pen would be left out. Told to do it, most do; asked for the stream, some say yes without one. */
export const notPrimed: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  const truth = await meal(k, truthful(k, { primes: () => k.may(k.who.doesAsTold) }));
  return verdict({
    harm: truth.injected && !truth.primed,
    own: truth.primed && k.events.every((e) => e.type !== "pen primed" || e.stream),
    answer: truth.primed,
  });
};

/** 15. Cloudy insulin, not rolled. */
export const notMixed: Seed = async (chance, who) => {
  const insulin = { id: "human-mix-30-70-100", name: "human mix 30/70", unitsPerMl: 100, kind: "premixed" } as const;
  const cloudy = { ...odilePen, insulinId: insulin.id, insulinName: insulin.name, kind: "premixed" as const, cloudy: true };
  const lunch = { kind: "fixed units", units: CARD.meals.breakfast?.kind === "bands" ? (CARD.meals.breakfast.foodOnly ?? null) : null };
  if (lunch.units === null) throw new Error("no food-only units");
  const card = { ...CARD, insulin, meals: { ...CARD.meals, lunch: { kind: "fixed units" as const, units: lunch.units } } };
  const k = await Kitchen.open(chance, who, { card, pens: [cloudy] });
  const truth = await meal(k, truthful(k));
  return verdict({ harm: truth.injected && !truth.mixed, own: truth.mixed });
};

/** 16. The usual place, where the lump is; the tablet offers another. */
export const sameSpot: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  const truth = await meal(k, truthful(k, { takesTheSpot: () => k.may(k.who.doesAsTold) }));
  return verdict({ harm: truth.injected && !truth.onItsSpot, own: truth.onItsSpot });
};

/** 17. In a hurry while the skin dries. */
export const wetSkin: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  const waits = !k.may(k.who.impatient);
  const truth = await meal(k, truthful(k, { waitsForSkin: () => waits }));
  return verdict({ harm: truth.injected && !truth.skinDry, own: truth.skinDry, answer: k.seen("near miss", "drying cut short") > 0 });
};

/** 18. The needle comes out after four seconds, unless the count aloud keeps it in. */
export const outEarly: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  const staysIn = k.may(k.who.doesAsTold);
  const says = !k.may(k.who.echoes);
  const truth = await meal(k, truthful(k, { holds: () => (staysIn ? 10 : 4), saysHeldShort: () => says }));
  return verdict({ harm: (truth.heldSeconds ?? 10) < 10, own: staysIn, answer: k.seen("needle out early") > 0 });
};

/** 19. The meal is forgotten after the needle, or half of it is left. */
export const lateMeal: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  const forgets = k.may(0.5);
  await meal(k, truthful(k, { stopsAt: forgets ? "eat" : null }));
  if (forgets) {
    // Past half an hour without food nothing is mended any more. Being called is being reminded: the insulin is in, so it is found after.
    const called = await k.hearsCall("odile", 30);
    if (called) await k.send({ do: "eating" });
    return verdict({ harm: true, own: called || k.seen("call raised") > 0 });
  }
  await k.pass(25 * 60);
  await k.send({ do: "answer meal", person: "odile", ate: k.may(k.who.seesTheExpected) ? "all" : "half" });
  return verdict({ harm: true, own: false, answer: k.events.some((e) => e.type === "meal answered" && e.ate === "half") });
};

/** 20. Sugar for a low, then the telephone rings. */
export const notRechecked: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  await k.send({ do: "open low", person: "odile" });
  await k.send({ do: "took sugar", food: "glucose-tablets", grams: 16 });
  if (k.seen("sugar taken") === 0) throw new Error("no sugar was taken");
  const called = await k.hearsCall("odile", 30);
  return verdict({ harm: true, own: called || k.seen("call raised") > 0 });
};

/** 23. The power goes after the needle, before the answer; then lunch is opened again. */
export const powerLost: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  let lost = false;
  const h = truthful(k, {
    before: async (step) => {
      if (step === "inject" && !lost && k.walk()?.pressed === false) {
        lost = true;
        k.body.push({ units: 4, pen: "odile-meal", person: "odile", at: k.now });
        await k.restart(60 + chance() * 3600);
        await k.send({ do: "pass time" });
      }
    },
  });
  const truth = await meal(k, h);
  if (truth.endedAt === "clock") await k.send({ do: "agree clock" });
  if (k.step() === "needle question") await k.send({ do: "needle went in", answer: k.may(0.5) ? "not sure" : "yes" });
  return verdict({ harm: k.body.length > 1, own: k.seen("needle question answered") > 0 });
};

/** 27. Two or more units stay in the window when the pen is empty. */
export const penEmpty: Seed = async (chance, who) => {
  const bookKnows = chance() < 0.5;
  const k = await Kitchen.open(chance, who, { pens: [{ ...odilePen, unitsWhenOpened: bookKnows ? 4 : 300 }, odileNight] });
  const truth = await meal(k, truthful(k, { leftInWindow: (turned) => Math.min(2, turned) }));
  const told = k.events.some((e) => e.type === "injected" && e.left !== 0);
  return verdict({ harm: truth.injected, own: !truth.injected, answer: told });
};

/** 30. A second tap within a tenth of a second, on the same button or on what has come in its place. */
export const doubleTap: Seed = async (chance) => {
  let ms = 10_000;
  const guard = makeGuard(() => ms);
  const first = guard.allow("take the spot");
  const changed = chance() < 0.5;
  if (changed) guard.screenChanged();
  ms += 60 + chance() * 190;
  const second = guard.allow(changed ? "skin cleaned" : "take the spot");
  return verdict({ harm: !first || second, own: !second });
};

/** 31. Turned back to nought in place of pressed, or pressed with the inner cap on. */
export const nothingIn: Seed = async (chance, who) => {
  const k = await Kitchen.open(chance, who);
  const asTold = k.may(k.who.doesAsTold);
  const truth = await meal(k, truthful(k, { turnsBack: !asTold }));
  return verdict({ harm: truth.injected && k.body.every((dose) => dose.units === 0), own: asTold });
};
