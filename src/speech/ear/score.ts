// How well a sound fits each utterance of a trie: the best way of laying its phones over the frames (Viterbi over the CTC lattice, Graves et al. 2006).
import type { Matrix } from "./mel.ts";
import type { Trie, Utterance } from "./trie.ts";

export interface Fit extends Utterance {
  /** Logarithm of the probability of the best alignment; higher is better, at most 0. */
  score: number;
}

/** Ways that fall this far behind the best one of their frame are given up (natural logarithm); well beyond every margin that decides anything. */
const BEAM = 22;
const BLANK = 0;
const NEVER = Number.NEGATIVE_INFINITY;

/** The ways that are alive after a frame: for each node, the best score in its phone and in the silence after it. */
class Alive {
  readonly inPhone: Float64Array;
  readonly inBlank: Float64Array;
  readonly nodes: Int32Array;
  count = 0;

  constructor(size: number) {
    this.inPhone = new Float64Array(size).fill(NEVER);
    this.inBlank = new Float64Array(size).fill(NEVER);
    this.nodes = new Int32Array(size);
  }

  phone(node: number, score: number): void {
    if (score === NEVER) return;
    this.#touch(node);
    if (score > (this.inPhone[node] as number)) this.inPhone[node] = score;
  }

  blank(node: number, score: number): void {
    this.#touch(node);
    if (score > (this.inBlank[node] as number)) this.inBlank[node] = score;
  }

  /** Gives up what fell behind. */
  prune(): void {
    let best = NEVER;
    for (let i = 0; i < this.count; i++) best = Math.max(best, this.best(this.nodes[i] as number));
    let kept = 0;
    for (let i = 0; i < this.count; i++) {
      const node = this.nodes[i] as number;
      if (this.best(node) >= best - BEAM) this.nodes[kept++] = node;
      else this.#forget(node);
    }
    this.count = kept;
  }

  clear(): void {
    for (let i = 0; i < this.count; i++) this.#forget(this.nodes[i] as number);
    this.count = 0;
  }

  best(node: number): number {
    return Math.max(this.inPhone[node] as number, this.inBlank[node] as number);
  }

  #touch(node: number): void {
    if (this.inPhone[node] === NEVER && this.inBlank[node] === NEVER) this.nodes[this.count++] = node;
  }

  #forget(node: number): void {
    this.inPhone[node] = NEVER;
    this.inBlank[node] = NEVER;
  }
}

/** `scores`: log probabilities, a row a frame. Best first, one a key; only what survived the beam. */
export function fitsOf(scores: Matrix, trie: Trie): Fit[] {
  let now = new Alive(trie.phone.length);
  let next = new Alive(trie.phone.length);
  now.blank(0, 0);
  for (let frame = 0; frame < scores.rows; frame++) {
    const row = frame * scores.width;
    const blank = scores.values[row + BLANK] as number;
    for (let i = 0; i < now.count; i++) {
      const node = now.nodes[i] as number;
      const own = trie.phone[node] as number;
      const silence = now.inBlank[node] as number;
      const either = now.best(node);
      next.phone(node, (now.inPhone[node] as number) + (scores.values[row + own] as number));
      next.blank(node, either + blank);
      for (const child of trie.children[node] as number[]) {
        const sound = trie.phone[child] as number;
        // The same phone twice in a row needs a silence between, or it would be one.
        next.phone(child, (sound === own ? silence : either) + (scores.values[row + sound] as number));
      }
    }
    now.clear();
    [now, next] = [next, now];
    now.prune();
  }
  const byKey = new Map<string, Fit>();
  for (const node of now.nodes.subarray(0, now.count)) {
    const score = now.best(node);
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
