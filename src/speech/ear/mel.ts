// Sound -> what the net sees: how loud each of 40 bands of pitch is, every hundredth of a second, evened out over the utterance.
import FFT from "fft.js";
import type { MelShape } from "./manifest.ts";
import { withQuiet } from "./quiet.ts";

const RATE = 16_000;

/** Rows of equal width, one after the other. */
export interface Matrix {
  rows: number;
  width: number;
  values: Float32Array;
}

const toMel = (hz: number): number => 2595 * Math.log10(1 + hz / 700);
const toHz = (mel: number): number => 700 * (10 ** (mel / 2595) - 1);

type Band = { first: number; slopes: Float64Array };

/** Triangles, straight in Hz, whose corners are even in mel (O'Shaughnessy's formula). */
function bandsOf(shape: MelShape): Band[] {
  const low = toMel(shape.lowHz);
  const step = (toMel(shape.highHz) - low) / (shape.bands + 1);
  const corner = (i: number): number => toHz(low + step * i);
  const bins = Array.from({ length: shape.fft / 2 + 1 }, (_, i) => (i * RATE) / shape.fft);
  return Array.from({ length: shape.bands }, (_, band) => {
    const [from, top, to] = [corner(band), corner(band + 1), corner(band + 2)];
    const heights = bins.map((hz) => Math.max(0, Math.min((hz - from) / (top - from), (to - hz) / (to - top))));
    const first = Math.max(
      0,
      heights.findIndex((h) => h > 0),
    );
    return { first, slopes: Float64Array.from(heights.slice(first, heights.findLastIndex((h) => h > 0) + 1)) };
  });
}

/**
 * Makes the features of one utterance: samples from -1 to 1 at 16 kHz -> one row of bands for every hop, and `quiet` rows of the room before and after.
 * Empty when it is shorter than one frame.
 */
export function melOf(shape: MelShape, quiet = 0): (samples: Float32Array) => Matrix {
  const fft = new FFT(shape.fft);
  const bands = bandsOf(shape);
  const window = Float64Array.from({ length: shape.frame }, (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / shape.frame));
  return (samples) => {
    const rows = Math.max(0, Math.floor((samples.length - shape.frame) / shape.hop) + 1);
    const values = new Float32Array(rows * shape.bands);
    const cut = new Array<number>(shape.fft).fill(0);
    const spectrum = fft.createComplexArray();
    for (let row = 0; row < rows; row++) {
      for (let i = 0; i < shape.frame; i++) {
        const at = row * shape.hop + i;
        cut[i] = ((samples[at] ?? 0) - (at === 0 ? 0 : shape.preEmphasis * (samples[at - 1] ?? 0))) * (window[i] ?? 0);
      }
      fft.realTransform(spectrum, cut);
      bands.forEach(({ first, slopes }, band) => {
        let sum = 0;
        for (let i = 0; i < slopes.length; i++) {
          const re = spectrum[2 * (first + i)] ?? 0;
          const im = spectrum[2 * (first + i) + 1] ?? 0;
          sum += (slopes[i] ?? 0) * (re * re + im * im);
        }
        values[row * shape.bands + band] = Math.log(sum + shape.floor);
      });
    }
    const all = withQuiet(values, shape.bands, quiet);
    evenOut(all, all.length / shape.bands, shape.bands);
    return { rows: all.length / shape.bands, width: shape.bands, values: all };
  };
}

/** Each band minus its mean, divided by its deviation: a near and a far mouth look alike. */
function evenOut(values: Float32Array, rows: number, width: number): void {
  for (let band = 0; band < width; band++) {
    let sum = 0;
    let squares = 0;
    for (let row = 0; row < rows; row++) sum += values[row * width + band] ?? 0;
    const mean = sum / rows;
    for (let row = 0; row < rows; row++) squares += ((values[row * width + band] ?? 0) - mean) ** 2;
    const deviation = Math.sqrt(squares / rows) + 1e-3;
    for (let row = 0; row < rows; row++) values[row * width + band] = ((values[row * width + band] ?? 0) - mean) / deviation;
  }
}
