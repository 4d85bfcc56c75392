// What will be done in the simulated kitchen, in the order of the clock: one thing after another, as on one tablet.
import type { Home } from "./home.ts";

interface Act {
  at: number;
  /** Does not happen when it could only begin after this instant. */
  until: number;
  run(): void;
}

/** Seconds between two things done at the tablet at least. */
const BETWEEN = 40;

export class Agenda {
  private readonly acts: Act[] = [];

  constructor(private readonly home: Home) {}

  add(at: number, until: number, run: () => void): void {
    const before = this.acts.findIndex((act) => act.at > at);
    this.acts.splice(before < 0 ? this.acts.length : before, 0, { at, until, run });
  }

  /** Acts may add acts. One that comes while another is going on waits for it. */
  run(): void {
    for (let act = this.acts.shift(); act; act = this.acts.shift()) {
      const begins = Math.max(act.at, this.home.wall + BETWEEN * 1000);
      if (begins > act.until) continue;
      this.home.passTo(begins);
      act.run();
    }
  }
}
