import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutIn, type Line, pageAt, pagesOf } from "#ui/pages.ts";

const line = (top: number, bottom: number, sentence: number): Line => ({ top, bottom, sentence });

describe("turning words in pages", () => {
  it("fills a page with whole lines only", () => {
    const lines = [line(0, 30, 0), line(30, 60, 1), line(60, 90, 2)];
    expect(pagesOf(lines, 65)).toEqual([
      { top: 0, bottom: 60 },
      { top: 60, bottom: 90 },
    ]);
  });

  it("counts the sentences that no page holds whole", () => {
    const lines = [line(0, 30, 0), line(30, 60, 1), line(60, 90, 1)];
    expect([90, 60, 59, 29].map((height) => cutIn(lines, height))).toEqual([0, 0, 1, 2]);
  });

  it("keeps a sentence whole if a page can hold it", () => {
    const lines = [line(0, 30, 0), line(30, 60, 1), line(60, 90, 1)];
    expect(pagesOf(lines, 65)).toEqual([
      { top: 0, bottom: 30 },
      { top: 30, bottom: 90 },
    ]);
  });

  it("lets the air above the first sentence go where that makes it fit whole", () => {
    const lines = [line(6, 36, 0), line(36, 70, 0), line(70, 90, 1)];
    expect(pagesOf(lines, 65)).toEqual([
      { top: 6, bottom: 70 },
      { top: 70, bottom: 90 },
    ]);
  });

  it("breaks a sentence that no page can hold between its lines", () => {
    const lines = [line(0, 30, 0), line(30, 60, 0), line(60, 90, 0)];
    expect(pagesOf(lines, 65).map((page) => page.top)).toEqual([0, 60]);
  });

  it("gives a thing taller than a page a page of its own", () => {
    expect(pagesOf([line(0, 200, 0), line(200, 230, 1)], 65).map((page) => page.top)).toEqual([0, 200]);
  });

  it("gives one empty page for no words", () => {
    expect(pagesOf([], 65)).toEqual([{ top: 0, bottom: 0 }]);
  });

  it("finds the page on which something is read", () => {
    const pages = [
      { top: 0, bottom: 60 },
      { top: 60, bottom: 90 },
    ];
    expect(pageAt(pages, 59)).toBe(0);
    expect(pageAt(pages, 61)).toBe(1);
    expect(pageAt(pages, -3)).toBe(0);
  });

  it("shows every line whole on some page, whatever the words", () => {
    const heights = fc.array(fc.record({ high: fc.integer({ min: 5, max: 40 }), next: fc.boolean() }), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(heights, fc.integer({ min: 40, max: 200 }), (rows, room) => {
        let top = 0;
        let sentence = 0;
        const lines = rows.map(({ high, next }) => {
          sentence += next ? 1 : 0;
          const made = line(top, top + high, sentence);
          top += high;
          return made;
        });
        const pages = pagesOf(lines, room);
        for (const one of lines) expect(pages.some((page) => page.top <= one.top && one.bottom <= page.bottom)).toBe(true);
        for (const page of pages) expect(page.bottom - page.top).toBeLessThanOrEqual(room);
      }),
    );
  });
});
