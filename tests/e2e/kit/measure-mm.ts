// Measures a page as an eye and a finger meet it: in millimetres on the glass, after layout, in a real browser.
// Everything is worked out inside the page; the page needs --mm on its root (see src/ui/tokens.css).
import type { Page } from "playwright-core";

export interface TextSize {
  text: string;
  /** Font size in mm. */
  mm: number;
  weight: number;
  italic: boolean;
}

/** The font size of every text node that can be seen. Empty means that nothing was seen: check for that first. */
export function textSizes(page: Page): Promise<TextSize[]> {
  return page.evaluate(() => {
    const mm = Number.parseFloat(getComputedStyle(document.documentElement).getPropertyValue("--mm"));
    const sizes: { text: string; mm: number; weight: number; italic: boolean }[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const parent = node.parentElement;
      const text = node.textContent?.trim() ?? "";
      if (!parent || text === "" || parent.closest("script, style, noscript, .for-ears, [data-off], [data-lean] .screen-title")) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      const box = range.getBoundingClientRect();
      if (box.width < 2 || box.height < 2 || !parent.checkVisibility({ visibilityProperty: true, opacityProperty: true })) continue;
      const style = getComputedStyle(parent);
      const size = Number.parseFloat(style.fontSize) / mm;
      sizes.push({ text, mm: size, weight: Number(style.fontWeight), italic: style.fontStyle !== "normal" });
    }
    return sizes;
  });
}

export interface Target {
  name: string;
  /** Visible box in mm from the top left of the glass. */
  left: number;
  top: number;
  width: number;
  height: number;
  /** Distance in mm to the nearest other target; Infinity if it is alone. */
  gap: number;
  nearest: string;
  /** Distance in mm from the nearest edge of the glass; below 0 if it hangs over. */
  edge: number;
  /** False if something else lies over the middle of the box: it could not be tapped. */
  free: boolean;
}

/** Every control that can be seen, with its neighbour. */
export function targets(page: Page): Promise<Target[]> {
  return page.evaluate(() => {
    const mm = Number.parseFloat(getComputedStyle(document.documentElement).getPropertyValue("--mm"));
    const query = "button, a[href], input, select, textarea, summary, [role=button], [tabindex='0']";
    const seen = [...document.querySelectorAll<HTMLElement>(query)].filter((element) => {
      const box = element.getBoundingClientRect();
      return box.width > 1 && box.height > 1 && element.checkVisibility({ visibilityProperty: true, opacityProperty: true });
    });
    // Methods, not arrows in constants: some builders wrap those in a helper that the page does not have.
    const help = {
      name(element: HTMLElement) {
        const words = element.querySelector(".button-label") ?? element;
        return (element.getAttribute("aria-label") ?? words.textContent ?? "").trim() || element.id || element.tagName.toLowerCase();
      },
      apart(aLow: number, aHigh: number, bLow: number, bHigh: number) {
        return Math.max(0, bLow - aHigh, aLow - bHigh);
      },
    };
    return seen.map((element) => {
      const box = element.getBoundingClientRect();
      let gap = Number.POSITIVE_INFINITY;
      let nearest = "";
      for (const other of seen) {
        if (other === element || other.contains(element) || element.contains(other)) continue;
        const to = other.getBoundingClientRect();
        const distance = Math.hypot(help.apart(box.left, box.right, to.left, to.right), help.apart(box.top, box.bottom, to.top, to.bottom));
        if (distance < gap) {
          gap = distance;
          nearest = help.name(other);
        }
      }
      const hit = document.elementFromPoint((box.left + box.right) / 2, (box.top + box.bottom) / 2);
      return {
        name: help.name(element),
        left: box.left / mm,
        top: box.top / mm,
        width: box.width / mm,
        height: box.height / mm,
        gap: gap / mm,
        nearest,
        edge: Math.min(box.left, box.top, innerWidth - box.right, innerHeight - box.bottom) / mm,
        free: hit !== null && (element.contains(hit) || hit === element),
      };
    });
  });
}

/**
 * What cannot be read whole: text that hangs out of its control, out of the glass, or out of a part that hides the rest,
 * and a page that scrolls sideways. Words waiting on a later page of a pager are not counted: they are one press away.
 */
export function clipped(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const faults: string[] = [];
    const root = document.documentElement;
    if (root.scrollWidth > innerWidth + 1) faults.push(`page is ${root.scrollWidth - innerWidth} px wider than the glass`);
    const fitsDown = root.scrollHeight > innerHeight + 1;
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const parent = node.parentElement;
      const text = node.textContent?.trim() ?? "";
      if (
        !parent ||
        text === "" ||
        parent.closest("script, style, noscript, .for-ears, [data-lean] .screen-title, [data-fit=pages]") ||
        !parent.checkVisibility()
      )
        continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      const box = range.getBoundingClientRect();
      if (box.left < -1 || box.right > innerWidth + 1) faults.push(`"${text}" leaves the glass sideways`);
      if (!fitsDown && (box.top < -1 || box.bottom > innerHeight + 1)) faults.push(`"${text}" leaves the glass`);
      const holder = parent.closest("button");
      const frame = holder?.getBoundingClientRect();
      // A line box is higher than its letters, so only a real overlap of the frame counts.
      if (frame && (box.left < frame.left - 1 || box.right > frame.right + 1 || box.bottom > frame.bottom + 4 || box.top < frame.top - 4))
        faults.push(`"${text}" hangs out of its button`);
      for (let outer: HTMLElement | null = parent; outer; outer = outer.parentElement) {
        const flow = getComputedStyle(outer);
        const hides = flow.overflowY === "hidden" || flow.overflowY === "clip";
        if (hides && box.bottom > outer.getBoundingClientRect().bottom + 4) faults.push(`"${text}" is cut off below`);
      }
    }
    const lines: { text: string; box: DOMRect }[] = [];
    const again = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = again.nextNode(); node !== null; node = again.nextNode()) {
      const text = node.textContent?.trim() ?? "";
      const parent = node.parentElement;
      if (
        !parent ||
        text === "" ||
        parent.closest("script, style, noscript, .for-ears, [data-lean] .screen-title, [data-fit=pages], [data-fit=scroll]")
      )
        continue;
      if (!parent.checkVisibility()) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const box of range.getClientRects()) if (box.width > 2) lines.push({ text, box });
    }
    for (const [place, one] of lines.entries())
      for (const other of lines.slice(place + 1)) {
        const across = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
        // The box of a line is an eighth higher than letters without accents: lines set close share that air.
        const top = Math.max(one.box.top + 0.13 * one.box.height, other.box.top + 0.13 * other.box.height);
        const down = Math.min(one.box.bottom, other.box.bottom) - top;
        if (across > 3 && down > 3) faults.push(`"${one.text}" and "${other.text}" run into each other`);
      }
    const overlapping = [...document.querySelectorAll<HTMLElement>("button")].filter((button) => button.checkVisibility());
    for (const [place, one] of overlapping.entries())
      for (const other of overlapping.slice(place + 1)) {
        const a = one.getBoundingClientRect();
        const b = other.getBoundingClientRect();
        if (a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom - 1 && b.top < a.bottom - 1)
          faults.push(`"${one.textContent}" and "${other.textContent}" overlap`);
      }
    return faults;
  });
}
