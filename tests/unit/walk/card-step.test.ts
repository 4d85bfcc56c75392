// The step at which the dose is told: what the card is asked, what is stored, and what is offered then.
import { describe, expect, it } from "vitest";
import type { DoseCard, MealRule } from "#events/card.ts";
import type { Happened, Of } from "#events/happened.ts";
import { grams, units } from "#events/quantity.ts";
import { isAfterLow } from "#walk/after-low.ts";
import { contextOf } from "#walk/context.ts";
import { fold } from "#walk/fold.ts";
import { GUARDS } from "#walk/guards.ts";
import { offers } from "#walk/offers.ts";
import { bring, led, me, odileAt, twice, walk } from "../../kit/explore/at-table.ts";
import { bandsCard } from "../../kit/people.ts";
import type { Table } from "../../kit/table.ts";

const breakfast = (rule: MealRule | null): Partial<DoseCard> => ({ meals: { breakfast: rule, lunch: null, dinner: null, snack: null } });
const bands = bandsCard.meals;
const last = <T extends Happened["type"]>(t: Table, type: T): Of<T> | undefined =>
  t.facts.flatMap((f) => (f.readable && f.event.type === type ? [f.event as Of<T>] : [])).at(-1);
const store = (t: Table, event: Happened, person: string | null = "odile") => {
  t.state = fold(t.state, { readable: true, seq: t.state.lastSeq + 1, at: t.now, person, walk: null, event });
};
const pressed = (t: Table) =>
  offers(t.state, t.now).flatMap((o) =>
    o.offer === "press" ? [`${o.role}: ${o.intent.do === "name helper" ? o.intent.name : o.intent.do}`] : [],
  );
const numbers = (t: Table) => offers(t.state, t.now).flatMap((o) => (o.offer === "number" ? [o.slot] : []));

describe("a dose that is told", () => {
  it("is stored with its card, its rows, its reasons and its cautions", () => {
    const t = odileAt("card", { meals: bands, reviewBy: "2026-06-04" });
    expect(last(t, "dose told")).toEqual({
      type: "dose told",
      told: {
        units: 4,
        food: 4,
        correction: 0,
        cardHash: "hash-of-odile",
        rows: ["breakfast band 71-140"],
        why: [{ reason: "band", from: 71, to: 140, units: 4 }],
        cautions: [{ caution: "review date has passed", reviewBy: "2026-06-04" }],
        timing: "before eating",
        by: "card",
      },
    });
  });

  it("goes by the grams of the plate", () => {
    const t = odileAt("plate", breakfast({ kind: "ratio", gramsPerUnit: 10, correction: null, roundParts: "none" }));
    t.send({ do: "exercise", hard: false }).number("grams", "40").send({ do: "meal is ready" });
    expect(walk(t).told).toMatchObject({ units: 4, why: [{ reason: "food", units: 4, grams: grams(40) }] });
  });

  it("goes by every dose that may still act, and by rows that nobody can read", () => {
    const told = (t: Table) => {
      t.number("reading", "200");
      return walk(bring(t, "card")).told?.units;
    };
    expect(told(odileAt("reading", { meals: bands, windowMinutes: 60 }))).toBe(8);
    const dosed = odileAt("wash", { meals: bands, windowMinutes: 60 });
    const odile = dosed.state.people.odile;
    if (!odile) throw new Error("no Odile");
    const at = { ...dosed.now, wall: dosed.now.wall - 100 * 60_000, mono: dosed.now.mono - 100 * 60_000 };
    const dose = { walk: null, at, agoMinutes: 0, units: units(4), certain: true, meal: null };
    dosed.state = { ...dosed.state, people: { odile: { ...odile, doses: [dose] } } };
    expect(told(bring(dosed, "reading"))).toBe(4);
    const lost = odileAt("wash", { meals: bands, windowMinutes: 60 });
    lost.state = { ...lost.state, unreadable: [lost.now.wall - 100 * 60_000] };
    expect(told(bring(lost, "reading"))).toBe(4);
  });
});

describe("a card that is silent", () => {
  it("says why, with what belongs to it or nothing", () => {
    expect(last(odileAt("card", { largestDose: units(5) }), "card silent")).toEqual({
      type: "card silent",
      why: "above the largest dose",
      detail: '{"units":6,"limit":5}',
    });
    const ask = bring(odileAt("wash", { afterExercise: "ask" }), "plate").send({ do: "exercise", hard: true }, { do: "meal is ready" });
    expect(last(ask, "card silent")).toEqual({ type: "card silent", why: "after exercise: ask", detail: null });
  });

  it("is one that is not there", () => {
    for (const gone of ["card", "hash"] as const) {
      const t = odileAt("plate");
      const odile = t.state.people.odile;
      if (!odile?.card) throw new Error("no card");
      const card = gone === "card" ? null : { ...odile.card, hash: "" };
      t.state = { ...t.state, people: { odile: { ...odile, card } } };
      t.send({ do: "exercise", hard: false }, { do: "meal is ready" });
      expect(last(t, "card silent")).toEqual({ type: "card silent", why: "no card", detail: null });
      expect(pressed(t)).toContain("stop: leave");
      if (gone === "card") expect(numbers(t)).toEqual([]);
    }
  });

  it("offers the helpers of the house only where a helper is wanted and none is there", () => {
    const silent = (telephonedDose: DoseCard["telephonedDose"]) => {
      const t = odileAt("card", { largestDose: units(5), telephonedDose });
      store(t, { type: "keeper added", keeper: { id: "k1", name: "Ines", pin: { salt: "", hash: "", rounds: 1 } } }, null);
      return t;
    };
    const helpers = ["choice: Ines", "choice: somebody else"];
    const t = silent("with a helper only");
    expect(pressed(t)).toEqual(expect.arrayContaining(helpers));
    expect(numbers(t)).toEqual([]);
    t.send({ do: "name helper", name: "Ines" });
    expect(pressed(t)).not.toContain("choice: Ines");
    expect(numbers(t)).toEqual(["telephoned number"]);
    for (const other of ["anyone", "never"] as const) expect(pressed(silent(other))).not.toContain("choice: somebody else");
    expect([numbers(silent("anyone")), numbers(silent("never"))]).toEqual([["telephoned number"], []]);
  });
});

describe("a dose of no units", () => {
  it("ends the walk without a dose, and offers no pen", () => {
    const t = odileAt("card", breakfast({ kind: "fixed units", units: units(0) }));
    expect(pressed(t)).toEqual(expect.arrayContaining(["main: finish", "stop: leave"]));
    expect(pressed(t)).not.toContain("main: heard dose");
    t.send({ do: "finish" });
    expect(last(t, "walk ended")).toEqual({ type: "walk ended", how: "no dose" });
  });

  it("is not one of some units: that is heard and never finished", () => {
    const t = odileAt("card");
    expect(pressed(t)).toEqual(expect.arrayContaining(["main: heard dose", "stop: leave"]));
    expect(pressed(t)).not.toContain("main: finish");
  });
});

describe("say first", () => {
  const first = (card: Partial<DoseCard> = {}) => odileAt("card", card, { sayFirst: true });

  it("asks for the person's own number before the tablet's", () => {
    const t = first();
    expect(numbers(t)).toEqual(["own number"]);
    expect(pressed(t)).not.toContain("main: heard dose");
    t.number("own number", "6");
    expect(last(t, "own number given")).toEqual({ type: "own number given", units: 6, matches: true });
    expect(t.types()).not.toContain("near miss");
    expect(pressed(t)).toContain("main: heard dose");
    expect(numbers(t)).toEqual([]);
  });

  it("stores nothing but the number where it is the card's, and refuses what no pen shows", () => {
    const own = (text: string) => ({ do: "give number", slot: "own number", text, via: "touch", helper: null }) as const;
    const t = first().send(own("6"));
    expect(numbers(t)).toEqual([]);
    expect(led(t, { do: "agree number" })).toEqual(["own number given"]);
    expect(first().try(own("6.3")).refusal).toMatchObject({ no: "units", text: "6.3" });
  });

  it("writes down a number that is not the card's, and goes on with the card's", () => {
    const t = first().number("own number", "60");
    expect(last(t, "near miss")).toEqual({ type: "near miss", step: "card", what: "own number is not the card's", detail: "60" });
    expect(last(t, "own number given")).toEqual({ type: "own number given", units: 60, matches: false });
    expect(walk(t).told?.units).toBe(6);
    expect(pressed(t)).toContain("main: heard dose");
  });

  it("is not asked of a number that came by telephone", () => {
    const t = twice(first({ largestDose: units(5) }), "telephoned number", "4");
    expect(numbers(t)).toEqual([]);
    expect(pressed(t)).toContain("main: heard dose");
  });
});

describe("a telephoned number", () => {
  const onThePhone = (card: Partial<DoseCard> = {}) =>
    odileAt("plate", { afterExercise: "ask", ...card }).send({ do: "exercise", hard: true }, { do: "meal is ready" });
  const give = (text: string) => ({ do: "give number", slot: "telephoned number", text, via: "touch", helper: "Nurse Adeyemi" }) as const;

  it("is stored as the caller's, with no reason of the card's", () => {
    expect(last(twice(onThePhone(), "telephoned number", "4"), "dose told")?.told).toEqual({
      units: 4,
      food: 0,
      correction: 0,
      cardHash: "hash-of-odile",
      rows: [],
      why: [{ reason: "telephoned", by: "Nurse Adeyemi" }],
      cautions: [],
      timing: "before eating",
      by: "Nurse Adeyemi",
    });
  });

  it("is written down as a near miss above the largest dose, and is turned down", () => {
    const t = onThePhone().send(give("21"), { do: "agree number" });
    const { facts } = t.try(give("21"));
    expect(facts.map((f) => f.event)).toEqual(
      expect.arrayContaining([
        { type: "near miss", step: "card", what: "telephoned number above the largest dose", detail: "21" },
        { type: "number turned down", slot: "telephoned number" },
      ]),
    );
  });

  it("is refused where the card names no largest dose: nothing would limit it", () => {
    const t = onThePhone({ largestDose: null }).send(give("4"), { do: "agree number" });
    expect(t.try(give("4")).refusal).toEqual({ no: "telephoned number", why: "blank field", units: 4 });
    expect(walk(t)).toMatchObject({ told: null, draft: null });
  });

  it("is refused where the card went out of force while it was given", () => {
    const t = onThePhone({ validUntil: "2026-06-05" }).send(give("4"));
    t.pass(5 * 60);
    const odile = t.state.people.odile;
    if (!odile?.card) throw new Error("no card");
    t.state = {
      ...t.state,
      people: { odile: { ...odile, card: { ...odile.card, card: { ...odile.card.card, validUntil: "2026-06-04" } } } },
    };
    t.send({ do: "agree number" });
    expect(t.try(give("4")).refusal).toEqual({ no: "telephoned number", why: "not allowed", units: 4 });
  });

  it("offers its pad and nothing else while it is given", () => {
    const t = onThePhone().send(give("4"));
    expect(pressed(t)).not.toContain("stop: heard dose");
    expect(led(t, { do: "change number" })).toEqual(["number turned down"]);
    expect(numbers(t)).toEqual(["telephoned number"]);
  });
});

describe("a meal after a low", () => {
  const context = (lowMinutesAgo: number | null, afterLow: boolean) => {
    const t = odileAt("card");
    const ago = (lowMinutesAgo ?? 0) * 60_000;
    const lastLow = lowMinutesAgo === null ? null : { ...t.now, wall: t.now.wall - ago, mono: t.now.mono - ago };
    return contextOf(t.state, { ...me(t), lastLow }, { ...walk(t), afterLow }, t.now, GUARDS);
  };

  it("is one within two hours, not at two hours, and whatever the time where the low was in this walk", () => {
    expect([null, 119, 120].map((minutes) => isAfterLow(context(minutes, false)))).toEqual([false, true, false]);
    expect([null, 500].map((minutes) => isAfterLow(context(minutes, true)))).toEqual([true, true]);
  });
});
