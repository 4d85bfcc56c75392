import { describe, expect, it } from "vitest";
import { litOf, type ScanInput, type ScanState, safeFirst, startScan, turnScan, usualScan } from "#ui/switch-scan.ts";

function run(state: ScanState, inputs: readonly ScanInput[]) {
  const taken: number[] = [];
  for (const input of inputs) {
    const turn = turnScan(state, input, usualScan);
    state = turn.state;
    if (turn.taken !== null) taken.push(turn.taken);
  }
  return { state, taken };
}
const time = (ms: number): ScanInput => ({ kind: "time", ms });
const down = (ms: number): ScanInput => ({ kind: "down", ms });
const up = (ms: number): ScanInput => ({ kind: "up", ms });

describe("scanning with one switch", () => {
  it("lights each button for 2 s, the first one first", () => {
    const start = startScan(3, 0);
    expect(litOf(start)).toBe(0);
    expect(litOf(run(start, [time(1999)]).state)).toBe(0);
    expect(litOf(run(start, [time(2000)]).state)).toBe(1);
    expect(litOf(run(start, [time(2000), time(3999)]).state)).toBe(1);
    expect(litOf(run(start, [time(2000), time(4000), time(6000)]).state)).toBe(0);
  });

  it("takes the lit button once the switch is held for half a second", () => {
    const { taken, state } = run(startScan(3, 0), [time(2000), down(2500), time(2999), time(3000), time(3050)]);
    expect(taken).toEqual([1]);
    expect(litOf(state)).toBeNull();
  });

  it("takes it on lifting too, if no tick came between", () => {
    expect(run(startScan(3, 0), [time(2000), down(2500), up(3000)]).taken).toEqual([1]);
  });

  it("takes nothing for a tremor shorter than half a second, and gives the button its whole time again", () => {
    const { taken, state } = run(startScan(3, 0), [down(1900), up(2399), time(2400), time(4398)]);
    expect(taken).toEqual([]);
    expect(litOf(state)).toBe(0);
    expect(litOf(run(state, [time(4399)]).state)).toBe(1);
  });

  it("stands still while the switch is down and never takes twice for one press", () => {
    const { taken, state } = run(startScan(3, 0), [down(1999), time(2300), time(2600), time(9000), down(9001), time(9900)]);
    expect(taken).toEqual([0]);
    expect(litOf(run(state, [up(10_000)]).state)).toBe(0);
  });

  it("rests after three rounds, without limit, until the switch is pressed and lifted", () => {
    const ticks = Array.from({ length: 6 }, (_, n) => time((n + 1) * 2000));
    const early = run(startScan(2, 0), ticks.slice(0, 5));
    expect(early.state.at).toBe("moving");
    const rested = run(startScan(2, 0), [...ticks, time(3_600_000)]);
    expect(rested.state.at).toBe("resting");
    const woken = run(rested.state, [down(3_600_001), time(3_601_000), up(3_601_500)]);
    expect(woken.taken).toEqual([]);
    expect(litOf(woken.state)).toBe(0);
  });

  it("starts again at the first button on a new screen", () => {
    const { state } = run(startScan(3, 0), [time(2000), { kind: "buttons", count: 5, ms: 2100 }]);
    expect(state).toMatchObject({ at: "moving", count: 5, lit: 0, round: 0 });
    expect(run(state, [{ kind: "buttons", count: 0, ms: 2200 }]).state.at).toBe("resting");
  });

  it("puts the safe button first and keeps the order of the others", () => {
    expect(safeFirst(["help", "again", "next"], (name) => name === "again")).toEqual(["again", "help", "next"]);
    expect(safeFirst(["help", "next"], () => false)).toEqual(["help", "next"]);
  });
});
