// One walk from the first tap to its end: whatever is asked is answered, a human moment later.
import { clockQuestion } from "#walk/offers.ts";
import { type Step, stepOf } from "#walk/state.ts";
import { card, ill, low, plate, reading, taken, wash } from "./answers-before.ts";
import { dial, eat, inject, pen, place, skin } from "./answers-needle.ts";
import type { Answer, Walker } from "./walker.ts";

/** The answer to each step, and the seconds before it: least, most. Own figures, no source. */
const ANSWERS: Readonly<Record<Step, readonly [Answer, number, number]>> = {
  taken: [taken, 4, 12],
  wash: [wash, 4, 10],
  reading: [reading, 25, 55],
  plate: [plate, 6, 15],
  card: [card, 5, 12],
  "eat first": [(w) => w.home.send({ do: "meal eaten first" }), 5, 10],
  pen: [pen, 9, 20],
  dial: [dial, 10, 25],
  place: [place, 6, 16],
  skin: [skin, 6, 12],
  inject: [inject, 6, 14],
  "put away": [(w) => w.home.send({ do: "put away" }), 15, 30],
  eat: [eat, 1, 3],
  done: [(w) => w.home.send({ do: "finish" }), 3, 8],
  low: [low, 20, 50],
  ill: [ill, 6, 15],
  mishap: [(w) => w.home.send({ do: "heard mishap advice" }), 8, 15],
  "needle question": [(w) => w.home.send({ do: "needle went in", answer: "yes" }), 8, 15],
};
/** More answers than this in one walk would be a circle: a defect. */
const MOST_ANSWERS = 120;

export function walkThrough(w: Walker): void {
  const { person } = w.habits;
  w.home.send(w.plan.meal ? { do: "open meal", person, meal: w.plan.meal } : { do: "open low", person });
  goThrough(w);
}

/** Whatever is asked in the walk that stands in front, up to its end. */
export function goThrough(w: Walker): void {
  const { person } = w.habits;
  for (let i = 0; i < MOST_ANSWERS; i++) {
    const { walk } = w.me;
    if (!walk) return;
    if (walk.left) w.home.send({ do: "set aside", person });
    else if (clockQuestion(w.home.state)) {
      w.pause(5, 12);
      w.home.send({ do: "agree clock" });
    } else {
      const [answer, least, most] = ANSWERS[stepOf(walk)];
      w.pause(least, most);
      answer(w, walk);
    }
  }
  throw new Error(`The demo's walk of ${person} goes in a circle`);
}
