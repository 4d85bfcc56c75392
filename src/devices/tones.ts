// Tones made on the spot, no file to load. A tablet that may not sound yet (no touch since it started) simply stays silent and says so.
import { madeOnce } from "./once.ts";
import { ATTACK_SECONDS, gainOf, lengthOf, partialsOf, RELEASE_SECONDS, TONES, type ToneName } from "./tone-shapes.ts";

export interface Tones {
  /** Plays the tone and settles when it is over or was stopped; at once where no sound is possible. Never rejects. A new tone stops the last. */
  play(name: ToneName): Promise<void>;
  stop(): void;
  /** 5 the loudest, 6 dB a step. */
  setVolume(step: 1 | 2 | 3 | 4 | 5): void;
  /** Whether a tone would be heard now. */
  ready(): boolean;
  /** Asks for sound, to be called from a touch; true if tones will sound from now on. Never rejects. */
  wake(): Promise<boolean>;
}

/** What is used of the browser's audio, so that a test can stand in for it. */
export interface SoundParam {
  value: number;
  setValueAtTime(value: number, at: number): unknown;
  linearRampToValueAtTime(value: number, at: number): unknown;
  setTargetAtTime(value: number, at: number, timeConstant: number): unknown;
  cancelScheduledValues(from: number): unknown;
}
export interface SoundNode {
  connect(to: SoundNode): unknown;
}
export interface SoundContext {
  readonly state: string;
  readonly currentTime: number;
  readonly destination: SoundNode;
  createGain(): SoundNode & { readonly gain: SoundParam };
  createOscillator(): SoundNode & { readonly frequency: SoundParam; start(at: number): void; stop(at: number): void };
  resume(): Promise<void>;
}

/** Makes the audio context; it may throw or give null where there is none. */
export type MakeContext = () => SoundContext | null;

const browserAudio: MakeContext = () => (typeof AudioContext === "undefined" ? null : new AudioContext());

/** From stop to silence: short enough to be at once, long enough not to click. */
const STOP_SECONDS = 0.02;

/** A browser that waits for a touch never answers a request for sound; then it counts as refused. */
const WAKE_MS = 1000;

type Playing = { out: { readonly gain: SoundParam }; context: SoundContext; over: () => void };

export function tones(makeContext: MakeContext = browserAudio): Tones {
  const audio = madeOnce(makeContext);
  let step: 1 | 2 | 3 | 4 | 5 = 4;
  let playing: Playing | null = null;

  const stop = (): void => {
    const last = playing;
    playing = null;
    if (last === null) return;
    try {
      const { gain } = last.out;
      gain.cancelScheduledValues(last.context.currentTime);
      gain.setTargetAtTime(0, last.context.currentTime, STOP_SECONDS / 4);
    } catch {
      // The context is gone, and the sound with it.
    }
    last.over();
  };

  return {
    play(name) {
      stop();
      const on = audio();
      if (on === null || on.state !== "running") return Promise.resolve();
      return new Promise((resolve) => {
        try {
          const out = on.createGain();
          out.gain.value = gainOf(step);
          out.connect(on.destination);
          const timer = setTimeout(() => finish(), lengthOf(TONES[name]) * 1000);
          const finish = (): void => {
            clearTimeout(timer);
            if (playing?.out === out) playing = null;
            resolve();
          };
          playing = { out, context: on, over: finish };
          for (const beat of TONES[name].beats) sound(on, out, beat.hz, on.currentTime + beat.start, beat.seconds);
        } catch {
          playing?.over();
          resolve();
        }
      });
    },
    stop,
    setVolume(next) {
      step = next;
    },
    ready: () => audio()?.state === "running",
    async wake() {
      const on = audio();
      try {
        await Promise.race([on?.resume(), new Promise((resolve) => setTimeout(resolve, WAKE_MS))]);
      } catch {
        return false;
      }
      return on?.state === "running";
    },
  };
}

/** One beat: each harmonic with a soft attack, so that nothing clicks or startles. */
function sound(on: SoundContext, out: SoundNode, hz: number, start: number, seconds: number): void {
  for (const [partial, share] of partialsOf(hz)) {
    const oscillator = on.createOscillator();
    const shape = on.createGain();
    oscillator.frequency.value = partial;
    shape.gain.setValueAtTime(0, start);
    shape.gain.linearRampToValueAtTime(share, start + ATTACK_SECONDS);
    shape.gain.setValueAtTime(share, start + seconds);
    shape.gain.linearRampToValueAtTime(0, start + seconds + RELEASE_SECONDS);
    oscillator.connect(shape);
    shape.connect(out);
    oscillator.start(start);
    oscillator.stop(start + seconds + RELEASE_SECONDS);
  }
}
