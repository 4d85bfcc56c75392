// Where the lines of some words stand, so that a page never cuts one in half.
import type { Line } from "./pages.ts";

/** Every line of text and every drawing or control inside, in px from the top of the words. */
export function linesIn(words: HTMLElement): Line[] {
  const origin = words.getBoundingClientRect().top;
  const lines: Line[] = [];
  const add = (box: DOMRect, air = 0) => {
    if (box.height > 0 && box.width > 1) lines.push({ top: box.top + air - origin, bottom: box.bottom - origin });
  };
  const texts = document.createTreeWalker(words, NodeFilter.SHOW_TEXT);
  for (let node = texts.nextNode(); node !== null; node = texts.nextNode()) {
    const range = document.createRange();
    range.selectNodeContents(node);
    const air = airAbove(node.parentElement);
    for (const box of range.getClientRects()) add(box, air);
  }
  for (const whole of words.querySelectorAll("svg, img, button")) add(whole.getBoundingClientRect());
  return lines;
}

/** The box of a line is higher than its letters, even than capitals with accents. */
function airAbove(element: Element | null): number {
  return element ? 0.1 * Number.parseFloat(getComputedStyle(element).fontSize) : 0;
}

/** Px from the top of the words to this element. */
export function topIn(words: HTMLElement, element: Element): number {
  return element.getBoundingClientRect().top - words.getBoundingClientRect().top;
}
