import { describe, expect, it } from "vitest";
import { type Happened, happened } from "#events/happened.ts";
import { DAY } from "#events/quantity.ts";
import type { NoGo, Spot } from "#events/spot.ts";
import { distanceMm } from "#rules/body/area.ts";
import { siteCode } from "#rules/body/site-code.ts";
import { contextOf } from "#walk/context.ts";
import { type Fact, fold } from "#walk/fold.ts";
import { GUARDS } from "#walk/guards.ts";
import { FOLD_VERSION } from "#walk/state.ts";
import { spotQuestion } from "#walk/steps/place.ts";
import { fixedCard, odile, odilePen } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const table = () =>
  new Table([
    {
      person: odile,
      card: { ...fixedCard, validUntil: null, reviewBy: null },
      pens: [{ ...odilePen, openedOn: null, expiresOn: "2030-01-01" }],
    },
  ]);

function toThePlace(t: Table): Spot {
  t.send({ do: "open meal", person: "odile", meal: "breakfast" });
  if (t.step() === "taken") t.send({ do: "answer taken", answer: "no" });
  t.send({ do: "already washed" })
    .number("reading", "120")
    .send({ do: "exercise", hard: false }, { do: "meal is ready" }, { do: "heard dose" })
    .send({ do: "pick pen", pen: "odile-meal", how: "mark" }, { do: "insulin looks", look: "as it should be" })
    .send({ do: "needle fitted" }, { do: "primed", stream: true })
    .number("dial", "6");
  return offered(t);
}
const me = (t: Table) => {
  const person = t.state.people.odile;
  if (!person) throw new Error("nobody is there");
  return person;
};
const offered = (t: Table): Spot => {
  const spot = me(t).walk?.offered?.spot;
  if (!spot) throw new Error("no spot is offered");
  return spot;
};
/** Marks that the place step would keep off at this moment. */
const keptOff = (t: Table) => {
  const { walk } = me(t);
  if (!walk) throw new Error("no walk");
  return spotQuestion(contextOf(t.state, me(t), walk, t.now, GUARDS)).noGo.map(({ kind }) => kind);
};
const store = (t: Table, event: Happened) => {
  const fact: Fact = { readable: true, seq: t.state.lastSeq + 1, at: t.now, person: "odile", walk: null, event };
  t.facts.push(fact);
  t.state = fold(t.state, fact);
};

describe("a place said no to at the needle", () => {
  it.each([
    ["sore", "sore"],
    ["lump", "lump"],
    ["scar or mole", "scar"],
  ] as const)("for a reason of the skin (%s) is marked with its day, and the next one is offered at once, away from it", (reason, kind) => {
    const t = table();
    const first = toThePlace(t);
    t.send({ do: "not this spot", reason });
    expect(me(t).noGo).toEqual([expect.objectContaining({ spot: first, kind, radiusMm: 15, markedAt: t.now.wall })]);
    expect(t.step()).toBe("place");
    expect(distanceMm(first, offered(t))).toBeGreaterThanOrEqual(15);
  });

  it.each(["cannot reach", "other"] as const)("for another reason (%s) is not marked", (reason) => {
    const t = table();
    toThePlace(t);
    t.send({ do: "not this spot", reason });
    expect(me(t).noGo).toEqual([]);
    expect(t.step()).toBe("place");
  });
});

describe("a spot that was used", () => {
  it("stands in the log with side, region, millimeters and its HL7 v2-0163 code: as chosen, and as injected", () => {
    const t = table();
    const spot = toThePlace(t);
    t.send({ do: "take spot" }, { do: "skin cleaned", how: "clean without a wipe" }, { do: "button is down" });
    t.pass(12);
    t.send({ do: "wait is over" }, { do: "window is at zero" });
    const stored = t.facts.flatMap((f) => (f.readable && (f.event.type === "spot chosen" || f.event.type === "injected") ? [f.event] : []));
    expect(stored).toEqual([
      { type: "spot chosen", spot, code: siteCode(spot) },
      expect.objectContaining({ type: "injected", spot, code: siteCode(spot), certain: true }),
    ]);
    expect(Object.keys(spot).sort()).toEqual(["downMm", "outMm", "region", "side"]);
    expect(siteCode(spot)).toMatch(/^[LR](LAQ|UAQ|T|UA|G)$/);
  });

  it("reads well where an older row has no code", () => {
    const older = { type: "injected", units: 4, left: 0, insulinId: "i", pen: null, spot: null, certain: true };
    expect(happened.safeParse(older).success).toBe(true);
  });
});

describe("a mark", () => {
  const at = { region: "belly", side: "left", outMm: 85, downMm: 34 } as const;
  const marks: NoGo[] = (["sore", "lump", "scar", "mole", "other"] as const).map((kind) => ({ id: kind, spot: at, radiusMm: 5, kind }));

  function marked(daysAgo: number) {
    const t = table();
    for (const noGo of marks) store(t, { type: "no-go place marked", noGo });
    t.pass((daysAgo * DAY) / 1000);
    toThePlace(t);
    return t;
  }

  it("of a sore holds until the sore has healed, 14 days; no other mark goes by itself", () => {
    // The walk to the place takes no time at this table.
    expect(keptOff(marked(13.99))).toEqual(["sore", "lump", "scar", "mole", "other"]);
    expect(keptOff(marked(14))).toEqual(["lump", "scar", "mole", "other"]);
    expect(keptOff(marked(250))).toEqual(["lump", "scar", "mole", "other"]);
  });

  it("of a sore is never healed by a clock in doubt", () => {
    const t = marked(20);
    const { walk } = me(t);
    if (!walk) throw new Error("no walk");
    const doubtful = { ...t.state, doubt: "forward jump" as const };
    expect(spotQuestion(contextOf(doubtful, me(t), walk, t.now, GUARDS)).noGo.map(({ kind }) => kind)).toContain("sore");
  });

  it("that is told gone is kept with both its days, and keeps no needle off any more", () => {
    const t = table();
    store(t, { type: "no-go place marked", noGo: { id: "l", spot: at, radiusMm: 15, kind: "lump" } });
    const made = t.now.wall;
    t.pass((30 * DAY) / 1000);
    store(t, { type: "no-go place cleared", id: "l" });
    expect(me(t).noGo).toEqual([]);
    expect(me(t).marksGone).toEqual([{ id: "l", spot: at, radiusMm: 15, kind: "lump", markedAt: made, goneAt: t.now.wall }]);
  });

  it("is dated from rows that were stored before marks had dates: their shape is the same, and checkpoints are rebuilt", () => {
    const t = table();
    const old: Happened = { type: "no-go place marked", noGo: { id: "old", spot: at, radiusMm: 10, kind: "scar" } };
    store(t, old);
    expect(me(t).noGo[0]?.markedAt).toBe(t.now.wall);
    expect(FOLD_VERSION).toBeGreaterThan(6);
  });
});
