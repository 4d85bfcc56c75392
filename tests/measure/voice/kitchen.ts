import { Dice } from "./dice.ts";
import { bed, type Noise } from "./noises.ts";
import { RATE, speechPower } from "./wav.ts";

/** Where an utterance is heard: in a quiet kitchen or with a noise so many dB below the speech. */
export type Condition = { noise: Noise; dB: 20 | 10 } | "clean";

/** A quiet kitchen and its microphone are not silent: white noise at -58 dB of full scale. */
const FLOOR = 10 ** (-58 / 20);
const BEFORE = 0.3 * RATE;
const AFTER = 0.3 * RATE;

export class Kitchen {
  readonly #beds = new Map<Noise, Float32Array>();
  readonly #sentences: readonly Float32Array[];

  constructor(sentences: readonly Float32Array[]) {
    this.#sentences = sentences;
  }

  #stretchOf(noise: Noise, length: number, dice: Dice): Float32Array {
    const whole = this.#beds.get(noise) ?? bed(noise, this.#sentences);
    this.#beds.set(noise, whole);
    const at = dice.whole(0, whole.length - length - 1);
    return whole.subarray(at, at + length);
  }

  /** What the microphone hears of this speech, with 0.3 s before and after it. `name` chooses loudness and the stretch of noise. */
  heard(speech: Float32Array, where: Condition, name: string): Float32Array {
    const dice = new Dice(`kitchen ${name} ${where === "clean" ? where : `${where.noise} ${where.dB}`}`);
    const level = 10 ** ((-24 + dice.between(-8, 4)) / 20);
    const gain = level / Math.sqrt(speechPower(speech) + 1e-12);
    const x = new Float32Array(BEFORE + speech.length + AFTER);
    for (let i = 0; i < x.length; i++) x[i] = FLOOR * dice.normal();
    for (let i = 0; i < speech.length; i++) x[BEFORE + i] = (x[BEFORE + i] ?? 0) + gain * (speech[i] ?? 0);
    if (where !== "clean") this.#add(x, where.noise, level / 10 ** (where.dB / 20), dice);
    return limited(x);
  }

  /** The noise alone, as loud as it is 10 dB under speech. */
  alone(noise: Noise, seconds: number, name: string): Float32Array {
    const dice = new Dice(`alone ${name}`);
    const x = Float32Array.from({ length: Math.round(seconds * RATE) }, () => FLOOR * dice.normal());
    this.#add(x, noise, 10 ** (-34 / 20), dice);
    return limited(x);
  }

  /** Adds the noise so that it has this level (root of its mean power) where the utterance is. */
  #add(x: Float32Array, noise: Noise, level: number, dice: Dice): void {
    const some = this.#stretchOf(noise, x.length, dice);
    let power = 1e-12;
    for (let i = BEFORE; i < some.length - AFTER; i++) power += (some[i] ?? 0) ** 2;
    const gain = level / Math.sqrt(power / Math.max(1, some.length - BEFORE - AFTER));
    for (let i = 0; i < x.length; i++) x[i] = (x[i] ?? 0) + gain * (some[i] ?? 0);
  }
}

/** A microphone clips. */
function limited(x: Float32Array): Float32Array {
  return x.map((v) => Math.max(-1, Math.min(1, v)));
}
