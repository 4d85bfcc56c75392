// What is shown when something given was not taken, for reasons that lie outside any walk.
import type { SayRefusal } from "./refusals.ts";

/** Two numbers in one breath, as they were heard. */
export const twoNumbers = (texts: readonly string[]): SayRefusal => ({
  heading: "Two numbers",
  got: `I heard ${texts.join(" and ")}.`,
  wrong: "Those are two numbers. Neither is used.",
  todo: "Say one number, or press it.",
});

export const NOT_SAVED: SayRefusal = {
  heading: "Not saved",
  got: "The tablet could not save that.",
  wrong: "Nothing was changed.",
  todo: "Write it on paper. Then start the tablet again.",
};
