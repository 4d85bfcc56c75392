export const RATE = 16_000;

/** The sound of a mono 16-bit wav file, -1 to 1, and its rate. Tolerant of a length field that a pipe left open. */
export function readWav(data: Buffer): { samples: Float32Array; rate: number } {
  const rate = data.readUInt32LE(24);
  const at = data.indexOf("data") + 8;
  const count = Math.floor((data.length - at) / 2);
  const samples = new Float32Array(count);
  for (let i = 0; i < count; i++) samples[i] = data.readInt16LE(at + 2 * i) / 32768;
  return { samples, rate };
}

/** Steps between two neighbouring samples at which the kernel is known. */
const FINE = 256;

/** Plays `from` samples a second as `to` samples a second, without what lies above the lower half rate (windowed sinc from a table). */
export function resample(x: Float32Array, from: number, to: number): Float32Array {
  if (from === to) return x;
  const cut = Math.min(1, to / from) * 0.94;
  const reach = Math.ceil(16 / cut);
  const kernel = Float32Array.from({ length: (reach + 1) * FINE }, (_, k) => {
    const d = k / FINE;
    return (d === 0 ? cut : Math.sin(Math.PI * cut * d) / (Math.PI * d)) * (0.5 + 0.5 * Math.cos((Math.PI * d) / (reach + 1)));
  });
  const y = new Float32Array(Math.floor((x.length * to) / from));
  for (let i = 0; i < y.length; i++) {
    const at = (i * from) / to;
    const first = Math.max(0, Math.ceil(at - reach));
    const last = Math.min(x.length - 1, Math.floor(at + reach));
    let sum = 0;
    for (let j = first; j <= last; j++) sum += (x[j] ?? 0) * (kernel[Math.round(Math.abs(at - j) * FINE)] ?? 0);
    y[i] = sum;
  }
  return y;
}

const FRAME = 160;

/** Power of each hundredth of a second. */
export function powers(x: Float32Array): number[] {
  return Array.from({ length: Math.floor(x.length / FRAME) }, (_, f) => {
    let sum = 0;
    for (let i = f * FRAME; i < (f + 1) * FRAME; i++) sum += (x[i] ?? 0) ** 2;
    return sum / FRAME;
  });
}

/** The mean power of the part in which somebody speaks: the hundredths within 30 dB of the loudest. */
export function speechPower(x: Float32Array): number {
  const all = powers(x);
  const loudest = Math.max(...all);
  const spoken = all.filter((p) => p > loudest / 1000);
  return spoken.reduce((sum, p) => sum + p, 0) / Math.max(1, spoken.length);
}

/** Without the silence at both ends, but for 40 ms. */
export function trimmed(x: Float32Array): Float32Array {
  const all = powers(x);
  const floor = Math.max(...all) / 10_000;
  const first = all.findIndex((p) => p > floor);
  const last = all.findLastIndex((p) => p > floor);
  return first < 0 ? x : x.slice(Math.max(0, (first - 4) * FRAME), (last + 5) * FRAME);
}
