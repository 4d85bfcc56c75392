// Many choices, a screenful at a time. Nothing scrolls: two large buttons turn the pages, round and round, and never move or vanish.
import type { ComponentChildren } from "preact";
import { useEffect, useId, useState } from "preact/hooks";
import { BigButton } from "./button.tsx";
import "./pick-list.css";

export interface PickItem {
  id: string;
  label: string;
}

interface PickListProps {
  heading: string;
  /** Level of the heading on the page it stands in; 2 if left out. */
  headingLevel?: 1 | 2 | 3;
  items: readonly PickItem[];
  onPick: (id: string) => void;
  /** Items on one page; 1 or more. */
  pageSize: number;
  /** rows: words, one or two abreast. tiles: letters, many abreast. */
  shape?: "rows" | "tiles";
  moreLabel: string;
  beforeLabel: string;
  /** "Page 2 of 5" in the reader's words; not asked for where one page holds everything. */
  pageWords: (page: number, pages: number) => string;
  /** Told after each turn, so that the new page can be said. */
  onTurn?: (labels: readonly string[]) => void;
  /** What is to be read before choosing. */
  children?: ComponentChildren;
  /** Further buttons beside those that turn the pages. */
  actions?: ComponentChildren;
}

export function PickList(props: PickListProps) {
  const { heading, headingLevel = 2, items, onPick, pageSize, shape = "rows" } = props;
  const [turned, setTurned] = useState(0);
  const title = useId();
  const Heading = `h${headingLevel}` as const;
  const pages = Math.max(1, Math.ceil(items.length / pageSize));
  const page = Math.min(turned, pages - 1);
  const shownOn = (at: number) => items.slice(at * pageSize, (at + 1) * pageSize);

  // Another list under the same roof begins at its own first page.
  const which = items.map((item) => item.id).join("\n");
  useEffect(() => setTurned(0), [which]);

  const turn = (by: number) => {
    const next = (page + by + pages) % pages;
    setTurned(next);
    props.onTurn?.(shownOn(next).map((item) => item.label));
  };

  return (
    <section class="pick-list" aria-labelledby={title}>
      <Heading id={title} class={headingLevel === 1 ? "screen-title pick-list-heading" : "pick-list-heading"}>
        {heading}
      </Heading>
      {props.children}
      <ul class={`pick-list-items pick-list-${shape}`}>
        {shownOn(page).map((item) => (
          <li key={item.id}>
            <BigButton role="choice" label={item.label} onPress={() => onPick(item.id)} />
          </li>
        ))}
      </ul>
      {pages > 1 ? <p class="pick-list-page">{props.pageWords(page + 1, pages)}</p> : null}
      <div class="pick-list-actions">
        {props.actions}
        {pages > 1 ? (
          <>
            <BigButton role="bar" label={props.beforeLabel} onPress={() => turn(-1)} />
            <BigButton role="bar" label={props.moreLabel} onPress={() => turn(1)} />
          </>
        ) : null}
      </div>
    </section>
  );
}
