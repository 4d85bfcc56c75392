import { createHash } from "node:crypto";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { Dice, hash } from "./dice.ts";
import { fetch, type Line, needPackages, speak, store } from "./synthesise.ts";
import { BROADCAST, inDigits, moreTextsOf, type Text, textsOf } from "./texts.ts";
import { HELD_OUT, type Manner, TRAINED_ON, type Voice } from "./voices.ts";

/** One spoken answer. `name` decides its third and every die that falls for it. */
export type Clip = { name: string; voice: string; trainedOn: boolean; text: Text; sound: Float32Array };

export type Corpus = {
  clips: Clip[];
  /** What the same voice says later in a conversation: "digits of NAME", "yes", "no", each twice. */
  later: ReadonlyMap<string, Float32Array>;
  /** Sentences of a radio or television, by voices of both kinds. */
  broadcast: { voice: string; sound: Float32Array }[];
};

/** "tiny" is for the test of every build. */
export type Size = "full" | "small" | "tiny";
const COUNT: Record<Size, { heldOut: number; trainedOn: number; broadcast: number; more: number }> = {
  full: { heldOut: 400, trainedOn: 100, broadcast: 30, more: 24 },
  small: { heldOut: 60, trainedOn: 10, broadcast: 6, more: 4 },
  tiny: { heldOut: 24, trainedOn: 0, broadcast: 2, more: 0 },
};
/** How many times each voice is recorded saying a bare yes and a bare no for the conversations. */
export const TAKES = 6;
/** Who is on the radio: three voices the ear never met and one it did. */
const BROADCASTERS = ["flite rms", "festival ked", "festival slt-hts", "espeak-ng gb"];
const CACHE = fileURLToPath(new URL("../../../.cache/spoken/", import.meta.url));

/**
 * The third that is kept for the final figure, chosen by the hash of the utterance's name. No threshold, weight or word was ever chosen with it:
 * whoever tunes the ear uses the other two thirds (`npm run measure -- voice tune`), and only those.
 */
export const isFinal = (name: string): boolean => hash(name) % 3 === 0;

function manner(name: string): Manner {
  const dice = new Dice(`manner of ${name}`);
  return { stretch: dice.pick([0.9, 1, 1, 1.1, 1.2, 1.35]), size: dice.between(0.94, 1.06) };
}

/** The second and third time a number is asked for, its digits are said one by one, as the question which of two spells them; below ten it is said slowly. */
function again(text: Text): string {
  const n = Number(text.means);
  return n >= 10 ? inDigits(n) : text.words.replaceAll(" ", ", ");
}

type PlannedClip = Omit<Clip, "sound"> & { line: Line };
type Planned = { clips: PlannedClip[]; later: { key: string; line: Line }[]; broadcast: Line[] };

type Spoken = { planned: Planned; sounds: Float32Array[]; more: { clip: PlannedClip; sound: Float32Array | undefined }[] };

function planClip(voice: Voice, text: Text, i: number): PlannedClip {
  const name = `${voice.name} ${i}: ${text.words}`;
  return { name, voice: voice.name, trainedOn: voice.trainedOn, text, line: { words: text.words, manner: manner(name) } };
}

function plan(voice: Voice, count: number, broadcast: number): Planned {
  const clips = textsOf(voice.name, count).map((text, i) => planClip(voice, text, i));
  const numbers = voice.trainedOn ? [] : clips.filter((c) => c.text.sort === "numbers" && isFinal(c.name));
  const slowly = (name: string): Manner => ({ ...manner(name), stretch: 1.2 });
  const later = numbers.flatMap((c) =>
    [1, 2].map((take) => ({ key: `digits ${take} of ${c.name}`, line: { words: again(c.text), manner: slowly(`${take} ${c.name}`) } })),
  );
  const words = voice.trainedOn ? [] : ["yes", "no"];
  for (let take = 0; take < TAKES; take++) {
    for (const word of words) {
      const key = `${word} ${take} of ${voice.name}`;
      later.push({ key, line: { words: word, manner: manner(key) } });
    }
  }
  const sentences = (BROADCASTERS.includes(voice.name) ? BROADCAST : [])
    .slice(0, broadcast)
    .map((words) => ({ words, manner: manner(`${voice.name} broadcasts ${words}`) }));
  return { clips, later, broadcast: sentences };
}

async function spokenBy(voice: Voice, lines: readonly Line[]): Promise<Float32Array[]> {
  const id = createHash("sha256")
    .update(JSON.stringify([voice, lines]))
    .digest("hex")
    .slice(0, 12);
  const file = join(CACHE, `${voice.name.replaceAll(" ", "-")}-${id}.pcm`);
  const kept = await fetch(file);
  const sounds = kept ?? (await speak(voice, lines));
  if (!kept) await store(file, sounds);
  return sounds;
}

/** Made once, by two programs at a time, and kept in .cache/spoken under the hash of its own plan. */
export async function corpus(size: Size): Promise<Corpus> {
  needPackages();
  const count = COUNT[size];
  const whole: Corpus & { later: Map<string, Float32Array> } = { clips: [], later: new Map(), broadcast: [] };
  const voices = [...HELD_OUT, ...TRAINED_ON];
  const spoken = new Map<string, Spoken>();
  const queue = [...voices];
  const work = async (): Promise<void> => {
    for (let voice = queue.shift(); voice; voice = queue.shift()) {
      const planned = plan(voice, voice.trainedOn ? count.trainedOn : count.heldOut, count.broadcast);
      const lines = [...planned.clips.map((c) => c.line), ...planned.later.map((l) => l.line), ...planned.broadcast];
      const more = voice.trainedOn
        ? []
        : moreTextsOf(voice.name, count.more).map((text, i) => planClip(voice, text, planned.clips.length + i));
      const moreSounds =
        more.length === 0
          ? []
          : await spokenBy(
              voice,
              more.map((c) => c.line),
            );
      spoken.set(voice.name, {
        planned,
        sounds: await spokenBy(voice, lines),
        more: more.map((clip, i) => ({ clip, sound: moreSounds[i] })),
      });
    }
  };
  await Promise.all([work(), work()]);
  for (const voice of voices) {
    const { planned, sounds, more } = spoken.get(voice.name) ?? { planned: { clips: [], later: [], broadcast: [] }, sounds: [], more: [] };
    let next = 0;
    const sound = (): Float32Array => sounds[next++] ?? new Float32Array();
    for (const { line: _, ...clip } of planned.clips) whole.clips.push({ ...clip, sound: sound() });
    for (const {
      clip: { line: _, ...clip },
      sound,
    } of more)
      whole.clips.push({ ...clip, sound: sound ?? new Float32Array() });
    for (const { key } of planned.later) whole.later.set(key, sound());
    for (const _ of planned.broadcast) whole.broadcast.push({ voice: voice.name, sound: sound() });
  }
  return whole;
}
