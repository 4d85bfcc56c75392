// A table with a tablet on it: voice, ear and clock in the test's hands.
import { ScriptedEars } from "#speech/ears-scripted.ts";
import type { Sentence } from "#speech/ports.ts";
import { Turns } from "#speech/turns.ts";
import type { SpokenScreen } from "#speech/turns-shapes.ts";
import { ListeningVoice } from "#speech/voice-listening.ts";
import { FakeTimers } from "./fake-timers.ts";

export const line = (text: string): Sentence => ({ text, lang: "en-US" });

export const screen = (key: string, more: Partial<SpokenScreen> = {}): SpokenScreen => ({
  key,
  sentences: [line(`${key} one.`), line(`${key} two?`)],
  short: [line(`${key} short?`)],
  names: [line(`${key} names.`)],
  vocabulary: ["yes", "no"],
  silent: false,
  ...more,
});

export function table(options: { byHand?: boolean; ears?: ScriptedEars | null } = {}) {
  const timers = new FakeTimers();
  const voice = new ListeningVoice({ byHand: options.byHand === true });
  const ears = options.ears === undefined ? new ScriptedEars() : options.ears;
  const marks: (string | null)[] = [];
  const listening: boolean[] = [];
  const heard: string[] = [];
  const rooms: (string | null)[] = [];
  const answers = { fit: "taken" as "taken" | "turned away", onHeard: (_text: string): void => {} };
  const turns = new Turns({
    voice,
    ears,
    timers,
    earOff: line("Use the buttons now."),
    inTheWay: (trouble) =>
      trouble === "too loud" ? [line("Too loud."), line("Press.")] : [line(trouble === "deaf" ? "Deaf." : "Others talk.")],
    onRoom: (trouble) => rooms.push(trouble),
    onSentence: (now) => marks.push(now && `${now.of} ${now.index}`),
    onListening: (open) => listening.push(open),
    onHeard: (h) => {
      heard.push(h.text);
      answers.onHeard(h.text);
      return answers.fit;
    },
  });
  return { timers, voice, ears: ears ?? new ScriptedEars(), marks, listening, heard, rooms, answers, turns };
}
