// One page of the drawer: a heading that takes the focus, what went wrong on top, and its buttons at the end.
import type { ComponentChildren } from "preact";
import { useContext, useEffect, useLayoutEffect, useRef } from "preact/hooks";
import { GuardContext } from "#ui/guard-context.tsx";
import { Notice, type NoticeProps } from "#ui/notice.tsx";

export interface PageProps {
  title: string;
  lines?: readonly string[];
  /** Stands on top and takes the focus when it comes. */
  notice?: NoticeProps | null;
  /** Said once: "Saved." */
  said?: string | null;
  /** Said under the buttons while a press is carried out: above them it would push them away from under the finger. */
  doing?: string | null;
  actions: ComponentChildren;
  children?: ComponentChildren;
}

/** Give each page a key of its own, so that the heading takes the focus. */
export function Page({ title, lines = [], notice = null, said = null, doing = null, actions, children }: PageProps) {
  const guard = useContext(GuardContext);
  const heading = useRef<HTMLHeadingElement>(null);
  const trouble = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    guard.screenChanged();
    heading.current?.focus();
  }, [guard, title]);
  useEffect(() => {
    if (notice) trouble.current?.focus();
  }, [notice]);
  return (
    <main class="drawer">
      <h1 ref={heading} tabIndex={-1}>
        {title}
      </h1>
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <p class="drawer-said" role="status">
        {said ?? ""}
      </p>
      {notice ? (
        <div class="drawer-trouble" ref={trouble} tabIndex={-1} role="alert">
          <Notice {...notice} />
        </div>
      ) : null}
      {children}
      <div class="drawer-actions">{actions}</div>
      <p class="drawer-said" role="status">
        {doing ?? ""}
      </p>
    </main>
  );
}
