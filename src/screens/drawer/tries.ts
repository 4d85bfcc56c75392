// Wrong tries at a PIN or a printed code: counted together, kept on the tablet, so that no reload forgets them.
import { useEffect } from "preact/hooks";
import { afterWrong, NO_TRIES, pinWait, settled } from "#keeping/pin.ts";
import { DRAWER, waitWords } from "#words/en/drawer.ts";
import type { DrawerProps } from "./ports.ts";

interface Tries {
  /** What to say while the next try has to wait; null: now. */
  readonly waiting: string | null;
  /** Counts one; what to say if the next has to wait. */
  wrong(): string | null;
  right(): void;
}

const said = (ms: number): string | null => (ms > 0 ? DRAWER.waitFor(waitWords(ms)) : null);

export function useTries({ tries, onTries, now }: Pick<DrawerProps, "tries" | "onTries" | "now">): Tries {
  useEffect(() => {
    if (tries.at > now.wall) onTries(settled(tries, now.wall));
  }, [tries, now.wall]);
  return {
    waiting: said(pinWait(tries, now.wall)),
    wrong() {
      const next = afterWrong(tries, now.wall);
      onTries(next);
      return said(pinWait(next, now.wall));
    },
    right: () => onTries(NO_TRIES),
  };
}
