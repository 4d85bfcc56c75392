import { describe, expect, it } from "vitest";
import type { Happened } from "#events/happened.ts";
import { DAY } from "#events/quantity.ts";
import type { Spot } from "#events/spot.ts";
import { bodySheet } from "#reports/body-sheet.ts";
import { fold } from "#walk/fold.ts";
import type { PersonState } from "#walk/state.ts";
import { sayLump, sayOverused } from "#words/en/body-sheet.ts";
import { fixedCard, odile, odilePen } from "../../kit/people.ts";
import { NOON, Table } from "../../kit/table.ts";

const at = (region: Spot["region"], side: Spot["side"], outMm: number, downMm: number): Spot => ({ region, side, outMm, downMm });
const spot = at("belly", "left", 72, -36);

/** Odile's state with these uses, days before the table's moment. */
function withUses(t: Table, uses: readonly [Spot, number][]): PersonState {
  const me = t.state.people.odile;
  if (!me) throw new Error("nobody is there");
  return { ...me, uses: uses.map(([where, daysAgo]) => ({ spot: where, at: t.now.wall - daysAgo * DAY })) };
}
const table = () => new Table([{ person: odile, card: fixedCard, pens: [odilePen] }]);
const store = (t: Table, event: Happened) => {
  t.state = fold(t.state, { readable: true, seq: t.state.lastSeq + 1, at: t.now, person: "odile", walk: null, event });
};

describe("the body sheet", () => {
  it("carries side, region, millimeters, date and the HL7 v2-0163 code of each use", () => {
    const t = table();
    const { uses } = bodySheet(withUses(t, [[spot, 0]]), t.now, 4);
    expect(uses).toEqual([{ spot, daysAgo: 0, on: "2026-06-05", code: "LUAQ" }]);
  });

  it("looks back 4 weeks or 12, to the day", () => {
    const t = table();
    const me = withUses(t, [
      [spot, 28],
      [spot, 29],
      [spot, 84],
      [spot, 85],
    ]);
    expect([bodySheet(me, t.now, 4).uses.length, bodySheet(me, t.now, 12).uses.length]).toEqual([1, 3]);
    expect(bodySheet(me, t.now, 4)).toMatchObject({ from: "2026-05-08", to: "2026-06-05" });
  });

  it("names what was used sooner than this card asks, within the weeks that are shown", () => {
    const t = table();
    const me = withUses(t, [
      [spot, 1],
      [spot, 6],
      [spot, 40],
    ]);
    const { overused, weeks } = bodySheet(me, t.now, 4);
    expect(overused.map((skin) => sayOverused(skin, weeks))).toEqual(["Used 2 times in 4 weeks. The shortest rest was 5 days."]);
    const rested = { ...fixedCard, care: { ...fixedCard.care, restDays: 5 } };
    expect(bodySheet({ ...me, card: me.card && { ...me.card, card: rested } }, t.now, 4).overused).toEqual([]);
  });

  it("tells lumps over time with their days: those that rest, and those told gone", () => {
    const t = table();
    store(t, { type: "no-go place marked", noGo: { id: "one", spot, radiusMm: 15, kind: "lump" } });
    t.pass((10 * DAY) / 1000);
    store(t, { type: "no-go place marked", noGo: { id: "two", spot: at("thigh", "left", 36, 120), radiusMm: 15, kind: "lump" } });
    store(t, { type: "no-go place marked", noGo: { id: "three", spot, radiusMm: 15, kind: "mole" } });
    t.pass((20 * DAY) / 1000);
    store(t, { type: "no-go place cleared", id: "one" });
    const sheet = (weeks: 4 | 12) => {
      const me = t.state.people.odile;
      if (!me) throw new Error("nobody is there");
      return bodySheet(me, t.now, weeks).lumps.map(sayLump);
    };
    const resting = "Noted on 15 June 2026. It is still marked.";
    expect(sheet(4)).toEqual([resting, "Noted on 5 June 2026. Told gone on 5 July 2026."]);
    t.pass((60 * DAY) / 1000);
    expect(sheet(4)).toEqual([resting]);
    expect(sheet(12)).toHaveLength(2);
  });

  it("leaves out a sore that has healed from the places that are never used", () => {
    const t = table();
    store(t, { type: "no-go place marked", noGo: { id: "s", spot, radiusMm: 15, kind: "sore" } });
    const marks = () => {
      const me = t.state.people.odile;
      return me ? bodySheet(me, t.now, 4).marks.map(({ kind }) => kind) : [];
    };
    expect(marks()).toEqual(["sore"]);
    t.pass((14 * DAY) / 1000);
    expect(marks()).toEqual([]);
    expect(t.now.wall).toBeGreaterThan(NOON);
  });
});
