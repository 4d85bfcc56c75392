// Many utterances, sharing their beginnings: one node a phone. Node 0 is the silence before anything is said.

export interface Utterance {
  /** What it stands for: two utterances with the same key are one answer said in two ways. */
  key: string;
  /** As it is written. */
  text: string;
}

export class Trie {
  /** The phone of each node, by its place in the net's list. */
  readonly phone: number[] = [0];
  readonly children: number[][] = [[]];
  /** Utterances that end at a node. */
  readonly ends = new Map<number, Utterance[]>();

  add(phones: readonly number[], utterance: Utterance): void {
    let node = 0;
    for (const phone of phones) {
      const next = this.children[node]?.find((child) => this.phone[child] === phone) ?? this.#grow(node, phone);
      node = next;
    }
    const here = this.ends.get(node) ?? [];
    if (!here.some((u) => u.key === utterance.key)) this.ends.set(node, [...here, utterance]);
  }

  #grow(node: number, phone: number): number {
    const next = this.phone.length;
    this.phone.push(phone);
    this.children.push([]);
    this.children[node]?.push(next);
    return next;
  }
}
