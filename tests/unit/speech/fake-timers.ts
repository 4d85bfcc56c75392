import type { Timers } from "#speech/ports.ts";

/** Timers that only move when the test says so; whatever hangs on promises is let through at every stop. */
export class FakeTimers implements Timers {
  now = 0;
  #queue: { at: number; order: number; action: () => void }[] = [];
  #order = 0;

  after(ms: number, action: () => void): () => void {
    const entry = { at: this.now + ms, order: this.#order++, action };
    this.#queue.push(entry);
    return () => {
      this.#queue = this.#queue.filter((e) => e !== entry);
    };
  }

  waiting(): number {
    return this.#queue.length;
  }

  async advance(ms: number): Promise<void> {
    const until = this.now + ms;
    await settle();
    for (;;) {
      const next = this.#queue.filter((e) => e.at <= until).sort((a, b) => a.at - b.at || a.order - b.order)[0];
      if (next === undefined) break;
      this.now = next.at;
      this.#queue = this.#queue.filter((e) => e !== next);
      next.action();
      await settle();
    }
    this.now = until;
  }
}

/** Lets everything that waits on promises go on. */
export async function settle(): Promise<void> {
  for (let i = 0; i < 20; i++) await Promise.resolve();
}
