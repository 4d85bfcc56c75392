// How the walks go, in the drawer's words: counts for a keeper, and never a verdict on the person.
import { stepWords } from "#words/en/daybook/names.ts";

const times = (count: number): string => (count === 1 ? "once" : count === 2 ? "twice" : `${count} times`);
const walks = (count: number): string => (count === 1 ? "1 walk" : `${count} walks`);
const minutes = (value: number): string => {
  const whole = Math.max(1, Math.round(value));
  return whole === 1 ? "1 minute" : `${whole} minutes`;
};

export const WALKS_PAGE = {
  title: (name: string) => `How the walks go: ${name}`,
  intro: (days: number) => `The meal walks of the last ${days} days, counted from the book.`,
  opened: (opened: number, whole: number) => `${walks(opened)} begun, ${whole} walked to the end.`,
  stops: "Stopped on the way",
  noStops: "None was stopped on the way.",
  stop: (step: string, count: number) => `At ${stepWords(step)}: ${times(count)}.`,
  again: (step: string) => `Again and again at ${stepWords(step)}. Ask what is hard there.`,
  notSure: "Not sure",
  sure: "Nobody was unsure.",
  needle: (count: number) => `Not sure if insulin went in: ${times(count)}.`,
  taken: (count: number) => `Not sure if the dose was taken before: ${times(count)}.`,
  caught: "Slips that were caught",
  noSlips: "None was written down.",
  slip: (step: string, count: number) => `At ${stepWords(step)}: ${times(count)}.`,
  cut: "Cut short",
  noCut: "Nothing was cut short.",
  cutShort: {
    "washing skipped": "Hands not washed",
    "drying cut short": "Skin not dry",
    "needle out early": "Needle out before the count",
  },
  times: (what: string, count: number) => `${what}: ${times(count)}.`,
  pace: "How long a walk takes",
  tooFew: "Too few walks to tell.",
  takes: (now: number) => `To the needle, without waits: ${minutes(now)}, as a rule.`,
  took: (before: number, days: number) => `In the ${days} days before: ${minutes(before)}.`,
  growing: "Walks grow longer. Eyes, hands, ears or the tablet may be why.",
  noBlame: "Every slip here went no further. Blame nobody for it.",
  reading: "One moment. The book is being read.",
} as const;
