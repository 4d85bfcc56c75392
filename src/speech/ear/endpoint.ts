// Where an utterance begins and ends in a stream of blocks. Loudness is judged against the quietest of the last seconds, never against a fixed
// level: a detector with a fixed level opens at a kettle and never closes (measured). Pure: blocks in, utterances out.

/**
 * What a block brought. "begun" is told once. "paused": silence has begun, and this was said so far; it may be all, so an ear can look at it already.
 * "goes on": it was not all. "said" carries the utterance with a little room before and after it; unless it was cut, what followed the last
 * "paused" was silence.
 */
export type Ended =
  | { kind: "begun" }
  | { kind: "paused"; samples: Float32Array }
  | { kind: "goes on" }
  | { kind: "said"; samples: Float32Array; cut: boolean }
  | { kind: "too loud" }
  | null;

/** Samples of one block: 30 ms at 16 kHz. */
export const BLOCK = 480;
const blocksIn = (ms: number): number => Math.round(ms / 30);
/** Silence that ends an utterance, unless somebody knows better. Longer cuts fewer slow speakers in two; shorter answers sooner (target: 400 ms in all). */
export const CLOSING_MS = 300;
/**
 * Silence after which what was said so far is worth a look, before the closing. The end of "six" is weak, and in noise it lies under it: after 180 ms
 * 45 of 64 spoken numbers were heard right, after 240 ms 51, after the closing 55 (voices never met, in the quiet and beside a kettle at 10 dB).
 */
export const LOOK_MS = 240;
const BEFORE_MS = 300;
/** The rest is somebody else's talk or a kettle: the longest answer at a slow pace is under 4 s. */
const LONGEST_MS = 4500;
/** Shorter sounds are clicks and cups. */
const SHORTEST_MS = 120;
/** How far back the quietest moment is looked for. */
const FLOOR_MS = 3000;
const OPEN_DB = 9;
const CLOSE_DB = 6;
/** Below this nobody speaks to the tablet; a gated microphone gives pure zeros. */
const LOWEST_DB = -58;
/** A room that is never quieter than this cannot be heard over. */
const TOO_LOUD_DB = -30;
/** So much of a turn must be loud: the kettle may have been switched off while the tablet spoke. */
const LOUD_AFTER_MS = 1000;

export class Endpoint {
  readonly #band = new Band();
  #recent: number[] = [];
  #kept: Float32Array[] = [];
  #loud = 0;
  #quiet = 0;
  #speaking = false;
  #warned = false;
  /** Blocks since the turn began: what the room was before, nobody knows now. */
  #here = 0;
  #usualClosing = CLOSING_MS;
  #looks: readonly number[] = [blocksIn(LOOK_MS)];
  #closing = CLOSING_MS;

  /**
   * Silence in ms that ends each utterance from now on, as long as nobody knows better: rather long where a number may go on. `looks`: after how
   * much of it "paused" is told.
   */
  closeUsually(ms: number, looks: readonly number[] = [LOOK_MS]): void {
    this.#usualClosing = ms;
    this.#closing = ms;
    this.#looks = looks.map(blocksIn);
  }

  /** What was said before the present silence is known: so many ms of it are enough. Forgotten as soon as the speaker goes on. */
  closeAfter(ms: number): void {
    if (this.#quiet > 0) this.#closing = ms;
  }

  /** Takes one block; its samples are kept, not copied. */
  take(block: Float32Array): Ended {
    const level = this.#band.levelOf(block);
    this.#recent = [...this.#recent.slice(1 - blocksIn(FLOOR_MS)), level];
    const floor = this.floor();
    this.#kept.push(block);
    this.#here++;
    if (!this.#speaking) return this.#waiting(level, floor);
    const paused = this.#looks.some((blocks) => this.#quiet >= blocks);
    this.#quiet = level < floor + CLOSE_DB ? this.#quiet + 1 : 0;
    if (this.#quiet === 0) this.#closing = this.#usualClosing;
    const cut = this.#kept.length >= blocksIn(LONGEST_MS);
    const words = this.#kept.length - blocksIn(BEFORE_MS) - this.#quiet >= blocksIn(SHORTEST_MS);
    if (this.#quiet < blocksIn(this.#closing) && !cut) {
      if (words && this.#looks.includes(this.#quiet)) return { kind: "paused", samples: join(this.#kept) };
      return paused && this.#quiet === 0 ? { kind: "goes on" } : null;
    }
    const samples = join(this.#kept);
    this.#forget();
    return words ? { kind: "said", samples, cut } : null;
  }

  /** Loudness of the room itself, in decibels below full scale: the quietest fifth of the last three seconds. */
  floor(): number {
    const sorted = this.#recent.toSorted((a, b) => a - b);
    return Math.max(LOWEST_DB, sorted[Math.floor(sorted.length / 5)] ?? LOWEST_DB);
  }

  /** A new turn: forgets a half-heard utterance, and tells again if it is too loud. The room is still known. */
  reset(): void {
    this.#forget();
    this.#warned = false;
    this.#here = 0;
  }

  #forget(): void {
    this.#kept = [];
    this.#loud = 0;
    this.#quiet = 0;
    this.#speaking = false;
    this.#closing = this.#usualClosing;
  }

  #waiting(level: number, floor: number): Ended {
    this.#kept = this.#kept.slice(-blocksIn(BEFORE_MS));
    this.#loud = level > floor + OPEN_DB ? this.#loud + 1 : 0;
    if (this.#loud >= 2) {
      this.#speaking = true;
      this.#quiet = 0;
      return { kind: "begun" };
    }
    const known = this.#recent.length >= blocksIn(FLOOR_MS) && this.#here >= blocksIn(LOUD_AFTER_MS);
    const loud = known && floor > TOO_LOUD_DB;
    if (!loud) this.#warned = false;
    if (!loud || this.#warned) return null;
    this.#warned = true;
    return { kind: "too loud" };
  }
}

/** A one-pole filter's share of each new sample, for a corner in Hz at 16 kHz. */
const share = (hz: number): number => 1 - Math.exp((-2 * Math.PI * hz) / 16_000);
const RUMBLE = share(200);
const HISS = share(2000);

/** Loudness in decibels of what lies between rumble and hiss, 200 Hz to 2 kHz: where speech is strong, and hum, wind and steam are not. */
class Band {
  #low = 0;
  #mid = 0;

  levelOf(block: Float32Array): number {
    let sum = 0;
    for (const sample of block) {
      this.#low += RUMBLE * (sample - this.#low);
      this.#mid += HISS * (sample - this.#low - this.#mid);
      sum += this.#mid * this.#mid;
    }
    return 10 * Math.log10(sum / block.length + 1e-10);
  }
}

function join(blocks: readonly Float32Array[]): Float32Array {
  const whole = new Float32Array(blocks.length * BLOCK);
  blocks.forEach((block, i) => {
    whole.set(block, i * BLOCK);
  });
  return whole;
}
