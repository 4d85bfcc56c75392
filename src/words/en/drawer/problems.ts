// What is the matter with a typed answer: what we got, what is wrong, what to do. Three short sentences.

import { STRIP_LEVELS } from "#events/ill-rules.ts";
import type { Difference, Leaf } from "#keeping/differences.ts";
import type { Problem } from "#keeping/problem.ts";
import { dateInWords } from "#words/en/when.ts";
import { optionName, stripName, unitWords } from "./options.ts";

const PIN: Readonly<Record<Extract<Problem, { why: "pin" }>["pin"], string>> = {
  empty: "There is no PIN yet. It opens the drawer. Type 4 to 8 digits.",
  "not digits": "The PIN holds other signs. Only digits can be used. Type 4 to 8 digits.",
  "too short": "The PIN was read. It has fewer than 4 digits. Type a longer one.",
  "too long": "The PIN was read. It has more than 8 digits. Type a shorter one.",
  "easily guessed": "The PIN was read. It is easy to guess. Type another one.",
  "not the same": "Two PINs were read. They are not the same. Type the PIN again.",
};

export function sayProblem(p: Problem): string {
  const got = p.got === "" ? "Nothing is typed here yet." : `You typed ${p.got.length > 40 ? "a long text" : p.got}.`;
  switch (p.why) {
    case "empty":
      return `${got} This answer is needed. Type it from the paper.`;
    case "not chosen":
      return "Nothing is chosen here yet. This answer is needed. Choose one.";
    case "not a number":
      return `${got} That is not a number. Type digits only.`;
    case "too many decimals":
      return p.most === 0
        ? `${got} Only whole numbers fit here. Type it without a point.`
        : `${got} That has too many digits after the point. Type at most ${p.most}.`;
    case "too small":
      return `${got} Here numbers begin at ${p.least}. Look at the paper again.`;
    case "too large":
      return `${got} Here numbers go up to ${p.most}. Look at the paper again.`;
    case "not a date":
      return `${got} That is no day. Type it like 3 June 2026.`;
    case "two dates":
      return `${got} That could be two days. Write the month as a word.`;
    case "date has passed":
      return `${got} That day has passed. Take a pen that is still good.`;
    case "date is to come":
      return `${got} That day is still to come. Look at the date again.`;
    case "not a time":
      return `${got} That is no clear time. Type it like 9:30 pm or 21:30.`;
    case "too long":
      return `${got} Here ${p.most} letters fit. Type it shorter.`;
    case "taken":
      return `${got} ${p.by} has that already. Choose another.`;
    case "upside down":
      return `${got} It is not above the number before. Look at both again.`;
    case "open too long":
      return `${got} The pen lasts fewer days than that. Take a new pen.`;
    case "not a telephone number":
      return `${got} That cannot be dialed. Type digits and spaces.`;
    case "pin":
      return PIN[p.pin];
  }
}

/** Of blood a number, of a strip the place of a field: a difference does not say which. */
function sayKetoneLine(value: number): string {
  const level = STRIP_LEVELS[value];
  return level === undefined ? `${value} mmol/L` : `${value} mmol/L, or on a strip: ${stripName(level)}`;
}

/** One side of a difference, in words: "blank", "6 units", "As usual". */
export function sayLeaf(field: string, value: Leaf): string {
  if (value === null) return "blank";
  if (typeof value === "boolean") return value ? "Yes" : "No";
  if (/^(validFrom|reviewBy|validUntil)$/.test(field)) return dateInWords(String(value));
  if (field.endsWith("spacingMinutes") || field.endsWith("windowMinutes")) return `${Math.round((Number(value) / 60) * 100) / 100} hours`;
  if (typeof value === "number" && /^ketones\.lines\.\d+\.from$/.test(field)) return sayKetoneLine(value);
  if (typeof value === "number") return `${value} ${unitWords(field, "")}`.trim();
  return optionName(field, value);
}

/** Fields nobody typed: worked out from another field that differs too. */
export const shownDifferences = (all: readonly Difference[]): Difference[] =>
  all.filter((d) => {
    const beside = (name: string) => d.field.replace(/insulin\.id$/, `insulin.${name}`);
    return !d.field.endsWith("insulin.id") || !all.some((o) => o.field === beside("name") || o.field === beside("unitsPerMl"));
  });
