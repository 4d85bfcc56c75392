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

/** Rows of a hundredth of a second. With a half or 0.7 s the ear heard no better. */
const QUIET = 35;

/** `weights` in the order of the manifest's members. Takes about a tenth of a second. */
export function openEar(manifest: Manifest, weights: readonly Weights[], lexicon: Lexicon): Ear {
  const members = manifest.members.flatMap((file, i) => {
    const own = weights[i];
    return own === undefined ? [] : [netOf(file, own)];
  });
  return { mel: melOf(manifest.mel, QUIET), members, lexicon, numbers: numberTrie(lexicon) };
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
  const fits = scores.map((of) =>
    once([...fitsOf(of, what.phrases), ...(what.numbers ? fitsOf(of, ear.numbers) : [])].sort((a, b) => b.score - a.score)),
  );
  const free = scores.map(freeFit);
  return {
    together: agreed(fits),
    each: fits.map(([best]) => best?.key),
    free: { score: average(free.map((f) => f.score)), phones: Math.max(...free.map((f) => f.phones)) },
  };
}

/**
 * The members' scores of each key, averaged. Not of each frame: two members put the same phone into different frames, and a mean of their frames
 * fits neither. What one member gave up on is as bad as the worst that it kept.
 */
function agreed(fits: readonly (readonly Fit[])[]): Fit[] {
  const scores = fits.map((list) => new Map(list.map((fit) => [fit.key, fit.score])));
  const worst = fits.map((list) => list.at(-1)?.score ?? Number.NEGATIVE_INFINITY);
  const all = once(fits.flat());
  return all
    .map((fit) => ({ ...fit, score: average(scores.map((of, i) => of.get(fit.key) ?? (worst[i] as number))) }))
    .sort((a, b) => b.score - a.score);
}

const average = (all: readonly number[]): number => all.reduce((sum, v) => sum + v, 0) / all.length;

/** The best of each key: a number with its unit and without it is one answer. */
function once(fits: readonly Fit[]): Fit[] {
  const seen = new Set<string>();
  return fits.filter(({ key }) => !seen.has(key) && seen.add(key));
}
