import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cardMm, nextFit, startFit } from "#ui/calibrate.ts";

/** A person who sees only "too narrow" or "too wide", and stops within half a millimetre of the card. */
function pressesToFit(from: number, truth: number): { presses: number; mmPx: number } {
  let fit = startFit(from);
  for (let presses = 0; presses < 100; presses++) {
    const off = (fit.mmPx / truth - 1) * cardMm.width;
    if (Math.abs(off) <= 0.5) return { presses, mmPx: fit.mmPx };
    fit = nextFit(fit, off < 0 ? "wider" : "narrower");
  }
  throw new Error(`no fit from ${from} to ${truth}`);
}

describe("finding the length of a millimetre", () => {
  it("makes the outline wider and narrower", () => {
    const fit = startFit(5.9);
    expect(nextFit(fit, "wider").mmPx).toBeGreaterThan(5.9);
    expect(nextFit(fit, "narrower").mmPx).toBeLessThan(5.9);
  });

  it("takes smaller steps after each change of direction", () => {
    const wider = nextFit(startFit(5.9), "wider");
    const back = nextFit(wider, "narrower");
    expect(back.step).toBe(wider.step / 2);
    expect(nextFit(back, "narrower").step).toBe(back.step);
  });

  it("fits the four kinds of tablet that were measured in a few presses", () => {
    for (const truth of [5.884, 5.943, 5.565, 4.174]) expect(pressesToFit(5.9, truth).presses).toBeLessThanOrEqual(20);
  });

  it("comes within half a millimetre over the card from any start, in at most 60 presses", () => {
    const glass = fc.double({ min: 3, max: 14, noNaN: true });
    fc.assert(
      fc.property(glass, glass, (from, truth) => {
        expect(pressesToFit(from, truth).presses).toBeLessThanOrEqual(60);
      }),
    );
  });

  it("never leaves the sizes that keep the buttons on the glass", () => {
    let fit = startFit(100);
    expect(fit.mmPx).toBe(16);
    for (let press = 0; press < 80; press++) fit = nextFit(fit, "narrower");
    expect(fit.mmPx).toBe(2.5);
  });
});
