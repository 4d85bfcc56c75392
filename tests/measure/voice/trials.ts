import { type Clip, type Corpus, isFinal } from "./corpus.ts";
import { Dice, hash } from "./dice.ts";
import { type Condition, EVERYWHERE, type Kitchen } from "./kitchen.ts";
import { NOISES } from "./noises.ts";
import { type Answer, type Listener, meaningOfText } from "./own-ear.ts";
import type { Packaged } from "./packaged.ts";
import { HEARINGS } from "./questions.ts";
import type { Asked, Sort } from "./texts.ts";
import { RATE } from "./wav.ts";

/** Which part of the corpus is heard: the final third, or the two thirds that thresholds are chosen with. */
export type Share = "final" | "tune";

/** An own answer, heard. */
export type Own = Omit<Answer, "listened"> & {
  clip: string;
  trainedOn: boolean;
  sort: Sort;
  asked: Asked;
  where: string;
  /** In the same words as `taken` and `best`. */
  truth: string;
  /** What the best packaged engine heard; undefined where it was not asked. */
  packaged?: string | null;
};

/** Something that is no answer to the question. */
export type Foreign = { of: "broadcast" | "noise" | "another question"; asked: Asked; kind: Answer["kind"]; taken: string | null };

export const nameOf = (where: Condition): string => (where === "clean" ? where : `${where.noise} ${where.dB} dB`);

/** In the right third, or not; small runs leave out the conditions at 20 dB and half of the foreign sounds. */
export type Extent = { share: Share; small: boolean };
const wanted = (name: string, { share }: Extent): boolean => isFinal(name) === (share === "final");

function truthOf({ text }: Clip): string {
  const truth = text.sort === "numbers" ? text.means : meaningOfText(text.words, text.asked);
  if (truth === null) throw new Error(`"${text.words}" does not answer "${text.asked}".`);
  return truth;
}

/** Where a clip is heard: in the final third everywhere; a trained voice, or a clip for tuning, in the quiet and in two noises at 10 dB chosen by dice. */
function placesOf(clip: Clip, { share, small }: Extent): readonly Condition[] {
  const loud = EVERYWHERE.filter((w) => w === "clean" || w.dB === 10);
  if (share === "final" && !clip.trainedOn) return small ? loud : EVERYWHERE;
  const dice = new Dice(`places of ${clip.name}`);
  return ["clean", dice.pick(loud.slice(1)), ...(small ? [] : [{ noise: dice.pick(NOISES.slice(0, 4)), dB: 10 } as const])];
}

/** Whether this worker has the trial of that name. */
export type Mine = (name: string) => boolean;

export function* own(
  corpus: Corpus,
  kitchen: Kitchen,
  listener: Listener,
  packaged: Packaged | null,
  extent: Extent,
  mine: Mine,
): Generator<Own> {
  for (const clip of corpus.clips) {
    if (!wanted(clip.name, extent) || !mine(clip.name)) continue;
    for (const where of placesOf(clip, extent)) {
      const sound = kitchen.heard(clip.sound, where, clip.name);
      const { listened: _, ...answer } = listener.hear(sound, clip.text.asked);
      const { sort, asked } = clip.text;
      const heard: Own = { ...answer, clip: clip.name, trainedOn: clip.trainedOn, sort, asked, where: nameOf(where), truth: truthOf(clip) };
      const beside = packaged !== null && sort === "numbers" && !clip.trainedOn && (where === "clean" || where.dB === 10);
      yield beside ? { ...heard, packaged: packaged.number(sound, asked) } : heard;
    }
  }
}

const ASKED: readonly Asked[] = ["read back", "ate", "mg/dL", "units"];

/** Television, noise alone, and answers that belong to another question. */
export function* foreign(corpus: Corpus, kitchen: Kitchen, listener: Listener, extent: Extent, mine: Mine): Generator<Foreign> {
  const step = extent.small ? 2 : 1;
  const heard = (of: Foreign["of"], asked: Asked, sound: Float32Array): Foreign => {
    const { kind, taken } = listener.hear(sound, asked);
    return { of, asked, kind, taken };
  };
  for (const [i, { voice, sound }] of corpus.broadcast.entries()) {
    const name = `broadcast ${i} of ${voice}`;
    if (!wanted(name, extent) || !mine(name)) continue;
    for (const [piece, part] of pieces(sound, name).entries()) {
      for (const asked of ASKED) yield heard("broadcast", asked, kitchen.heard(part, "clean", `${name}, piece ${piece}`));
    }
  }
  for (const noise of NOISES.filter((n) => n !== "radio")) {
    for (let i = 0; i < 30; i += step) {
      const name = `${noise} alone ${i}`;
      if (!wanted(name, extent) || !mine(name)) continue;
      for (const asked of ASKED) yield heard("noise", asked, kitchen.alone(noise, 0.7 + (i % 5) * 0.5, name));
    }
  }
  for (const clip of corpus.clips) {
    if (clip.trainedOn || !wanted(clip.name, extent) || !mine(clip.name)) continue;
    const others = (Object.keys(HEARINGS) as Asked[]).filter((q) => meaningOfText(clip.text.words.replaceAll(",", ""), q) === null);
    const asked = others[hash(`other question for ${clip.name}`) % Math.max(1, others.length)];
    if (asked !== undefined) yield heard("another question", asked, kitchen.heard(clip.sound, "clean", clip.name));
  }
}

/** A whole sentence as far as an ear listens, and a short piece such as an answer is long, which may begin and end in mid-word. */
function pieces(sound: Float32Array, name: string): Float32Array[] {
  const dice = new Dice(`pieces of ${name}`);
  const length = Math.round(dice.between(0.5, 1.6) * RATE);
  const at = dice.whole(0, Math.max(0, sound.length - length));
  return [sound.slice(0, 4 * RATE), sound.slice(at, at + length)];
}
