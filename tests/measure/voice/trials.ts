import { type Clip, type Corpus, isFinal } from "./corpus.ts";
import { Dice, hash } from "./dice.ts";
import type { Condition, Kitchen } from "./kitchen.ts";
import { NOISES, type Noise, STEADY } from "./noises.ts";
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

/** Small runs leave out the noises at 20 dB and half of the noises alone. */
export type Extent = { share: Share; small: boolean };
/** Whether this worker has the trial of that name. */
export type Mine = (name: string) => boolean;

export const wanted = (name: string, { share }: Extent): boolean => isFinal(name) === (share === "final");

function truthOf({ text }: Clip): string {
  const truth = text.sort === "numbers" ? text.means : meaningOfText(text.words, text.asked);
  if (truth === null) throw new Error(`"${text.words}" does not answer "${text.asked}".`);
  return truth;
}

/**
 * Where a clip is heard: in the final third in the quiet, in every noise at 10 dB and in two of the five at 20 dB; a trained voice, or a clip for tuning,
 * in the quiet and in one steady noise at 10 dB.
 */
function placesOf(clip: Clip, { share, small }: Extent): readonly Condition[] {
  const dice = new Dice(`places of ${clip.name}`);
  const at = (noises: readonly Noise[], dB: 20 | 10): Condition[] => noises.map((noise) => ({ noise, dB }));
  if (share === "tune" || clip.trainedOn) return ["clean", ...at([dice.pick(STEADY)], 10)];
  const first = dice.whole(0, NOISES.length - 1);
  const soft = [NOISES[first], NOISES[(first + 2) % NOISES.length]].filter((n) => n !== undefined);
  return ["clean", ...at(NOISES, 10), ...(small ? [] : at(soft, 20))];
}

/** One clip in all its places. The packaged engine hears numbers beside it, of held-out voices, in the quiet and at 10 dB. */
export function own(clip: Clip, kitchen: Kitchen, listener: Listener, packaged: Packaged | null, extent: Extent): Own[] {
  return placesOf(clip, extent).map((where) => {
    const sound = kitchen.heard(clip.sound, where, clip.name);
    const { listened: _, ...answer } = listener.hear(sound, clip.text.asked);
    const { sort, asked } = clip.text;
    const heard: Own = { ...answer, clip: clip.name, trainedOn: clip.trainedOn, sort, asked, where: nameOf(where), truth: truthOf(clip) };
    const beside = packaged !== null && sort === "numbers" && !clip.trainedOn && (where === "clean" || where.dB === 10);
    return beside ? { ...heard, packaged: packaged.number(sound, asked) } : heard;
  });
}

const ASKED: readonly Asked[] = ["read back", "ate", "mg/dL", "units"];

const heardAs = (of: Foreign["of"], asked: Asked, sound: Float32Array, listener: Listener): Foreign => {
  const { kind, taken } = listener.hear(sound, asked);
  return { of, asked, kind, taken };
};

/** Television and noise alone, at four questions. */
export function* talkAndNoise(corpus: Corpus, kitchen: Kitchen, listener: Listener, extent: Extent, mine: Mine): Generator<Foreign> {
  const step = extent.small ? 2 : 1;
  for (const [i, { voice, sound }] of corpus.broadcast.entries()) {
    const name = `broadcast ${i} of ${voice}`;
    if (!wanted(name, extent) || !mine(name)) continue;
    for (const [piece, part] of pieces(sound, name).entries()) {
      for (const asked of ASKED) yield heardAs("broadcast", asked, kitchen.heard(part, "clean", `${name}, piece ${piece}`), listener);
    }
  }
  for (const noise of STEADY) {
    for (let i = 0; i < 30; i += step) {
      const name = `${noise} alone ${i}`;
      if (!wanted(name, extent) || !mine(name)) continue;
      for (const asked of ASKED) yield heardAs("noise", asked, kitchen.alone(noise, 0.7 + (i % 5) * 0.5, name), listener);
    }
  }
}

/** The answer of a clip where another question was asked, at which it means nothing; none if it means something everywhere. */
export function elsewhere(clip: Clip, kitchen: Kitchen, listener: Listener): Foreign[] {
  const words = clip.text.words.replaceAll(",", "");
  const others = (Object.keys(HEARINGS) as Asked[]).filter((q) => meaningOfText(words, q) === null);
  const asked = others[hash(`other question for ${clip.name}`) % Math.max(1, others.length)];
  return asked === undefined ? [] : [heardAs("another question", asked, kitchen.heard(clip.sound, "clean", clip.name), listener)];
}

/** A whole sentence as far as an ear listens, and a short piece such as an answer is long, which may begin and end in mid-word. */
function pieces(sound: Float32Array, name: string): Float32Array[] {
  const dice = new Dice(`pieces of ${name}`);
  const length = Math.round(dice.between(0.5, 1.6) * RATE);
  const at = dice.whole(0, Math.max(0, sound.length - length));
  return [sound.slice(0, 4 * RATE), sound.slice(at, at + length)];
}
