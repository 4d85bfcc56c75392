import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Matrix } from "#speech/ear/mel.ts";
import { fitsOf, freeFit } from "#speech/ear/score.ts";
import { Trie } from "#speech/ear/trie.ts";

const WIDTH = 4;

/** Every way of laying phones over frames, tried one by one: the definition of CTC's best alignment. */
function bruteForce(scores: Matrix, phones: readonly number[]): number {
  let best = Number.NEGATIVE_INFINITY;
  const collapse = (path: number[]): string =>
    path
      .filter((p, i) => p !== path[i - 1])
      .filter((p) => p !== 0)
      .join();
  const walk = (path: number[], sum: number): void => {
    if (path.length === scores.rows) {
      if (collapse(path) === phones.join()) best = Math.max(best, sum);
      return;
    }
    for (let p = 0; p < WIDTH; p++) walk([...path, p], sum + (scores.values[path.length * WIDTH + p] ?? 0));
  };
  walk([], 0);
  return best;
}

const frames = fc
  .array(fc.array(fc.double({ min: -8, max: 0, noNaN: true }), { minLength: WIDTH, maxLength: WIDTH }), { minLength: 1, maxLength: 6 })
  .map((rows): Matrix => ({ rows: rows.length, width: WIDTH, values: Float32Array.from(rows.flat()) }));
const utterance = fc.array(fc.integer({ min: 1, max: WIDTH - 1 }), { minLength: 1, maxLength: 3 });

describe("how well a sound fits an utterance", () => {
  it("is the best of all alignments, for every utterance at once", () => {
    fc.assert(
      fc.property(frames, fc.uniqueArray(utterance, { selector: String, minLength: 1, maxLength: 5 }), (scores, all) => {
        const trie = new Trie();
        for (const phones of all) trie.add(phones, { key: phones.join(), text: phones.join() });
        const fits = fitsOf(scores, trie);
        const wanted = all.map((phones) => ({ key: phones.join(), score: bruteForce(scores, phones) })).filter((w) => w.score > -1e9);
        const best = Math.max(...wanted.map((w) => w.score));
        // What fell behind the beam may be missing; the best never is, while it is near the best row of any phones.
        for (const fit of fits) expect(fit.score).toBeCloseTo(wanted.find((w) => w.key === fit.key)?.score ?? Number.NaN, 3);
        if (wanted.length > 0 && best > freeFit(scores).score - 20) expect(fits[0]?.score).toBeCloseTo(best, 3);
      }),
    );
  });

  it("never fits an utterance into fewer frames than it has phones", () => {
    const trie = new Trie();
    trie.add([1, 1], { key: "twice", text: "twice" });
    expect(fitsOf({ rows: 2, width: WIDTH, values: new Float32Array(2 * WIDTH) }, trie)).toEqual([]);
    expect(fitsOf({ rows: 3, width: WIDTH, values: new Float32Array(3 * WIDTH) }, trie)).toHaveLength(1);
  });

  it("counts the phones of free speech, none in silence", () => {
    const row = (top: number): number[] => [0, 1, 2, 3].map((p) => (p === top ? -0.1 : -3));
    const matrix = (tops: number[]): Matrix => ({ rows: tops.length, width: WIDTH, values: Float32Array.from(tops.flatMap(row)) });
    expect(freeFit(matrix([0, 0, 0])).phones).toBe(0);
    expect(freeFit(matrix([1, 1, 0, 1, 2])).phones).toBe(3);
  });
});
