// One screen of the person's side: five constant things, a heading with its sentences, and at most four actions.
// The actions never move or scroll away; words that do not fit above them are turned in pages.
import type { ComponentChildren } from "preact";
import { useContext, useLayoutEffect, useRef } from "preact/hooks";
import { Captions, type Sentence } from "./captions.tsx";
import { GuardContext } from "./guard-context.tsx";
import { Pager } from "./pager.tsx";
import { useScreenMark } from "./screen-mark.tsx";

export interface ScreenProps {
  title: string;
  /** A FiveThings row. */
  bar: ComponentChildren;
  /** What is spoken, sentence by sentence. */
  sentences: readonly Sentence[];
  /** Label of the button that turns to the next page of words. */
  moreLabel: string;
  /** BigButtons: two or fewer are best, four at most; the main one last, so that it stands bottom right. */
  actions?: ComponentChildren;
  /** Further words under the sentences. */
  children?: ComponentChildren;
  /** Something large beside the words (under them in portrait): a drawing, a countdown. */
  side?: ComponentChildren;
  banner?: ComponentChildren;
  /** Changes when the screen does; the title serves if left out. */
  screenKey?: string;
  /** The heading takes the focus at each change of screen (for screen readers and magnifiers). */
  focusHeading?: boolean;
  /** pad: the children are a NumberPad, which brings its own actions. */
  shape?: "plain" | "pad";
  /** Room is short and the sentences ask the question themselves: the heading is there for screen readers only. */
  hideTitle?: boolean;
  /** The actions have long names: their letters stay at the first size. */
  dense?: boolean;
  /** The actions are words as short as Yes and No: two of them stand side by side in portrait too. */
  brief?: boolean;
}

export function Screen(props: ScreenProps) {
  const { title, sentences, shape = "plain", screenKey = title, focusHeading = false } = props;
  const guard = useContext(GuardContext);
  const mark = useScreenMark();
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => {
    guard.screenChanged();
    if (focusHeading) heading.current?.focus({ preventScroll: true });
  }, [guard, screenKey, focusHeading]);
  const said = sentences.findIndex((sentence) => sentence.current);
  // On the pad screen room is short: the sentences ask the question, the heading is there for screen readers.
  const unseen = (shape === "pad" && sentences.length > 0) || props.hideTitle || repeats(title, sentences);
  const titleClass = unseen ? "for-ears" : "screen-title";
  return (
    <div
      class={`screen screen-${shape}${props.side ? " screen-sided" : ""}${props.dense ? " screen-dense" : ""}${props.brief ? " screen-brief" : ""}${mark ? " screen-marked" : ""}`}
    >
      {mark ? <header class="screen-mark">{mark}</header> : null}
      {props.bar}
      <main class="screen-main">
        <div class="screen-middle">
          {props.banner}
          <Pager moreLabel={props.moreLabel} pageKey={screenKey} showing={said}>
            <h1 ref={heading} tabIndex={-1} class={titleClass}>
              {title}
            </h1>
            <Captions sentences={sentences} />
            {shape === "plain" ? props.children : null}
          </Pager>
          {props.side ? <div class="screen-side">{props.side}</div> : null}
        </div>
        {shape === "pad" ? props.children : null}
        {props.actions ? <div class="screen-actions">{props.actions}</div> : null}
      </main>
    </div>
  );
}

const wordsOf = (text: string): string => ` ${(text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []).join(" ")} `;

/** A heading whose words come again in a sentence below it takes room and tells nothing. */
function repeats(title: string, sentences: readonly Sentence[]): boolean {
  return sentences.some(({ text }) => wordsOf(text).includes(wordsOf(title)));
}
