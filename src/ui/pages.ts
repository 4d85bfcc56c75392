// Turning words that do not fit into pages that never cut a line in half. Pure: takes measures, gives page tops.

/** One line of text, or one other thing that must not be cut, in px from the top of all the words. */
export interface Line {
  top: number;
  bottom: number;
  /** Lines of one sentence have the same number: it is kept whole if a page can hold it. */
  sentence: number;
}

export interface Page {
  top: number;
  /** Bottom of the last whole line on this page. */
  bottom: number;
}

/**
 * height: room for one page, in px. A thing taller than a page gets a page of its own and is cut at its foot:
 * the caller then lets that page scroll. Always at least one page.
 */
export function pagesOf(lines: readonly Line[], height: number): Page[] {
  const pages: Page[] = [];
  for (const sentence of sentencesOf(lines)) {
    const { top, bottom } = spanOf(sentence);
    const page = pages.at(-1);
    if (page && bottom - page.top <= height) page.bottom = Math.max(page.bottom, bottom);
    else if (bottom - top <= height) pages.push({ top: topOfPage(pages, top, bottom, height), bottom });
    else for (const line of sentence) addLine(pages, line, height);
  }
  return pages.length === 0 ? [{ top: 0, bottom: 0 }] : pages;
}

/** The first page begins with the air above its words, where there is room for it. */
const topOfPage = (pages: readonly Page[], top: number, bottom: number, height: number): number =>
  pages.length === 0 && bottom <= height ? 0 : top;

function addLine(pages: Page[], line: Line, height: number): void {
  const page = pages.at(-1);
  if (page && line.bottom - page.top <= height) page.bottom = Math.max(page.bottom, line.bottom);
  else pages.push({ top: topOfPage(pages, line.top, line.bottom, height), bottom: line.bottom });
}

/** Sentences that no page of this height holds whole. */
export const cutIn = (lines: readonly Line[], height: number): number =>
  sentencesOf(lines).filter((sentence) => {
    const { top, bottom } = spanOf(sentence);
    return bottom - top > height;
  }).length;

/** The page on which something at this top is read. */
export function pageAt(pages: readonly Page[], top: number): number {
  const found = pages.findLastIndex((page) => page.top <= top);
  return Math.max(0, found);
}

function sentencesOf(lines: readonly Line[]): Line[][] {
  const groups: Line[][] = [];
  for (const line of [...lines].sort((a, b) => a.top - b.top || a.bottom - b.bottom)) {
    const group = groups.at(-1);
    if (group && group[0]?.sentence === line.sentence) group.push(line);
    else groups.push([line]);
  }
  return groups;
}

function spanOf(lines: readonly Line[]): { top: number; bottom: number } {
  return { top: Math.min(...lines.map((line) => line.top)), bottom: Math.max(...lines.map((line) => line.bottom)) };
}
