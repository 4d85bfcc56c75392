import { describe, expect, it } from "vitest";
import type { Intent } from "#events/intent.ts";
import { DAY } from "#events/quantity.ts";
import { offers } from "#walk/offers.ts";
import { bandsCard, bram, bramPen, fixedCard, odile, odilePen, ratioCard } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const spot = { region: "belly", side: "left", outMm: 68, downMm: 34 } as const;
const QUESTION: Intent["do"][] = ["feel for lumps", "mark lump", "lump is gone"];
const asked = (t: Table, person = "odile"): boolean =>
  offers(t.state, t.now).some(
    (o) => o.offer === "press" && QUESTION.includes(o.intent.do) && "person" in o.intent && o.intent.person === person,
  );
const days = (n: number): number => (n * DAY) / 1000;

/** The table itself has let two days pass since the person was added. */
const table = () =>
  new Table([
    {
      person: odile,
      card: { ...fixedCard, validUntil: null, reviewBy: null },
      pens: [{ ...odilePen, openedOn: null, expiresOn: "2030-01-01" }],
    },
  ]);
const due = (): Table => {
  const t = table();
  t.pass(days(26));
  return t;
};

describe("the question about lumps", () => {
  it("comes four weeks after somebody was added, and four weeks after each answer", () => {
    const t = table();
    t.pass(days(26) - 1);
    expect(asked(t)).toBe(false);
    t.pass(1);
    expect(asked(t)).toBe(true);
    t.send({ do: "feel for lumps", person: "odile", found: "none" });
    expect(t.types().at(-1)).toBe("felt for lumps");
    expect(asked(t)).toBe(false);
    t.pass(days(28) - 1);
    expect(asked(t)).toBe(false);
    t.pass(1);
    expect(asked(t)).toBe(true);
  });

  it("is put off by a week, and written down as put off", () => {
    const t = due().send({ do: "feel for lumps", person: "odile", found: "not now" });
    t.pass(days(7) - 1);
    expect(asked(t)).toBe(false);
    t.pass(1);
    expect(asked(t)).toBe(true);
    expect(t.state.people.odile?.lumpsAsked.found).toBe("not now");
  });

  it("marks a found lump where it was told, and no needle goes there", () => {
    const t = due().send({ do: "mark lump", person: "odile", spot });
    expect(t.types().slice(-2)).toEqual(["no-go place marked", "felt for lumps"]);
    expect(t.state.people.odile?.noGo).toEqual([expect.objectContaining({ spot, kind: "lump", markedAt: t.now.wall })]);
    expect(asked(t)).toBe(false);
  });

  it("takes a lump that nobody can place as found, without a mark", () => {
    const t = due().send({ do: "mark lump", person: "odile", spot: null });
    expect(t.state.people.odile?.noGo).toEqual([]);
    expect(t.state.people.odile?.lumpsAsked).toEqual({ at: t.now.wall, found: "found" });
  });

  it("asks about each old lump, which stays marked until it is told gone", () => {
    const t = due().send({ do: "mark lump", person: "odile", spot });
    const id = t.state.people.odile?.noGo[0]?.id ?? "none";
    expect(t.try({ do: "lump is gone", person: "odile", id }).refusal).toEqual({ no: "not offered here" });
    t.pass(days(28));
    t.send({ do: "lump is gone", person: "odile", id });
    expect(t.state.people.odile?.noGo).toEqual([]);
    expect(t.state.people.odile?.marksGone[0]?.goneAt).toBe(t.now.wall);
    // The question itself still stands: is there a new one?
    expect(asked(t)).toBe(true);
  });

  it("never stands between a dose told and the answer about the meal, for nobody in the house", () => {
    const t = new Table([
      {
        person: odile,
        card: { ...bandsCard, validUntil: null, reviewBy: null },
        pens: [{ ...odilePen, openedOn: null, expiresOn: "2030-01-01" }],
      },
      {
        person: bram,
        card: { ...ratioCard, validUntil: null, reviewBy: null },
        pens: [{ ...bramPen, openedOn: null, expiresOn: "2030-01-01" }],
      },
    ]);
    t.pass(days(26));
    expect([asked(t), asked(t, "bram")]).toEqual([true, true]);
    t.send({ do: "open meal", person: "odile", meal: "breakfast" });
    const never = () => expect([asked(t), asked(t, "bram")]).toEqual([false, false]);
    never();
    if (t.step() === "taken") t.send({ do: "answer taken", answer: "no" });
    t.send({ do: "already washed" }).number("reading", "132");
    t.send({ do: "exercise", hard: false }, { do: "meal is ready" }, { do: "heard dose" });
    never();
    t.send({ do: "leave" });
    never();
    t.send({ do: "turn to", person: "odile" });
    if (t.step() === "taken") t.send({ do: "answer taken", answer: "no" });
    if (t.step() === "plate") t.send({ do: "meal is ready" });
    t.send({ do: "pick pen", pen: "odile-meal", how: "mark" }, { do: "insulin looks", look: "as it should be" });
    t.send({ do: "needle fitted" }, { do: "primed", stream: true }).number("dial", "4");
    t.send({ do: "take spot" }, { do: "skin cleaned", how: "clean without a wipe" }, { do: "button is down" });
    t.pass(12);
    t.send({ do: "wait is over" }, { do: "window is at zero" }, { do: "put away" });
    t.send({ do: "leave" });
    never();
    t.send({ do: "turn to", person: "odile" }, { do: "eating" }, { do: "finish" });
    never();
    t.pass(20 * 60);
    t.send({ do: "answer meal", person: "odile", ate: "all" });
    expect([asked(t), asked(t, "bram")]).toEqual([true, true]);
  });

  it("comes all the same when nobody tells how much was eaten", () => {
    const t = table();
    t.pass(days(25));
    t.send({ do: "open meal", person: "odile", meal: "breakfast" });
    if (t.step() === "taken") t.send({ do: "answer taken", answer: "no" });
    t.send({ do: "already washed" }).number("reading", "120");
    t.send({ do: "exercise", hard: false }, { do: "meal is ready" }, { do: "heard dose" });
    t.send({ do: "pick pen", pen: "odile-meal", how: "mark" }, { do: "insulin looks", look: "as it should be" });
    t.send({ do: "needle fitted" }, { do: "primed", stream: true }).number("dial", "6");
    t.send({ do: "take spot" }, { do: "skin cleaned", how: "clean without a wipe" }, { do: "button is down" });
    t.pass(12);
    t.send({ do: "wait is over" }, { do: "window is at zero" }, { do: "put away" }, { do: "eating" }, { do: "finish" });
    t.pass(days(1));
    expect(t.state.people.odile?.mealQuestion).not.toBeNull();
    expect(asked(t)).toBe(true);
  });

  it("is not asked while the clock is in doubt", () => {
    const t = due();
    t.restart();
    expect(t.state.doubt).not.toBeNull();
    expect(asked(t)).toBe(false);
  });

  it("is refused where it is not due: an answer changes nothing", () => {
    const t = table();
    expect(t.try({ do: "feel for lumps", person: "odile", found: "none" }).refusal).toEqual({ no: "not offered here" });
    expect(t.try({ do: "mark lump", person: "odile", spot }).facts).toEqual([]);
  });
});
