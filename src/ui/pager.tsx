// Words above the actions. If they do not fit they are turned in pages by one large button; nothing scrolls, unless a
// single thing is taller than the room for it. The page with the sentence being spoken comes up by itself.
// Before any page is turned the heading gives up its room: a question must not wait behind a button while its answers stand below.
// A sentence too long for a page comes in smaller letters, if they keep it whole: half a sentence can say the opposite.
import type { ComponentChildren } from "preact";
import { useEffect, useLayoutEffect, useRef, useState } from "preact/hooks";
import { BigButton } from "./button.tsx";
import { firstLineIn, linesIn, showAll, showPage } from "./measure-lines.ts";
import { cutIn, type Page, pageAt, pagesOf } from "./pages.ts";

export interface PagerProps {
  moreLabel: string;
  /** A change goes back to the first page. */
  pageKey: string;
  /** Place of the sentence being spoken, or below 0. */
  showing: number;
  children: ComponentChildren;
}

/** How the words are set. lean: the heading is for screen readers only, and the kitchen's clock waits. tight: letters one size smaller, or the smallest. */
interface Setting {
  lean: boolean;
  tight: 0 | 1 | 2;
}
type Fit = Setting & ({ kind: "whole" } | { kind: "pages"; pages: readonly Page[] } | { kind: "scroll" });

const whole: Fit = { kind: "whole", lean: false, tight: 0 };

export function Pager({ moreLabel, pageKey, showing, children }: PagerProps) {
  const frame = useRef<HTMLDivElement>(null);
  const view = useRef<HTMLDivElement>(null);
  const words = useRef<HTMLDivElement>(null);
  const [fit, setFit] = useState<Fit>(whole);
  const [turned, setTurned] = useState(0);
  const pages = fit.kind === "pages" ? fit.pages : [];
  const at = Math.min(turned, Math.max(0, pages.length - 1));

  const shown = useRef<Page | undefined>(undefined);
  shown.current = pages[at];

  const place = () => {
    if (!frame.current || !words.current) return;
    const page = shown.current;
    const up = page ? showPage(words.current, page) : 0;
    if (!page) showAll(words.current);
    frame.current.style.setProperty("--turn", `${-up}px`);
    frame.current.style.setProperty("--page", page ? `${page.bottom - page.top}px` : "100%");
  };
  const measure = () => {
    if (!frame.current || !view.current || !words.current) return;
    const next = fitOf(frame.current, view.current, words.current);
    setFit((before) => (JSON.stringify(before) === JSON.stringify(next) ? before : next));
    place();
  };
  // Only when new words come, never after its own turn: a measure that feeds itself could go round for ever.
  useLayoutEffect(measure, [children]);
  useEffect(() => whenRoomChanges([frame.current, words.current], measure), []);
  useLayoutEffect(() => setTurned(0), [pageKey]);
  useLayoutEffect(place);
  const turnTo = (element: Element | null) => {
    if (!element || !words.current || pages.length === 0) return;
    showAll(words.current);
    setTurned(pageAt(pages, firstLineIn(words.current, element)));
    place();
  };
  useEffect(() => {
    if (showing >= 0) turnTo(words.current?.querySelector("[data-current]") ?? null);
  }, [showing, fit]);

  // Turned pages are moved, not scrolled: a browser that scrolls to what it focuses would show half of two pages.
  const unscroll = (event: Event & { currentTarget: HTMLElement }) => {
    if (fit.kind === "pages") event.currentTarget.scrollTop = 0;
  };
  const scrolls = fit.kind === "scroll" ? { tabIndex: 0 } : {};
  return (
    <div class="pager" ref={frame} data-fit={fit.kind} data-lean={fit.lean ? "yes" : undefined} data-tight={fit.tight || undefined}>
      <div class="pager-view" ref={view} onScroll={unscroll} {...scrolls}>
        <div class="pager-words" ref={words} onFocusIn={(event) => turnTo(event.target as Element)}>
          {children}
        </div>
      </div>
      {fit.kind === "pages" ? (
        <div class="pager-more">
          <BigButton role="bar" label={moreLabel} onPress={() => setTurned((at + 1) % pages.length)} />
        </div>
      ) : null}
    </div>
  );
}

/** Tries the whole room first, then without the heading; only then gives some of it to the button that turns pages. */
function fitOf(frame: HTMLElement, view: HTMLElement, words: HTMLElement): Fit {
  showAll(words);
  const { fit: before, lean, tight } = frame.dataset;
  const found = fitIn(frame, view, words);
  setWords(frame, { lean: lean !== undefined, tight: tight === "2" ? 2 : tight === "1" ? 1 : 0 });
  frame.dataset.fit = before ?? "whole";
  return found;
}

function setWords({ dataset }: HTMLElement, { lean, tight }: Setting): void {
  if (lean) dataset.lean = "yes";
  else delete dataset.lean;
  if (tight) dataset.tight = String(tight);
  else delete dataset.tight;
}

function fitIn(frame: HTMLElement, view: HTMLElement, words: HTMLElement): Fit {
  const isWhole = (set: Setting) => {
    setWords(frame, set);
    frame.dataset.fit = "whole";
    return view.clientHeight === 0 || words.scrollHeight <= view.clientHeight + 1;
  };
  if (isWhole(whole)) return whole;
  // Without a sentence the heading is all there is to read.
  const lean = words.querySelector(".caption") !== null;
  let best: { fit: Fit; cut: number } | null = null;
  for (const tight of [0, 1, 2] as const) {
    const set: Setting = { lean, tight };
    if (isWhole(set)) return { kind: "whole", ...set };
    const found = inPages(frame, view, words, set);
    if (best === null || found.cut < best.cut) best = found;
    if (best.cut === 0) break;
  }
  return best?.fit ?? whole;
}

/** cut: sentences that no page holds whole. */
function inPages(frame: HTMLElement, view: HTMLElement, words: HTMLElement, set: Setting): { fit: Fit; cut: number } {
  setWords(frame, set);
  frame.dataset.fit = "pages";
  const height = view.clientHeight;
  const lines = linesIn(words);
  const pages = pagesOf(lines, height);
  const cut = cutIn(lines, height);
  const tooTall = pages.some((page) => page.bottom - page.top > height + 1);
  if (tooTall) return { fit: { kind: "scroll", ...set }, cut };
  // One page even beside the button: only the air under the last line hangs over, and no button is needed.
  return { fit: pages.length === 1 ? { kind: "whole", ...set } : { kind: "pages", pages, ...set }, cut };
}

/** Measures again after a change of room or letters, on the next frame: never inside the observer's own turn. */
function whenRoomChanges(watched: readonly (Element | null)[], measure: () => void): () => void {
  if (typeof ResizeObserver === "undefined") return () => {};
  let frame = 0;
  const later = () => {
    cancelAnimationFrame(frame);
    frame = requestAnimationFrame(measure);
  };
  const observer = new ResizeObserver(later);
  for (const element of watched) if (element) observer.observe(element);
  document.fonts?.addEventListener("loadingdone", later);
  return () => {
    observer.disconnect();
    cancelAnimationFrame(frame);
    document.fonts?.removeEventListener("loadingdone", later);
  };
}
