// From fits to a decision. An ear that is not sure asks again or turns away: it never guesses.
import { soundAlike } from "#words/numbers.ts";
import { type Expected, numberOfKey } from "./answers.ts";
import type { Fit } from "./score.ts";

export type Decision =
  | { kind: "understood"; text: string }
  /** One of these, or a like-sounding pair: the person is asked which. */
  | { kind: "ask again"; texts: string[] }
  | { kind: "turned away"; why: "nothing said" | "other speech" | "another answer" };

/** All in natural logarithms, summed over the utterance, except the gap, which is a phone. Tuned on two thirds of the spoken test corpus (`npm run measure -- voice`). */
export const LIMITS = {
  /** A word must fit this much better than any other word. */
  wordMargin: 2,
  numberMargin: 3,
  /**
   * Any answer must fit this much better than the question's no: once a no beside dishes was heard as a yes. For tuning, 2,224 times "no" beside a noise at
   * 10 dB fell behind "yes" by 4.2 at most; of 2,112 times "yes" this doubts 14, 12 of them by the tap.
   */
  refusalMargin: 4.5,
  /** Short of the margin, but this near to it, the guesses are worth a question. */
  askMargin: 0.5,
  /** How much worse than free speech an answer may fit, a phone: more is somebody else's talk. */
  gapPerPhone: 1.2,
  /** Fewer phones than this are a cough or a cup. */
  fewestPhones: 1,
};

export interface Listened {
  /** Fits of all members together, best first. */
  together: readonly Fit[];
  /** The best key of each member alone. */
  each: readonly (string | undefined)[];
  free: { score: number; phones: number };
}

/** What a listener does with one utterance. `shown` limits nothing: it is what was expected. */
export function decide({ together, each, free }: Listened, expected: Pick<Expected, "answers" | "refuses">, limits = LIMITS): Decision {
  const [best, second] = together;
  if (free.phones < limits.fewestPhones || best === undefined) return { kind: "turned away", why: "nothing said" };
  if ((free.score - best.score) / Math.max(3, free.phones) > limits.gapPerPhone) return { kind: "turned away", why: "other speech" };
  if (!expected.answers(best.key)) return { kind: "turned away", why: "another answer" };
  const value = numberOfKey(best.key);
  const margin = second === undefined ? Number.POSITIVE_INFINITY : best.score - second.score;
  const agreed = each.every((key) => key === best.key);
  const needed = value === null ? limits.wordMargin : limits.numberMargin;
  // "No" wins (promise 8): where it may have been said, nothing else is taken.
  const no = expected.refuses(best.key) ? undefined : together.find((fit) => expected.refuses(fit.key));
  if (no !== undefined && best.score - no.score < limits.refusalMargin) return again([best, no], expected, true);
  if (margin < needed || !agreed) return again([best, second], expected, margin >= limits.askMargin || agreed);
  // A teen and its ten sound alike in every voice that was measured: where both are possible, the person says which (promise: read-back).
  // "One five" is the answer to that question and sounds like no ten; asked about again, it would never be taken.
  const partner = value === null || inDigits(best.text) ? null : soundAlike(String(value));
  if (partner !== null && expected.answers(`number ${partner}`)) {
    const other = together.find((fit) => fit.key === `number ${partner}`)?.text ?? partner;
    return { kind: "ask again", texts: [best.text, other] };
  }
  return { kind: "understood", text: best.text };
}

const DIGIT_BY_DIGIT =
  /^(zero|one|two|three|four|five|six|seven|eight|nine)( (zero|one|two|three|four|five|six|seven|eight|nine))+( point (zero|one|two|three|four|five|six|seven|eight|nine))?( [a-z]+)?$/;
const inDigits = (text: string): boolean => DIGIT_BY_DIGIT.test(text);

function again(fits: readonly (Fit | undefined)[], expected: Pick<Expected, "answers">, worthAsking: boolean): Decision {
  const texts = fits.flatMap((fit) => (fit !== undefined && expected.answers(fit.key) ? [fit.text] : []));
  return worthAsking && texts.length > 0 ? { kind: "ask again", texts } : { kind: "turned away", why: "another answer" };
}
