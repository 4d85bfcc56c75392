// The voice of last resort: the sentence stands on the screen and is given the time it takes to read. It makes no sound and never fails.
import { DEFAULT_WPM, spokenSeconds } from "./pace.ts";
import type { Sentence, SpokenResult, Timers, VoiceHealth, VoicePort, VolumeStep } from "./ports.ts";

export function textVoice(timers: Timers): VoicePort {
  let wpm = DEFAULT_WPM;
  let settle: ((result: SpokenResult) => void) | null = null;
  const stop = (): void => {
    settle?.({ how: "stopped" });
  };
  return {
    name: "text",
    speak(s: Sentence): Promise<SpokenResult> {
      stop();
      return new Promise((resolve) => {
        const finish = (result: SpokenResult): void => {
          if (settle !== finish) return;
          settle = null;
          cancel();
          resolve(result);
        };
        settle = finish;
        const cancel = timers.after(spokenSeconds([s.text], wpm) * 1000, () => finish({ how: "ended" }));
      });
    },
    stop,
    health: (): VoiceHealth => "works",
    setRate(next: number): void {
      wpm = next;
    },
    setVolume(_step: VolumeStep): void {
      // Nothing to make louder.
    },
  };
}
