// A script that is fetched once the first screen stands, and that lies in memory before anything that needs it begins.
import { type ReadonlySignal, signal } from "@preact/signals";
import type { Timers } from "#speech/ports.ts";

/** Our choice, no source: short enough that nobody gives up, long enough for a weak network. */
export const AGAIN_MS = 2000;

export interface Held<Part> {
  /** What was fetched; null until it is there. */
  readonly here: ReadonlySignal<Part | null>;
  /** Fetches it once, however often it is asked, and tries again until it comes. Never rejects. */
  hold(): Promise<Part>;
  /** The same, where somebody waits for it. */
  need(): Promise<Part>;
  /** Somebody waits for it. */
  readonly needed: ReadonlySignal<boolean>;
}

/** load: the dynamic imports. A browser that remembers a failure for as long as the page is open comes on by a reload alone. */
export function held<Part>(load: () => Promise<Part>, timers: Timers): Held<Part> {
  const here = signal<Part | null>(null);
  let coming: Promise<Part> | null = null;
  const fetched = (): Promise<Part> =>
    load().then(
      (part) => {
        here.value = part;
        return part;
      },
      () => new Promise<void>((done) => timers.after(AGAIN_MS, done)).then(fetched),
    );
  const needed = signal(false);
  const hold = (): Promise<Part> => {
    coming ??= fetched();
    return coming;
  };
  return {
    here,
    needed,
    hold,
    async need() {
      needed.value = here.value === null;
      const part = await hold();
      needed.value = false;
      return part;
    },
  };
}
