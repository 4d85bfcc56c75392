import { describe, expect, it } from "vitest";
import { fold } from "#walk/fold.ts";
import { frontPerson, offers } from "#walk/offers.ts";
import { stepOf } from "#walk/state.ts";
import { dose, nightCard, open, toDose, toEnd, toNeedle, twiceCard, whole, withNight } from "../../kit/background-walk.ts";
import { bring, me, walk } from "../../kit/explore/at-table.ts";
import { fixedCard, odile, odilePen } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const offered = (t: Table) => offers(t.state, t.now).flatMap((o) => (o.offer === "press" ? [o.intent] : []));

describe("the background walk", () => {
  it("goes from the wash to the needle without plate, bell or question about a meal", () => {
    const t = open(withNight());
    expect(t.step()).toBe("wash");
    toDose(t);
    expect(walk(t).told).toMatchObject({ units: 14, timing: "by the clock", by: "card" });
    toNeedle(t);
    expect(t.step()).toBe("inject");
    expect(me(t).bell).toBeNull();
    toEnd(t);
    expect(t.step()).toBe("kitchen");
    expect(me(t)).toMatchObject({ bell: null, mealQuestion: null, walk: null });
  });

  it("is kept apart from mealtime insulin, and mealtime insulin from it", () => {
    const t = whole(withNight());
    expect(me(t).doses).toEqual([]);
    expect(me(t).backgroundDoses).toMatchObject([
      { units: 14, insulinId: "glargine-100", insulinName: "insulin glargine", dose: "21:30", certain: true },
    ]);
    expect(t.facts.some((f) => f.readable && f.event.type === "injected" && f.event.insulinId === "glargine-100")).toBe(true);
    bring(t, "card");
    // No spacing and no window from the background dose: the whole of the card's breakfast.
    expect(walk(t).told).toMatchObject({ units: 6 });
    bring(t, "done");
    expect(me(t).doses).toHaveLength(1);
    expect(me(t).backgroundDoses).toHaveLength(1);
  });

  it("asks before a second dose inside its own window, and does not know leads to none", () => {
    const t = whole(withNight());
    t.pass(3600);
    open(t);
    expect(t.step()).toBe("taken");
    expect(offered(t).map((i) => i.do)).toContain("the first was not taken");
    t.send({ do: "answer taken", answer: "do not know" });
    expect(t.step()).toBe("kitchen");
    open(t).send({ do: "the first was not taken" });
    expect(t.step()).toBe("wash");
    t.send({ do: "leave" });
    t.pass(18 * 3600);
    open(t);
    expect(t.step()).toBe("wash");
  });

  it("tells a second dose a day by its own window and hour", () => {
    const t = whole(withNight(twiceCard), "08:00", "10");
    open(t, "20:00");
    expect(t.step()).toBe("taken");
    t.send({ do: "leave" });
    t.pass(8 * 3600);
    open(t, "20:00");
    expect(t.step()).toBe("wash");
    toDose(t);
    expect(walk(t).told?.units).toBe(12);
  });

  it("asks after a doubtful time, an unreadable row and a dose told later", () => {
    const doubt = withNight();
    open(doubt);
    doubt.now = { ...doubt.now, wall: doubt.now.wall - 3600_000 };
    doubt.send({ do: "pass time" }, { do: "agree clock" });
    expect(doubt.step()).toBe("taken");
    const unreadable = withNight();
    unreadable.state = fold(unreadable.state, {
      readable: false,
      seq: unreadable.state.lastSeq + 1,
      wall: unreadable.now.wall - 3600_000,
    });
    expect(open(unreadable).step()).toBe("taken");
    const told = withNight();
    told.send({ do: "tell a dose later", person: "odile", units: 14, minutesAgo: 120, insulin: "glargine-100" });
    expect(me(told).doses).toEqual([]);
    open(told);
    expect(told.step()).toBe("taken");
    const meal = withNight();
    meal.send({ do: "tell a dose later", person: "odile", units: 6, minutesAgo: 120 });
    open(meal);
    expect(meal.step()).toBe("wash");
    meal.send({ do: "leave" }, { do: "set aside", person: "odile" }, { do: "open meal", person: "odile", meal: "breakfast" });
    expect(meal.step()).toBe("taken");
  });

  it("treats a low first, and comes back", () => {
    const t = open(withNight()).send({ do: "already washed" });
    t.number("reading", "70");
    t.send({ do: "give number", slot: "reading", text: "70", via: "touch", helper: null });
    expect(t.step()).toBe("low");
    expect(walk(t).told).toBeNull();
    t.send({ do: "took sugar", food: "glucose-tablets", grams: 16 });
    t.pass(15 * 60);
    t.number("recheck after low", "110");
    expect(t.step()).toBe("card");
    expect(walk(t).told).toMatchObject({ units: 14 });
  });

  it("goes on without a reading, and says so", () => {
    const t = toDose(open(withNight()));
    expect(t.types()).toContain("reading left out");
    expect(walk(t).told?.why).toContainEqual({ reason: "no reading" });
    const hi = open(withNight()).send({ do: "already washed" }, { do: "read word", word: "HI", via: "touch" }, { do: "leave out reading" });
    expect(hi.step()).toBe("card");
    expect(walk(hi).told).toMatchObject({ units: 14 });
  });

  it("stops the mealtime pen, and a meal stops the long-acting pen", () => {
    const t = toDose(open(withNight())).send({ do: "heard dose" });
    const wrong = t.try({ do: "pick pen", pen: "odile-meal", how: "mark" });
    expect(wrong.refusal).toMatchObject({ no: "pen", reason: { why: "not background insulin" } });
    expect(wrong.facts.map((f) => f.event.type)).toContain("near miss");
    expect(walk(t).penCheck.pen).toBeNull();
    t.send({ do: "pick pen", pen: "odile-night", how: "mark" });
    expect(t.try({ do: "pen says", name: "another" }).refusal).toMatchObject({ no: "pen name" });
    expect(walk(t).penCheck.pen).toBeNull();
    const meal = bring(withNight(), "pen");
    expect(meal.try({ do: "pick pen", pen: "odile-night", how: "mark" }).refusal).toMatchObject({
      no: "pen",
      reason: { why: "not mealtime insulin" },
    });
  });

  it("stops a pen of a meal whose kind was typed wrong: the card names its insulin by the clock", () => {
    const odd = { ...odilePen, id: "odd", insulinId: "glargine-100", mark: "a bead" };
    const t = bring(new Table([{ person: odile, card: nightCard, pens: [odilePen, odd] }]), "pen");
    expect(t.try({ do: "pick pen", pen: "odd", how: "mark" }).refusal).toMatchObject({ reason: { why: "not mealtime insulin" } });
  });

  it("tells nothing where the card leaves the window blank, or has the dose no more", () => {
    const blank = open(withNight({ ...fixedCard, background: [dose("21:30", 14, { windowMinutes: null })] }));
    expect(blank.step()).toBe("taken");
    blank.send({ do: "answer taken", answer: "no" });
    toDose(blank);
    expect(walk(blank)).toMatchObject({ told: null, silent: { why: "blank field" } });
    const t = open(withNight());
    const signature = { keeper: "k1", keeperName: "Ines", signedOn: "2026-06-03", typedTwice: true, readBack: true } as const;
    t.state = { ...t.state, people: { ...t.state.people, odile: { ...me(t), card: { card: fixedCard, hash: "new", signature } } } };
    toDose(t);
    expect(walk(t)).toMatchObject({ told: null, silent: { why: "no dose at this hour" } });
    t.send({ do: "leave" });
    expect(t.step()).toBe("kitchen");
  });

  it("is offered for each dose of the card, and for none where the card has none or the insulin needs a meal", () => {
    const of = (t: Table) => offered(t).flatMap((i) => (i.do === "open background" ? [i.at] : []));
    expect(of(withNight(twiceCard))).toEqual(["08:00", "20:00"]);
    expect(of(withNight(fixedCard))).toEqual([]);
    const mixed = dose("08:00", 10, { insulin: { id: "mix", name: "mixed insulin", unitsPerMl: 100, kind: "premixed" } });
    expect(of(withNight({ ...fixedCard, background: [mixed] }))).toEqual([]);
  });

  it("asks about the needle after a restart, and counts it as taken until the answer is no", () => {
    const t = toNeedle(toDose(open(withNight())));
    expect(me(t).backgroundDoses).toMatchObject([{ certain: false }]);
    t.restart();
    expect(t.step()).toBe("needle question");
    t.send({ do: "needle went in", answer: "no" });
    expect(me(t)).toMatchObject({ backgroundDoses: [], doses: [], uses: [] });
    expect(frontPerson(t.state)?.walk && stepOf(walk(t))).toBe("taken");
  });

  it("counts both insulins where the wrong one went in", () => {
    const t = toNeedle(toDose(open(withNight())));
    t.send({ do: "report", mishap: "wrong insulin" });
    expect(me(t).backgroundDoses).toHaveLength(1);
    expect(me(t).doses).toMatchObject([{ units: null }]);
    const meal = bring(withNight(), "inject");
    meal.send({ do: "report", mishap: "wrong insulin" });
    expect(me(meal).doses).toMatchObject([{ units: null }]);
    expect(me(meal).backgroundDoses).toMatchObject([{ units: null, insulinId: "glargine-100" }]);
  });
});
