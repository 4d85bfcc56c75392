// Several voices as one: the first that works says the sentence; a failed sentence goes to the next voice at once, whole.
import type { Sentence, SpokenResult, Timers, VoiceHealth, VoicePort, VolumeStep } from "./ports.ts";

/** A voice that failed is passed over this long, so that not every sentence waits for its watchdog first; then it gets another chance. */
const REST_MS = 30_000;

export interface VoiceChain extends VoicePort {
  /** Name of the voice that said the last sentence that came out; null before any. */
  spokeLast(): string | null;
}

/** Voices in order of preference; the last one should be one that cannot fail. `onSpoke` hears which voice said what. */
export function voiceChain(voices: readonly VoicePort[], timers: Timers, onSpoke?: (voice: string, s: Sentence) => void): VoiceChain {
  const resting = new Set<VoicePort>();
  let run = 0;
  let current: VoicePort | null = null;
  let last: string | null = null;

  const rest = (voice: VoicePort): void => {
    resting.add(voice);
    timers.after(REST_MS, () => resting.delete(voice));
  };

  const stop = (): void => {
    run++;
    current?.stop();
    current = null;
  };

  async function speak(s: Sentence): Promise<SpokenResult> {
    stop();
    const mine = run;
    const whys: string[] = [];
    const awake = voices.filter((voice) => !resting.has(voice));
    for (const voice of awake.length > 0 ? awake : voices) {
      current = voice;
      const result = await voice.speak(s);
      if (mine !== run) return { how: "stopped" };
      if (result.how !== "failed") {
        if (result.how === "ended") {
          last = voice.name;
          onSpoke?.(voice.name, s);
        }
        return result;
      }
      whys.push(`${voice.name}: ${result.why ?? "no reason given"}`);
      if (!result.notYet && !resting.has(voice)) rest(voice);
    }
    return { how: "failed", why: whys.join("; ") || "no voice in the chain" };
  }

  return {
    name: "chain",
    speak,
    stop,
    spokeLast: () => last,
    health(): VoiceHealth {
      const all = voices.map((voice) => voice.health());
      return (["works", "untried", "failed"] as const).find((h) => all.includes(h)) ?? "no voice";
    },
    setRate(wpm: number): void {
      for (const voice of voices) voice.setRate(wpm);
    },
    setVolume(step: VolumeStep): void {
      for (const voice of voices) voice.setVolume(step);
    },
  };
}
