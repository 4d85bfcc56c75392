// A table that may be wider than the page: then it is moved by itself.
import type { ComponentChildren } from "preact";

export function Table({ label, children }: { label: string; children: ComponentChildren }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: whoever has keys alone moves it with the arrows
    <section class="drawer-table-frame" aria-label={label} tabIndex={0}>
      <table class="drawer-table">{children}</table>
    </section>
  );
}
