// A keeper tries the ear: one sentence, heard by the ear that would hear it in a walk, and told as it is.
import type { EarTrial } from "#screens/drawer/ports.ts";
import { NUMBER_WORDS, readNumber } from "#speech/numbers.ts";
import type { EarsPort, Heard, Hearing, Timers } from "#speech/ports.ts";
import type { Trouble } from "#speech/room.ts";
import type { EarState, EarTry } from "#words/en/drawer/ear.ts";
import { READINGS } from "./hearing.ts";

/** The ears, as far as a trial needs them. */
export interface TrialEars {
  own: EarsPort & { report(): Promise<Exclude<EarState["own"], "off">>; loudness(): number | null };
  browser: EarsPort & { language(): Promise<EarState["language"]>; install(): Promise<boolean> };
}

/** "Say: one hundred twelve." */
const WANTED = "112";
/** The walk's own question for a reading. */
const HEARING: Hearing = { offers: [{ id: "number", number: true }], range: READINGS };
/** So long a keeper may take to say it; as the first reprompt of a walk. */
const PATIENCE_MS = 8000;

/** `wanted`: somebody chose to be heard. Where nobody did, no ear is asked and no microphone opened. */
export function earTrial({ own, browser }: TrialEars, wanted: () => boolean, timers: Timers): EarTrial {
  let end: (tried: EarTry) => void = () => {};

  async function state(): Promise<EarState> {
    const language = await browser.language();
    if (!wanted()) return { ear: "none", own: "off", language };
    const report = await own.report();
    if (report === "ready") return { ear: "own", own: report, language };
    return { ear: (await browser.available()) === "on the device" ? "browser" : "none", own: report, language };
  }

  async function listen(): Promise<EarTry> {
    end(nothing("nothing", null));
    const { ear: which } = await state();
    if (which === "none") return nothing("no sound", null);
    const ear = which === "own" ? own : browser;
    return new Promise((resolve) => {
      const settle = (tried: EarTry) => {
        end = () => {};
        cancel();
        ear.pause();
        resolve(tried);
      };
      const room = () => (which === "own" ? own.loudness() : null);
      const cancel = timers.after(PATIENCE_MS, () => settle(nothing("nothing", room())));
      end = settle;
      const opened = ear.listen(
        NUMBER_WORDS,
        (h) => settle(tryOf(h, room())),
        HEARING,
        (trouble) => settle(nothing(AS_TRIED[trouble], room())),
      );
      void Promise.resolve(opened).then((hears) => {
        if (hears === false) settle(nothing("no sound", null));
      });
    });
  }

  return { state, listen, stop: () => end(nothing("nothing", null)), install: () => browser.install() };
}

const AS_TRIED: Readonly<Record<Trouble, EarTry["how"]>> = { "too loud": "too loud", "other talk": "not understood", deaf: "no sound" };

const nothing = (how: EarTry["how"], room: number | null): EarTry => ({ how, heard: [], right: false, room });

function tryOf(h: Heard, room: number | null): EarTry {
  const read = readNumber(h.text);
  const sure = h.unsure !== true && h.alternatives.length === 0;
  return {
    how: sure ? "sure" : "not sure",
    heard: [h.text, ...h.alternatives],
    right: read.kind === "number" && read.text === WANTED,
    room,
  };
}
