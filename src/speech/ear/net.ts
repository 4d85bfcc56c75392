// The net's forward pass in plain arrays: convolutions over time, two-way gated recurrent units (Cho et al. 2014), one score a phone.
// Nothing of a training library is needed; a golden vector of that library is the test.
import type { Layer, MemberFile, Weights } from "./manifest.ts";
import type { Matrix } from "./mel.ts";
import { oneRow, products } from "./products.ts";

export type Net = (features: Matrix) => Matrix;

/** Builds one member; throws when its file lacks a tensor. Its result is the logarithm of each phone's probability, a row for each frame. */
export function netOf(file: MemberFile, weights: Weights): Net {
  const take = (name: string): Float32Array => {
    const found = weights.get(name);
    if (found === undefined) throw new Error(`${file.file} has no ${name}`);
    return found;
  };
  const steps = file.layers.map((layer) => stepOf(layer, take));
  return (features) => logSoftmax(steps.reduce((x, step) => step(x), features));
}

function stepOf(layer: Layer, take: (name: string) => Float32Array): Net {
  const { name } = layer;
  switch (layer.kind) {
    case "conv": {
      const conv = convolution(take(`${name}.weight`), take(`${name}.bias`), layer.in, layer.out, layer.width, layer.stride, 1);
      return (x) => conv(x, false);
    }
    case "residual": {
      const conv = convolution(
        take(`${name}.weight`),
        take(`${name}.bias`),
        layer.channels,
        layer.channels,
        layer.width,
        1,
        layer.dilation,
      );
      return (x) => conv(x, true);
    }
    case "bigru": {
      const way = (back: string) =>
        recurrent(
          ...([
            take(`${name}.w_ih${back}`),
            take(`${name}.w_hh${back}`),
            take(`${name}.b_ih${back}`),
            take(`${name}.b_hh${back}`),
          ] as const),
          layer.in,
          layer.hidden,
          back !== "",
        );
      const [there, back] = [way(""), way("_reverse")];
      return (x) => {
        const y = { rows: x.rows, width: 2 * layer.hidden, values: new Float32Array(x.rows * 2 * layer.hidden) };
        there(x, y, 0);
        back(x, y, layer.hidden);
        return y;
      };
    }
    case "linear":
      return (x) => affine(x, take(`${name}.weight`), take(`${name}.bias`), layer.out);
  }
}

/** Weights [out][in][width], turned to [out][width][in], so that one stretch of sound meets one row of weights. With `add` the input is added to the result. */
function convolution(weight: Float32Array, bias: Float32Array, ins: number, outs: number, width: number, stride: number, dilation: number) {
  const turned = new Float32Array(weight.length);
  for (let o = 0; o < outs; o++)
    for (let i = 0; i < ins; i++)
      for (let k = 0; k < width; k++) turned[(o * width + k) * ins + i] = weight[(o * ins + i) * width + k] ?? 0;
  const before = dilation * Math.floor(width / 2);
  return (x: Matrix, add: boolean): Matrix => {
    const rows = Math.max(0, Math.floor((x.rows + 2 * before - dilation * (width - 1) - 1) / stride) + 1);
    const stretches = new Float32Array(rows * width * ins);
    for (let row = 0; row < rows; row++) {
      for (let k = 0; k < width; k++) {
        const from = row * stride + k * dilation - before;
        if (from >= 0 && from < x.rows) stretches.set(x.values.subarray(from * ins, (from + 1) * ins), (row * width + k) * ins);
      }
    }
    const values = products(stretches, rows, width * ins, turned, bias, outs);
    for (let i = 0; i < values.length; i++) values[i] = Math.max(0, values[i] as number) + (add ? (x.values[i] as number) : 0);
    return { rows, width: outs, values };
  };
}

function affine(x: Matrix, weight: Float32Array, bias: Float32Array, outs: number): Matrix {
  return { rows: x.rows, width: outs, values: products(x.values, x.rows, x.width, weight, bias, outs) };
}

const sigmoid = (v: number): number => 1 / (1 + Math.exp(-v));

/** One direction of a gated recurrent unit, gates in the order reset, update, new. Writes into columns `at` to `at + hidden` of y. */
function recurrent(
  wIn: Float32Array,
  wHidden: Float32Array,
  bIn: Float32Array,
  bHidden: Float32Array,
  ins: number,
  hidden: number,
  backwards: boolean,
) {
  return (x: Matrix, y: Matrix, at: number): void => {
    if (x.width !== ins) throw new Error(`a layer for ${ins} values was given ${x.width}`);
    const fromIn = affine(x, wIn, bIn, 3 * hidden).values;
    const state = new Float32Array(hidden);
    const fromState = new Float32Array(3 * hidden);
    for (let t = 0; t < x.rows; t++) {
      const row = backwards ? x.rows - 1 - t : t;
      oneRow(state, 0, hidden, wHidden, bHidden, 3 * hidden, fromState, 0);
      for (let h = 0; h < hidden; h++) {
        const g = row * 3 * hidden + h;
        const reset = sigmoid((fromIn[g] as number) + (fromState[h] as number));
        const update = sigmoid((fromIn[g + hidden] as number) + (fromState[h + hidden] as number));
        const fresh = Math.tanh((fromIn[g + 2 * hidden] as number) + reset * (fromState[h + 2 * hidden] as number));
        state[h] = (1 - update) * fresh + update * (state[h] as number);
      }
      y.values.set(state, row * y.width + at);
    }
  };
}

function logSoftmax(x: Matrix): Matrix {
  for (let row = 0; row < x.rows; row++) {
    const scores = x.values.subarray(row * x.width, (row + 1) * x.width);
    const top = scores.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
    const total = top + Math.log(scores.reduce((sum, v) => sum + Math.exp(v - top), 0));
    for (let i = 0; i < scores.length; i++) scores[i] = (scores[i] as number) - total;
  }
  return x;
}
