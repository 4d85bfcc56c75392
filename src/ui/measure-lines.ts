// Where the lines of some words stand, so that a page never cuts one in half.
import type { Line, Page } from "./pages.ts";

/** Words that only screen readers meet take no room on a page. */
const forEars = ".for-ears, [data-lean] .screen-title";
const blocks = "p, h1, h2, h3, li, dt, dd, td";

/** Every line of text and every drawing or control inside, in px from the top of the words. */
export function linesIn(words: HTMLElement): Line[] {
  const origin = words.getBoundingClientRect().top;
  const lines: Line[] = [];
  const sentences: (Element | null)[] = [];
  const add = (box: DOMRect, holder: Element | null) => {
    if (box.height <= 0 || box.width <= 1) return;
    if (!sentences.includes(holder)) sentences.push(holder);
    lines.push({ top: box.top - origin, bottom: box.bottom - origin, sentence: sentences.indexOf(holder) });
  };
  const texts = document.createTreeWalker(words, NodeFilter.SHOW_TEXT);
  for (let node = texts.nextNode(); node !== null; node = texts.nextNode()) {
    if (node.parentElement?.closest(forEars)) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    const holder = node.parentElement?.closest(blocks) ?? node.parentElement;
    for (const box of range.getClientRects()) add(box, holder);
  }
  for (const whole of words.querySelectorAll("svg, img, button")) add(whole.getBoundingClientRect(), whole);
  return lines;
}

/** Px from the top of the words to the middle of the first line of this element, or of the element if it has no text. */
export function firstLineIn(words: HTMLElement, element: Element): number {
  const range = document.createRange();
  range.selectNodeContents(element);
  const box = range.getClientRects()[0] ?? element.getBoundingClientRect();
  return (box.top + box.bottom) / 2 - words.getBoundingClientRect().top;
}

/** Puts every paragraph back in its place, for a measure of them all. */
export function showAll(words: HTMLElement): void {
  for (const block of words.querySelectorAll<HTMLElement>("[data-off]")) delete block.dataset.off;
}

/**
 * Leaves only the paragraphs of this page in sight; the others stay readable for screen readers but take no room, so that
 * nothing unseen lies under something seen. Returns by how many px the words are to move up for the page to start at the top.
 */
export function showPage(words: HTMLElement, page: Page): number {
  showAll(words);
  const all = [...words.querySelectorAll<HTMLElement>(blocks)];
  const topOf = (block: HTMLElement) => block.getBoundingClientRect().top - words.getBoundingClientRect().top;
  const spans = all.map((block) => ({ block, top: topOf(block), bottom: topOf(block) + block.getBoundingClientRect().height }));
  const first = spans.find((span) => span.bottom > page.top + 1);
  for (const { block, top, bottom } of spans) if (bottom <= page.top + 1 || top >= page.bottom - 1) block.dataset.off = "yes";
  return first ? page.top - first.top + topOf(first.block) : page.top;
}
