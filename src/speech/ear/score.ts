// How well a sound fits each utterance of a trie: the best way of laying its phones over the frames (Viterbi over the CTC lattice, Graves et al. 2006).
import type { Matrix } from "./mel.ts";
import type { Trie, Utterance } from "./trie.ts";

export interface Fit extends Utterance {
  /** Logarithm of the probability of the best alignment; higher is better, at most 0. */
  score: number;
}

/** Ways that fall this far behind the best one of their frame are given up (natural logarithm); far beyond every margin that decides anything. */
const BEAM = 40;
const BLANK = 0;
const NEVER = Number.NEGATIVE_INFINITY;

/** `scores`: log probabilities, a row a frame. Best first, one a key; only what survived the beam. */
export function fitsOf(scores: Matrix, trie: Trie): Fit[] {
  const size = trie.phone.length;
  let inPhone = new Float64Array(size).fill(NEVER);
  let inBlank = new Float64Array(size).fill(NEVER);
  let nextPhone = new Float64Array(size).fill(NEVER);
  let nextBlank = new Float64Array(size).fill(NEVER);
  let active: number[] = [0];
  inBlank[0] = 0;
  for (let frame = 0; frame < scores.rows; frame++) {
    const row = frame * scores.width;
    const blank = scores.values[row + BLANK] as number;
    const touched: number[] = [];
    let best = NEVER;
    const reach = (node: number, phone: number, silence: number): void => {
      if (nextPhone[node] === NEVER && nextBlank[node] === NEVER) touched.push(node);
      if (phone > (nextPhone[node] as number)) nextPhone[node] = phone;
      if (silence > (nextBlank[node] as number)) nextBlank[node] = silence;
      best = Math.max(best, phone, silence);
    };
    for (const node of active) {
      const phone = inPhone[node] as number;
      const silence = inBlank[node] as number;
      const either = Math.max(phone, silence);
      const own = trie.phone[node] as number;
      reach(node, node === 0 ? NEVER : phone + (scores.values[row + own] as number), either + blank);
      for (const child of trie.children[node] as number[]) {
        const sound = trie.phone[child] as number;
        // The same phone twice in a row needs a silence between, or it would be one.
        const from = sound === own ? silence : either;
        if (from !== NEVER) reach(child, from + (scores.values[row + sound] as number), NEVER);
      }
    }
    for (const node of active) {
      inPhone[node] = NEVER;
      inBlank[node] = NEVER;
    }
    [inPhone, nextPhone] = [nextPhone, inPhone];
    [inBlank, nextBlank] = [nextBlank, inBlank];
    active = [];
    for (const node of touched) {
      if (Math.max(inPhone[node] as number, inBlank[node] as number) >= best - BEAM) active.push(node);
      else {
        inPhone[node] = NEVER;
        inBlank[node] = NEVER;
      }
    }
  }
  const byKey = new Map<string, Fit>();
  for (const node of active) {
    const score = Math.max(inPhone[node] as number, inBlank[node] as number);
    for (const end of trie.ends.get(node) ?? []) {
      if (score > (byKey.get(end.key)?.score ?? NEVER)) byKey.set(end.key, { ...end, score });
    }
  }
  return [...byKey.values()].sort((a, b) => b.score - a.score);
}

/** The best score of any row of phones at all, and how many phones that row has: what the sound is, if nothing is expected. */
export function freeFit(scores: Matrix): { score: number; phones: number } {
  let score = 0;
  let phones = 0;
  let before = BLANK;
  for (let frame = 0; frame < scores.rows; frame++) {
    let top = 0;
    for (let i = 1; i < scores.width; i++) {
      if ((scores.values[frame * scores.width + i] as number) > (scores.values[frame * scores.width + top] as number)) top = i;
    }
    score += scores.values[frame * scores.width + top] as number;
    if (top !== BLANK && top !== before) phones++;
    before = top;
  }
  return { score, phones };
}
