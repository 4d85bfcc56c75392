import { describe, expect, it } from "vitest";
import { HOUR, MINUTE } from "#events/quantity.ts";
import { rowsOn, spanOf } from "#reports/day-rows.ts";
import { rowOf, unreadable } from "./rows.ts";

const at = (wall: number, offset = -300) => ({ wall, mono: 1, boot: "b", zone: "America/Chicago", offset });
const row = (seq: number, wall: number, offset?: number) => rowOf(seq, at(wall, offset), null, null, { type: "clock agreed" });
/** 3 June 2026, midnight in Chicago. */
const MIDNIGHT = Date.UTC(2026, 5, 3, 5, 0, 0);
const seqs = (rows: readonly { seq: number }[]) => rows.map((one) => one.seq);

describe("the rows of a day", () => {
  it("begin and end at midnight of the place", () => {
    const rows = [row(1, MIDNIGHT - 1), row(2, MIDNIGHT), row(3, MIDNIGHT + 24 * HOUR - 1), row(4, MIDNIGHT + 24 * HOUR)];
    expect(seqs(rowsOn(rows, "2026-06-03", -300))).toEqual([2, 3]);
  });

  it("go by the clock that hung on the wall then, whatever the offset is today", () => {
    // 1 March 2026, 23:30 in winter time (six hours behind), looked at in summer time.
    const winter = row(1, Date.UTC(2026, 2, 2, 5, 30, 0), -360);
    expect(seqs(rowsOn([winter], "2026-03-01", -300))).toEqual([1]);
    expect(seqs(rowsOn([winter], "2026-03-02", -300))).toEqual([]);
  });

  it("are all inside what the log is asked for, from any offset of the world", () => {
    for (const then of [-720, -300, 0, 330, 840])
      for (const now of [-720, 0, 840]) {
        const { from, to } = spanOf("2026-06-03", now);
        const first = Date.UTC(2026, 5, 3) - then * MINUTE;
        const last = Date.UTC(2026, 5, 4) - then * MINUTE - 1;
        expect(first).toBeGreaterThanOrEqual(from);
        expect(last).toBeLessThan(to);
      }
  });

  it("keep an unreadable row beside its neighbours, and on both days where they differ", () => {
    const rows = [row(1, MIDNIGHT - HOUR), unreadable(2, null), row(3, MIDNIGHT + HOUR), unreadable(4, MIDNIGHT + 2 * HOUR)];
    expect(seqs(rowsOn(rows, "2026-06-02", -300))).toEqual([1, 2]);
    expect(seqs(rowsOn(rows, "2026-06-03", -300))).toEqual([2, 3, 4]);
    expect(seqs(rowsOn([unreadable(9, null)], "2026-06-03", -300))).toEqual([9]);
  });
});
