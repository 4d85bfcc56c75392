import { describe, expect, it } from "vitest";
import { withQuiet } from "#speech/ear/quiet.ts";

const WIDTH = 2;
/** Twenty loud rows, thirteen quiet ones that count up, twenty loud rows. */
const utterance = Float32Array.from([
  ...new Array<number>(20 * WIDTH).fill(5),
  ...Array.from({ length: 13 * WIDTH }, (_, i) => -10 + Math.floor(i / WIDTH) / 100),
  ...new Array<number>(20 * WIDTH).fill(5),
]);

describe("the room around an utterance", () => {
  const all = withQuiet(utterance, WIDTH, 30);

  it("leaves what was said as it was", () => {
    expect(all.length).toBe(utterance.length + 60 * WIDTH);
    expect(all.slice(30 * WIDTH, -30 * WIDTH)).toEqual(utterance);
  });

  it("is made of its quietest stretch alone, before it and after it", () => {
    const around = [...all.slice(0, 30 * WIDTH), ...all.slice(-30 * WIDTH)];
    expect(around.every((v) => v >= -10 && v < -9.88)).toBe(true);
  });

  it("is nothing where nothing was said", () => {
    expect(withQuiet(new Float32Array(), WIDTH, 30).length).toBe(0);
  });

  it("takes a sound shorter than the stretch whole", () => {
    expect([...withQuiet(Float32Array.of(1, 1, 2, 2), WIDTH, 3)]).toEqual([2, 2, 2, 2, 1, 1, 1, 1, 2, 2, 1, 1, 2, 2, 2, 2]);
  });
});
