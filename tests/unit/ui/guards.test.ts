import { describe, expect, it } from "vitest";
import { makeGuard } from "#ui/guards.ts";

function guardAt(start: number) {
  let ms = start;
  return { guard: makeGuard(() => ms), wait: (more: number) => (ms += more) };
}

describe("the guard against taps that were not meant", () => {
  it("takes the second tap of a control after 701 ms and not after 699 ms", () => {
    const early = guardAt(0);
    expect(early.guard.allow("next")).toBe(true);
    early.wait(699);
    expect(early.guard.allow("next")).toBe(false);
    const late = guardAt(0);
    expect(late.guard.allow("next")).toBe(true);
    late.wait(701);
    expect(late.guard.allow("next")).toBe(true);
  });

  it("lets an ignored tap not lengthen the wait", () => {
    const { guard, wait } = guardAt(0);
    guard.allow("next");
    wait(400);
    expect(guard.allow("next")).toBe(false);
    wait(301);
    expect(guard.allow("next")).toBe(true);
  });

  it("lets another control act at once", () => {
    const { guard } = guardAt(0);
    guard.allow("1");
    expect(guard.allow("2")).toBe(true);
  });

  it("takes no tap at all in the first 600 ms of a screen", () => {
    const { guard, wait } = guardAt(0);
    guard.screenChanged();
    wait(599);
    expect(guard.allow("yes")).toBe(false);
    wait(1);
    expect(guard.allow("yes")).toBe(true);
  });

  it("remembers a control over a change of screen", () => {
    const { guard, wait } = guardAt(0);
    guard.allow("next");
    wait(50);
    guard.screenChanged();
    wait(600);
    expect(guard.allow("next")).toBe(false);
    wait(51);
    expect(guard.allow("next")).toBe(true);
  });

  it("takes the times it is given", () => {
    let ms = 0;
    const guard = makeGuard(() => ms, { sameMs: 2000 });
    guard.allow("next");
    ms = 1999;
    expect(guard.allow("next")).toBe(false);
    ms = 2000;
    expect(guard.allow("next")).toBe(true);
  });

  it("lets only the first finger lead, also when the first one lifts", () => {
    const { guard } = guardAt(0);
    guard.fingerDown(1);
    guard.fingerDown(2);
    expect(guard.leads(1)).toBe(true);
    expect(guard.leads(2)).toBe(false);
    guard.fingerUp(1);
    guard.fingerDown(3);
    expect(guard.leads(3)).toBe(false);
    guard.fingersGone();
    guard.fingerDown(3);
    expect(guard.leads(3)).toBe(true);
  });
});
