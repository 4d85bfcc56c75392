// An ear in doubt asks again. Where the same answer fits best a second time at the same question, two sounds agree on it, and it may be proposed: a
// number, which is read back and agreed to as always (promise 8). It never decides by itself: what is taken with nothing asked after it needs an ear
// that is sure, and "yes" above all, because an ear that mistakes a voice mistakes it the same way twice.
import { soundAlike } from "#words/numbers.ts";
import { saidByDigit } from "./numbers.ts";
import type { Hearing } from "./ports.ts";
import { within } from "./range.ts";

/** An answer twice within a question and its reprompt; longer ago it is another try (our choice, no source). */
const FORGOTTEN_AFTER_MS = 30_000;

/** Remembers the last doubt. One a conversation. */
export class AskedTwice {
  #before: { question: string; guess: string; at: number } | null = null;

  /** What fitted best, in doubt, at this question, at this moment (ms); true if it is the same as the last time, and then all is forgotten. */
  same(question: string, guess: string, at: number): boolean {
    const before = this.#before;
    const same = before?.question === question && before.guess === guess && at - before.at <= FORGOTTEN_AFTER_MS;
    this.#before = same ? null : { question, guess, at };
    return same;
  }

  /** Something else happened: an answer, a touch. */
  forget(): void {
    this.#before = null;
  }
}

/**
 * The number that this one is mistaken for, 13 for 30, if it may be answered too: then somebody is asked which, however often it was heard.
 * Said as "one five" it sounds like no other.
 */
export function mistakenFor(said: string, value: string, range: Hearing["range"]): string | null {
  const partner = saidByDigit(said) ? null : soundAlike(value);
  return partner !== null && range && within(Number(partner), range) ? partner : null;
}
