// A telephone number never breaks across lines, and stands in groups that are read at a glance. Nor does a count with its half.
import type { ComponentChildren } from "preact";

/** Seven digits or more, with the marks people put between them: longer than any date, time or amount here. */
const TELEPHONE = /(?<!\d)\+?\(?\d(?:(?:\) | \(|[ ().-])?\d){6,}(?!\d)/;
/** "five and a half": "and a half" on the next page is another count. Longer words would hang over the edge at the largest letters. */
const HALF = /(?<![a-z-])[a-z]{3,7} and a half\b/;
const NUMBER = new RegExp(`${TELEPHONE.source}|${HALF.source}`, "g");

/** From the end: four, then threes. Groups that were typed stay as they are. */
function groupsOf(number: string): string[] {
  if (!/^\+?\d+$/.test(number)) return [number];
  const groups = [number.slice(-4)];
  for (let rest = number.slice(0, -4); rest !== ""; rest = rest.slice(0, -3)) groups.unshift(rest.slice(-3));
  return groups;
}

/** The same words. Nothing is added to them: what is read aloud or copied has no gaps that were not typed. */
export function wholeNumbers(text: string): ComponentChildren {
  const parts: ComponentChildren[] = [];
  let from = 0;
  for (const found of text.matchAll(NUMBER)) {
    const groups = groupsOf(found[0]);
    parts.push(
      text.slice(from, found.index),
      <span class="whole-number">{groups.length === 1 ? groups : groups.map((group, place) => <span key={place}>{group}</span>)}</span>,
    );
    from = found.index + found[0].length;
  }
  return parts.length === 0 ? text : [...parts, text.slice(from)];
}
