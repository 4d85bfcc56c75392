// Plays made speech through the browser's audio. One sentence at a time; stopping fades within 20 ms, so that nothing clicks.
import { madeOnce } from "./once.ts";

export interface Played {
  /** Settles when the sound has ended or was stopped. Never rejects. */
  over: Promise<void>;
  stop(): void;
}

export interface SpeechPlayer {
  /** Samples of 16 bits at their own rate, loudness 0 to 1. Undefined where no sound is possible before a touch, or at all. */
  play(sound: { samples: Int16Array; sampleRate: number }, loudness: number): Played | undefined;
  /** Asks for sound, to be called from a touch. */
  wake(): void;
}

const FADE_SECONDS = 0.02;

export function speechPlayer(makeContext: () => AudioContext = () => new AudioContext()): SpeechPlayer {
  const audio = madeOnce(makeContext);
  return {
    play({ samples, sampleRate }, loudness) {
      const on = audio();
      if (on === null || on.state !== "running" || samples.length === 0) return undefined;
      const buffer = on.createBuffer(1, samples.length, sampleRate);
      buffer.copyToChannel(
        Float32Array.from(samples, (s) => s / 32768),
        0,
      );
      const source = on.createBufferSource();
      const gain = on.createGain();
      source.buffer = buffer;
      gain.gain.value = loudness;
      source.connect(gain);
      gain.connect(on.destination);
      const over = new Promise<void>((resolve) => source.addEventListener("ended", () => resolve()));
      source.start();
      return {
        over,
        stop() {
          gain.gain.setTargetAtTime(0, on.currentTime, FADE_SECONDS / 4);
          source.stop(on.currentTime + FADE_SECONDS);
        },
      };
    },
    wake: () =>
      void audio()
        ?.resume()
        .catch(() => {}),
  };
}
