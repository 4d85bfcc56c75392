// What a screen says. The lines are shown and spoken, the same words; the title is only shown.
export interface Say {
  title: string;
  /** One sentence each; the last is the question or the act. */
  lines: string[];
  /** The familiar pace, after 20 clean walks: same step, fewer words. */
  short?: string[];
  /** The one number of the screen, very large. */
  big?: { value: string; unit: string };
}

/** The name of an answer: as printed on its button, and every phrase the ear takes for it. */
export interface Label {
  shown: string;
  said: readonly string[];
}

export const label = (shown: string, ...more: string[]): Label => ({ shown, said: [shown.toLowerCase(), ...more] });
