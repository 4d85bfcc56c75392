import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { products } from "#speech/ear/products.ts";

const size = fc.integer({ min: 1, max: 11 });
const wavy = (count: number, pace: number): Float32Array => Float32Array.from({ length: count }, (_, i) => Math.sin(pace * (i + 1)));

describe("many sums of products at once", () => {
  it("are the sums taken one by one, whatever is left over at the edges", () => {
    fc.assert(
      fc.property(size, size, size, (rows, ins, outs) => {
        const [x, weight, bias] = [wavy(rows * ins, 1.3), wavy(outs * ins, 0.7), wavy(outs, 2.9)];
        const got = products(x, rows, ins, weight, bias, outs);
        const wanted = Array.from({ length: rows * outs }, (_, at) => {
          const [row, out] = [Math.floor(at / outs), at % outs];
          let sum = bias[out] ?? 0;
          for (let i = 0; i < ins; i++) sum += (weight[out * ins + i] ?? 0) * (x[row * ins + i] ?? 0);
          return sum;
        });
        expect(got).toHaveLength(wanted.length);
        wanted.forEach((value, at) => {
          expect(got[at]).toBeCloseTo(value, 5);
        });
      }),
    );
  });
});
