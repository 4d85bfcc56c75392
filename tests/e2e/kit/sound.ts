// Speaking to a tablet of the bench through its microphone, and overhearing what it plays.
import { readFile } from "node:fs/promises";
import { openSynth, type Synth } from "#speech/voice/synth.ts";
import type { SoundBench, SoundGlobal } from "./sound-in-page.ts";
import type { Tablet } from "./tablet.ts";

let synth: Promise<Synth> | null = null;
/** The voice that ships with the app, here in the test: the person speaks with it too. */
export const voiceOfTests = (): Promise<Synth> => {
  synth ??= readFile(new URL("../../../public/voice/voice.wasm", import.meta.url)).then(openSynth);
  return synth;
};

/** How fast the person speaks, of the voice's own pace of 190 words a minute: who was not understood says it more slowly. */
const PACES = [0.8, 0.7, 0.6] as const;

/** One phrase into the microphone, for the first time or again; resolves when it was said. */
export async function sayInto(tablet: Tablet, phrase: string, again = 0): Promise<void> {
  const { samples } = (await voiceOfTests())(phrase, PACES[again % PACES.length] ?? PACES[0]);
  const sound = Buffer.from(samples.buffer, samples.byteOffset, samples.byteLength).toString("base64");
  await tablet.page.evaluate((spoken) => (globalThis as SoundGlobal).sound.say(spoken), sound);
}

/** A sound that the tablet played, less the samples. */
export interface Overheard {
  place: number;
  caption: string;
  from: number;
  to: number | null;
  cut: boolean;
}

export const played = (tablet: Tablet): Promise<Overheard[]> =>
  tablet.page.evaluate(() =>
    (globalThis as SoundGlobal).sound.played.map(({ caption, from, to, cut }, place) => ({ place, caption, from, to, cut })),
  );

/** Waits for a sound that holds, and gives the first. */
export async function overheard(tablet: Tablet, what: string, holds: (sound: Overheard) => boolean): Promise<Overheard> {
  for (let tries = 0; tries < 200; tries++) {
    const found = (await played(tablet)).find(holds);
    if (found) return found;
    await tablet.page.waitForTimeout(100);
  }
  throw new Error(`Not heard from the tablet: ${what}. Heard: ${JSON.stringify(await played(tablet))}`);
}

export type Counts = Pick<SoundBench, "tones" | "heard" | "listenings" | "listeningOverSpeech" | "touches" | "toBrowserVoice">;

export const counts = (tablet: Tablet): Promise<Counts> =>
  tablet.page.evaluate(() => {
    const { tones, heard, listenings, listeningOverSpeech, touches, toBrowserVoice } = (globalThis as SoundGlobal).sound;
    return { tones, heard, listenings, listeningOverSpeech, touches, toBrowserVoice };
  });

/** Waits until a worker, told by its folder, is ready or has failed. */
export async function workerIs(tablet: Tablet, folder: "ear/" | "voice/", is: "ready" | "broken"): Promise<void> {
  await tablet.page.waitForFunction(
    (wanted) => (globalThis as SoundGlobal).sound.workers.some((w) => w.folder.endsWith(wanted.folder) && w.is === wanted.is),
    { folder, is },
    { polling: 100, timeout: 30_000 },
  );
}

const samplesIn = (base64: string): Int16Array => {
  const bytes = Uint8Array.from(Buffer.from(base64, "base64"));
  return new Int16Array(bytes.buffer, 0, bytes.length / 2);
};

/** The samples that the app handed to the loudspeaker. */
export const given = async (tablet: Tablet, place: number): Promise<Int16Array> =>
  samplesIn(await tablet.page.evaluate((at) => (globalThis as SoundGlobal).sound.given(at), place));

/** What came out of the loudspeaker, as the browser recorded it. */
export const recorded = async (tablet: Tablet, place: number): Promise<Int16Array> =>
  samplesIn(await tablet.page.evaluate((at) => (globalThis as SoundGlobal).sound.recorded(at), place));
