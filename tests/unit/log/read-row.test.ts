import { describe, expect, it } from "vitest";
import { canonical } from "#events/canonical.ts";
import { type RawRow, sealRow, sha256Hex } from "#log/chain.ts";
import { readRow } from "#log/read-row.ts";
import { START, unsealed } from "./sample-rows.ts";

const seal = (raw: RawRow): RawRow => ({ ...raw, hash: sha256Hex(canonical(raw)) });

describe("reading a stored row", () => {
  it("gives back every field of a sound row", () => {
    const row = sealRow(unsealed(1, ""));
    expect(readRow(1, row)).toEqual({ ...row, readable: true });
  });

  it("keeps an altered row as it is, with its time and a reason", () => {
    const raw = { ...sealRow(unsealed(1, "")), person: "bea" };
    const read = readRow(1, raw);
    expect(read).toMatchObject({ readable: false, seq: 1, wall: START + 60_000, why: expect.stringContaining("hash") });
    expect(!read.readable && read.raw).toBe(raw);
  });

  it("does not guess at a row that a newer version wrote", () => {
    const read = readRow(1, seal({ ...unsealed(1, ""), v: 2 }));
    expect(read).toMatchObject({ readable: false, why: "written by a newer version, shape 2" });
  });

  it("does not guess at an event it does not know", () => {
    const read = readRow(1, seal({ ...unsealed(1, ""), event: { type: "dose given by pump" } }));
    expect(read).toMatchObject({ readable: false, why: expect.stringContaining("not a known shape: event") });
  });

  it("does not pass over a field it does not know", () => {
    const read = readRow(1, seal({ ...unsealed(1, ""), event: { type: "tablet started", unitsAlreadyGiven: 6 } }));
    expect(read).toMatchObject({ readable: false, why: "holds a field that this version does not know" });
  });

  it("does not take a row for another row's", () => {
    expect(readRow(2, sealRow(unsealed(1, "")))).toMatchObject({ readable: false, seq: 2, why: expect.stringContaining("place") });
  });

  it.each([null, undefined, 7, "text", [], {}, { hash: "x" }, new Date(0), { at: { wall: Number.NaN } }])(
    "never fails on scraps: %s",
    (raw) => {
      expect(readRow(3, raw)).toMatchObject({ readable: false, seq: 3, raw, wall: null });
    },
  );

  it("lifts an older shape without touching what is stored, and keeps its hash", () => {
    // Shape 0, invented for this test: a start was called "begun".
    const old = Object.freeze(seal({ ...unsealed(1, ""), v: 0, event: { type: "begun" } }));
    const lifts = { 0: (raw: RawRow) => ({ ...raw, v: 1, event: { type: "tablet started" } }) };
    expect(readRow(1, old, lifts)).toMatchObject({ readable: true, v: 0, event: { type: "tablet started" }, hash: old.hash });
    expect(readRow(1, old)).toMatchObject({ readable: false, why: "no way to lift shape 0" });
  });

  it("keeps a row unreadable when lifting it fails", () => {
    const lifts = {
      0: (): RawRow => {
        throw new Error("no");
      },
    };
    expect(readRow(1, seal({ ...unsealed(1, ""), v: 0 }), lifts).readable).toBe(false);
  });
});
