// One utterance in, one decision out. Pure: the same sound is always heard alike.
import { type Expected, expected, type Hearing, numberTrie } from "./answers.ts";
import { type Decision, decide, type Listened } from "./decide.ts";
import type { Lexicon } from "./lexicon.ts";
import type { Manifest, Weights } from "./manifest.ts";
import { type Matrix, melOf } from "./mel.ts";
import { type Net, netOf } from "./net.ts";
import { type Fit, fitsOf, freeFit } from "./score.ts";
import type { Trie } from "./trie.ts";

/** The members of the ear and what they know. */
export interface Ear {
  mel: (samples: Float32Array) => Matrix;
  members: readonly Net[];
  lexicon: Lexicon;
  numbers: Trie;
}

/** `weights` in the order of the manifest's members. Takes about a tenth of a second. */
export function openEar(manifest: Manifest, weights: readonly Weights[], lexicon: Lexicon): Ear {
  const members = manifest.members.flatMap((file, i) => {
    const own = weights[i];
    return own === undefined ? [] : [netOf(file, own)];
  });
  return { mel: melOf(manifest.mel), members, lexicon, numbers: numberTrie(lexicon) };
}

/** What was expected at the questions asked so far, for each ear: a question is seldom answered at the first utterance. */
const known = new WeakMap<Ear, WeakMap<Hearing, Expected>>();

/** Made at the first utterance, or before it where somebody asks: up to 50 ms for grams. */
export function expectedBy(ear: Ear, hearing: Hearing): Expected {
  const before = known.get(ear) ?? new WeakMap<Hearing, Expected>();
  known.set(ear, before);
  const what = before.get(hearing) ?? expected(hearing, ear.lexicon);
  before.set(hearing, what);
  return what;
}

/** `samples`: one utterance at 16 kHz, -1 to 1, with a little of the room before and after it. The same `hearing` object again costs nothing. */
export function hear(samples: Float32Array, hearing: Hearing, ear: Ear): Decision {
  const what = expectedBy(ear, hearing);
  return decide(listen(samples, what, ear), what);
}

/** How well everything fits, without a decision: for measuring. */
export function listen(samples: Float32Array, what: Expected, ear: Ear): Listened {
  const features = ear.mel(samples);
  if (features.rows === 0) return { together: [], each: [], free: { score: 0, phones: 0 } };
  const scores = ear.members.map((member) => member(features));
  const joint = mean(scores);
  const fits = (of: Matrix) =>
    [...fitsOf(of, what.phrases), ...(what.numbers ? fitsOf(of, ear.numbers) : [])].sort((a, b) => b.score - a.score);
  return { together: once(fits(joint)), each: scores.map((s) => fits(s)[0]?.key), free: freeFit(joint) };
}

/** The best of each key: a number with its unit and without it is one answer. */
function once(fits: readonly Fit[]): Fit[] {
  const seen = new Set<string>();
  return fits.filter(({ key }) => !seen.has(key) && seen.add(key));
}

function mean(scores: readonly Matrix[]): Matrix {
  const [first] = scores;
  if (first === undefined) throw new Error("an ear needs a member");
  const values = first.values.map((_, i) => scores.reduce((sum, s) => sum + (s.values[i] as number), 0) / scores.length);
  return { rows: first.rows, width: first.width, values };
}
