// One leaf of the book: a heading, words that can be moved up and down by large buttons, and the buttons that turn the leaves.
import type { ComponentChildren } from "preact";
import { useContext, useEffect, useLayoutEffect, useRef, useState } from "preact/hooks";
import { useBack, useHearable } from "#screens/shared/hear.ts";
import { BigButton } from "#ui/button.tsx";
import { GuardContext } from "#ui/guard-context.tsx";
import { DAY_BOOK } from "#words/en/daybook.ts";

export interface LeafButton {
  label: string;
  press(): void;
  twoLines?: boolean;
  /** The one that can do no harm. */
  safe?: boolean;
}

interface LeafProps {
  title: string;
  /** Changes when another leaf comes up: it then begins at its top. */
  leafKey: string;
  /** Beside the heading. */
  top?: ComponentChildren;
  /** Above the buttons that move the words. */
  aside?: LeafButton;
  /** Where this leaf was opened. */
  onBack(): void;
  /** They turn the leaves. */
  buttons: readonly LeafButton[];
  /** What is said when this leaf comes up. */
  lines: readonly string[];
  children: ComponentChildren;
}

/** Less than a whole view, so that a line that was cut comes up whole. */
const SHARE = 0.8;

/** Whoever has keys only must be able to stand in what scrolls (WCAG 2.1.1). */
const byKeys = { tabIndex: 0 };

export function Leaf({ title, leafKey, top, aside, onBack, buttons, lines, children }: LeafProps) {
  useHearable({ title, lines, buttons: aside ? [...buttons, aside] : buttons }, false);
  useBack(onBack);
  const guard = useContext(GuardContext);
  const heading = useRef<HTMLHeadingElement>(null);
  const view = useRef<HTMLDivElement>(null);
  const [tall, setTall] = useState(false);
  useLayoutEffect(() => {
    guard.screenChanged();
    heading.current?.focus();
    if (view.current) view.current.scrollTop = 0;
  }, [guard, leafKey]);
  useEffect(() => {
    const element = view.current;
    if (element) setTall(element.scrollHeight > element.clientHeight + 1);
  });
  const move = (way: 1 | -1) => view.current?.scrollBy({ top: way * SHARE * view.current.clientHeight });
  return (
    <main class="leaf">
      <div class="leaf-top">
        <h1 ref={heading} tabIndex={-1}>
          {title}
        </h1>
        {top ? <div class="leaf-people">{top}</div> : null}
      </div>
      <section class="leaf-view" ref={view} aria-label={title} {...byKeys}>
        {children}
      </section>
      <div class="leaf-aside">
        {aside ? <Turn {...aside} /> : null}
        {tall ? (
          <>
            <BigButton role="bar" label={DAY_BOOK.up} twoLines onPress={() => move(-1)} />
            <BigButton role="bar" label={DAY_BOOK.down} twoLines onPress={() => move(1)} />
          </>
        ) : null}
      </div>
      <nav class="leaf-actions" aria-label={DAY_BOOK.title}>
        {buttons.map((button) => (
          <Turn key={button.label} {...button} />
        ))}
      </nav>
    </main>
  );
}

function Turn({ press, ...button }: LeafButton) {
  return <BigButton role="bar" {...button} onPress={press} />;
}
