import type { Timers } from "./ports.ts";

/** The browser's own timers. A hidden page slows them down (to one a minute), so only speech hangs on them, never a medical wait. */
export const browserTimers: Timers = {
  after(ms, action) {
    const id = setTimeout(action, ms);
    return () => clearTimeout(id);
  },
};
