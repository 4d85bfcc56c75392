// How a person of this trial perceives. Shares from 0 to 1.

export interface Perception {
  /** Says the told number back instead of reading the pen's window, or "yes" to a question that names what is expected. */
  readonly echoes: number;
  /** Says yes to a number that sounds or looks like the meant one. */
  readonly yesToLike: number;
  /** Hears one call of the bell. */
  readonly hearsBell: number;
  /** Counts one click too many. */
  readonly miscounts: number;
  /** The ear takes other talk for an answer: the measured share of `npm run measure -- voice`, rounded up. */
  readonly earTakesOtherTalk: number;
  /** Remembers to tell the tablet of a dose taken without it. */
  readonly tellsLater: number;
  /** Does a thing because it is told at that moment, though it would have been forgotten. */
  readonly doesAsTold: number;
  /** Takes a thing for what it was expected to be, against what fingers, eyes and the tablet's words say. */
  readonly seesTheExpected: number;
  /** Holds on to a belief against what the tablet has just said. */
  readonly insists: number;
  /** Cuts a wait short when it is offered. */
  readonly impatient: number;
}

/** The person of the trial's design: imperfect in these ways, and truthful in all others. */
export const TRIED: Perception = {
  echoes: 0.3,
  yesToLike: 0.05,
  hearsBell: 0.9,
  miscounts: 0.05,
  earTakesOtherTalk: 0.02,
  tellsLater: 0.7,
  doesAsTold: 1,
  seesTheExpected: 0,
  insists: 0,
  impatient: 0.2,
};

/** Somebody who also overlooks, forgets and insists: our own choice, no source. */
export const HURRIED: Perception = { ...TRIED, doesAsTold: 0.95, seesTheExpected: 0.05, insists: 0.05 };

/** On paper: looks at the written page before injecting, sets the kitchen timer, and happens to see an own slip without being asked. Our own choice. */
export const LOOKS_AT_PAGE = 0.7;
export const SETS_TIMER = 0.9;
export const SEES_OWN_SLIP = 0.3;
