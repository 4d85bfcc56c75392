import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { LogRow } from "#events/log-port.ts";
import { hashRow, sealRow, sha256Hex, verifyChain } from "#log/chain.ts";
import { LIFTS, readRow } from "#log/read-row.ts";
import { chain, endOfRows, unsealed } from "./sample-rows.ts";

const asRead = (rows: readonly unknown[], seqs?: readonly number[]): LogRow[] => rows.map((row, i) => readRow(seqs?.[i] ?? i + 1, row));

describe("the hash of a row", () => {
  it("is SHA-256: the 'abc' example of FIPS 180-4 comes out", () => {
    expect(sha256Hex("abc")).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  });

  it("is the same however the members are ordered", () => {
    const row = unsealed(1, "");
    const turned = Object.fromEntries(Object.entries(row).reverse()) as typeof row;
    expect(Object.keys(turned)[0]).not.toBe(Object.keys(row)[0]);
    expect(hashRow(turned)).toBe(hashRow(row));
  });

  it("does not cover itself: sealing a sealed row changes nothing", () => {
    const sealed = sealRow(unsealed(1, ""));
    expect(sealRow(sealed)).toEqual(sealed);
  });

  it("changes with every field, the hash before included", () => {
    const row = unsealed(1, "");
    const hashes = [
      row,
      { ...row, person: "bea" },
      { ...row, prev: "f" },
      { ...row, at: { ...row.at, wall: row.at.wall + 1 } },
      { ...row, at: { ...row.at, offset: 120 } },
      { ...row, card: "c" },
      { ...row, walk: "w" },
      { ...row, event: { type: "clock agreed" } as const },
    ].map(hashRow);
    expect(new Set(hashes).size).toBe(hashes.length);
  });
});

describe("the chain", () => {
  it("holds for rows that follow on, from the start and after a known row", () => {
    const rows = chain(5);
    expect(verifyChain(asRead(rows))).toEqual({ ok: true, count: 5 });
    const later = rows.slice(2).map((row) => readRow(row.seq, row));
    expect(verifyChain(later, endOfRows(rows.slice(0, 2)))).toEqual({ ok: true, count: 3 });
    expect(verifyChain([])).toEqual({ ok: true, count: 0 });
  });

  it("sees an altered row, told as such and not merely as unreadable", () => {
    const rows: unknown[] = chain(5);
    rows[2] = { ...chain(3)[2], person: "bea" };
    expect(verifyChain(asRead(rows))).toEqual({ ok: false, seq: 3, why: "altered" });
  });

  it("sees a row altered after it was read", () => {
    const read = asRead(chain(3)).map((row) => (row.readable && row.seq === 2 ? { ...row, person: "bea" } : row));
    expect(verifyChain(read)).toEqual({ ok: false, seq: 2, why: "altered" });
  });

  it("sees a row that was replaced and sealed again", () => {
    const rows = chain(5);
    const second = rows[1];
    if (second === undefined) throw new Error("no second row");
    rows[1] = sealRow({ ...second, person: "bea" });
    expect(verifyChain(asRead(rows))).toEqual({ ok: false, seq: 3, why: "altered" });
  });

  it("sees a lost row, also the first", () => {
    const rows = chain(5);
    expect(verifyChain(asRead([...rows.slice(0, 2), ...rows.slice(3)], [1, 2, 4, 5]))).toEqual({ ok: false, seq: 4, why: "gap" });
    expect(verifyChain(asRead(rows.slice(1), [2, 3, 4, 5]))).toEqual({ ok: false, seq: 2, why: "gap" });
  });

  it("sees rows in the wrong order and a row that comes twice", () => {
    const [one, two, three] = chain(3);
    expect(verifyChain(asRead([one, two, two], [1, 2, 2]))).toEqual({ ok: false, seq: 2, why: "order" });
    expect(verifyChain(asRead([one, three, two], [1, 3, 2]))).toEqual({ ok: false, seq: 3, why: "gap" });
    expect(verifyChain(asRead([one, two, three, one], [1, 2, 3, 1]))).toEqual({ ok: false, seq: 1, why: "order" });
  });

  it("sees a row put in the place of another", () => {
    const [one, two, three] = chain(3);
    expect(verifyChain(asRead([one, three, two], [1, 2, 3]))).toEqual({ ok: false, seq: 2, why: "altered" });
  });

  it("names a row of a newer version unreadable, and can go on behind it", () => {
    const [one] = chain(1);
    if (one === undefined) throw new Error("no row");
    const newer = sealRow(unsealed(2, one.hash, { v: 99 }));
    const third = sealRow(unsealed(3, newer.hash));
    expect(verifyChain(asRead([one, newer, third]))).toEqual({ ok: false, seq: 2, why: "unreadable" });
    expect(verifyChain([readRow(3, third)], newer)).toEqual({ ok: true, count: 1 });
  });

  it("names remains without a hash unreadable", () => {
    expect(verifyChain(asRead([...chain(1), "scrap"]))).toEqual({ ok: false, seq: 2, why: "unreadable" });
  });

  it("checks the place of a row lifted from an older shape", () => {
    const old = sealRow(unsealed(1, "", { v: 0 }));
    const lifts = { ...LIFTS, 0: (raw: Readonly<Record<string, unknown>>) => raw };
    const read = [readRow(1, old, lifts), readRow(2, sealRow(unsealed(2, old.hash)))];
    expect(read.every((row) => row.readable)).toBe(true);
    expect(verifyChain(read)).toEqual({ ok: true, count: 2 });
    expect(verifyChain(read, { seq: 0, hash: "elsewhere" })).toEqual({ ok: false, seq: 1, why: "altered" });
  });

  it("sees any one changed character anywhere in any row", () => {
    const rows = chain(4);
    fc.assert(
      fc.property(fc.nat({ max: 3 }), fc.nat(), fc.constantFrom("0", "7", "x", "Z"), (which, where, letter) => {
        const text = JSON.stringify(rows[which]);
        const spot = where % text.length;
        if (text[spot] === letter) return;
        let altered: unknown;
        try {
          altered = JSON.parse(text.slice(0, spot) + letter + text.slice(spot + 1));
        } catch {
          return;
        }
        const damaged = rows.map((row, i) => (i === which ? altered : row));
        expect(verifyChain(asRead(damaged)).ok).toBe(false);
      }),
      { numRuns: 500 },
    );
  });
});
