// Faults planted for background insulin: each must be met by the promise that it breaks.
import { units } from "#events/quantity.ts";
import { GUARDS } from "#walk/guards.ts";
import { eachPerson, forgetting, guards, instead, losing, type Planted } from "./planted.ts";

export const PLANTED_BACKGROUND: readonly Planted[] = [
  {
    promise: 1,
    fault: "a reading walk tells a dose",
    exploration: "reading walk",
    engine: instead("walk ended", () => ({ type: "dose heard" })),
  },
  {
    promise: 1,
    fault: "background insulin is told in a low",
    exploration: "background readings",
    engine: guards({
      isLow: () => false,
      lookUpBackground: (card, dose, s) => GUARDS.lookUpBackground(card, dose, { ...s, reading: null, readingWord: null }),
    }),
  },
  {
    promise: 1,
    fault: "background insulin is blocked by a missing reading",
    exploration: "background readings",
    engine: guards({
      lookUpBackground: (card, dose, s) =>
        s.reading === null ? { told: false, why: "reading is LO" } : GUARDS.lookUpBackground(card, dose, s),
    }),
  },
  {
    promise: 1,
    fault: "that there was no reading is not recorded",
    exploration: "background readings",
    engine: forgetting(eachPerson((p) => ({ ...p, walk: p.walk?.background ? { ...p.walk, readingLeftOut: p.walk.openedAt } : p.walk }))),
  },
  {
    promise: 2,
    fault: "a card that has ended tells a background dose",
    exploration: "background card: ended",
    engine: guards({ lookUpBackground: (card, dose, s) => GUARDS.lookUpBackground({ ...card, validUntil: null }, dose, s) }),
  },
  {
    promise: 3,
    fault: "a background dose is not the printed one",
    exploration: "background",
    engine: guards({
      lookUpBackground: (card, dose, s) => GUARDS.lookUpBackground(card, { ...dose, units: units(dose.units + 1) }, s),
    }),
  },
  {
    promise: 3,
    fault: "a blank window tells a dose",
    exploration: "background card: blank",
    engine: guards({ lookUpBackground: (card, dose, s) => GUARDS.lookUpBackground(card, { ...dose, windowMinutes: 60 }, s) }),
  },
  {
    promise: 6,
    fault: "the mealtime pen will do for background insulin",
    exploration: "background pens",
    engine: guards({ whyNotPen: () => null }),
  },
  {
    promise: 6,
    fault: "the long-acting pen will do for a meal",
    exploration: "background and a meal",
    engine: guards({ whyNotPen: (q) => (q.background ? GUARDS.whyNotPen(q) : null) }),
  },
  {
    promise: 6,
    fault: "the name on the pen is not asked for",
    exploration: "background pens",
    engine: forgetting(eachPerson((p) => ({ ...p, walk: p.walk && { ...p.walk, penCheck: { ...p.walk.penCheck, named: true } } }))),
  },
  {
    promise: 10,
    fault: "the background window is always clear",
    exploration: "background",
    engine: guards({ backgroundWindowOf: () => ({ is: "clear" }) }),
  },
  { promise: 10, fault: '"I do not know" goes on to a background dose', exploration: "background", engine: guards({ unknownEnds: false }) },
  {
    promise: 10,
    fault: "a background dose counts as a mealtime one",
    exploration: "background and a meal",
    engine: guards({
      windowOf: (house, me, now) =>
        GUARDS.windowOf(house, { ...me, doses: [...me.backgroundDoses.map((d) => ({ ...d, meal: null })), ...me.doses] }, now),
    }),
  },
  {
    promise: 10,
    fault: "a mealtime dose counts as a background one",
    exploration: "background and a meal",
    engine: guards({
      backgroundWindowOf: (house, me, dose, now) => {
        const { id: insulinId, name: insulinName } = dose.insulin;
        const as = me.doses.map((d) => ({ ...d, insulinId, insulinName, dose: dose.at }));
        return GUARDS.backgroundWindowOf(house, { ...me, backgroundDoses: [...as, ...me.backgroundDoses] }, dose, now);
      },
    }),
  },
  {
    promise: 10,
    fault: "a lost row is no possible background dose",
    exploration: "background lost rows",
    engine: forgetting((house) => ({ ...house, unreadable: [] })),
  },
  {
    promise: 10,
    fault: "a background dose told later is lost",
    exploration: "background told later",
    engine: guards({
      backgroundWindowOf: (house, me, dose, now) =>
        GUARDS.backgroundWindowOf(house, { ...me, backgroundDoses: me.backgroundDoses.filter((d) => d.walk !== null) }, dose, now),
    }),
  },
  {
    promise: 7,
    fault: "a bell rings after background insulin",
    exploration: "background",
    engine: forgetting(
      eachPerson((p) => ({
        ...p,
        bell:
          p.walk?.background && p.walk.injectOpened
            ? { walk: p.walk.id, from: p.walk.injectOpened, earliestMs: 0, latestMs: 60_000, unansweredMinutes: 0 }
            : p.bell,
      })),
    ),
  },
  {
    promise: 11,
    fault: "a background walk ends with the needle on the pen",
    exploration: "background",
    engine: forgetting(eachPerson((p) => ({ ...p, walk: p.walk?.injected ? { ...p.walk, putAway: true } : p.walk }))),
  },
  {
    promise: 9,
    fault: "an opened background needle step is not stored",
    exploration: "background",
    engine: losing((type) => type === "inject opened"),
  },
  {
    promise: 13,
    fault: "a low of a reading walk begins no low",
    exploration: "reading walk",
    engine: losing((type) => type === "low began"),
  },
  {
    promise: 13,
    fault: "a low before background insulin ends without a new reading",
    exploration: "background readings",
    engine: instead("cannot measure", () => ({ type: "low ended", rounds: 1 })),
  },
  {
    promise: 14,
    fault: "background doses are forgotten",
    exploration: "background",
    engine: forgetting(eachPerson((p) => ({ ...p, backgroundDoses: [] }))),
  },
];
