// @vitest-environment jsdom
import { readFileSync } from "node:fs";
import { cleanup, render, screen, within } from "@testing-library/preact";
import { afterEach, describe, expect, it, vi } from "vitest";
import { GuardProvider } from "#ui/guard-context.tsx";
import { PickList } from "#ui/pick-list.tsx";
import { buttons, guard, press, pressKey } from "./calm-press.ts";

afterEach(() => cleanup());

describe("a list to pick from", () => {
  const items = Array.from({ length: 10 }, (_, n) => ({ id: `id${n}`, label: `thing ${n}` }));
  const list = (over: Partial<Parameters<typeof PickList>[0]> = {}) => (
    <GuardProvider guard={guard}>
      <PickList
        heading="Things"
        items={items}
        onPick={vi.fn()}
        pageSize={4}
        moreLabel="More"
        beforeLabel="Before"
        pageWords={(p, n) => `Page ${p} of ${n}`}
        {...over}
      />
    </GuardProvider>
  );
  const shown = () =>
    within(screen.getByRole("list"))
      .getAllByRole("button")
      .map((button) => button.textContent);

  it("shows a page at a time and every item on some page, turning round and round", () => {
    render(list());
    const seen: (string | null)[] = [...shown()];
    expect(seen).toHaveLength(4);
    press("More");
    seen.push(...shown());
    press("More");
    seen.push(...shown());
    expect(screen.getByText("Page 3 of 3")).toBeTruthy();
    expect(seen).toEqual(items.map((item) => item.label));
    press("More");
    expect(shown()[0]).toBe("thing 0");
    press("Before");
    expect(shown()).toEqual(["thing 8", "thing 9"]);
  });

  it("keeps the two page buttons on every page, so that a press never lands on what took their place", () => {
    render(list());
    for (let turn = 0; turn < 4; turn++) {
      expect(buttons().slice(-2)).toEqual(["Before", "More"]);
      press("More");
    }
  });

  it("has no page buttons and no page words where one page holds everything", () => {
    render(list({ pageSize: 10 }));
    expect(buttons()).toHaveLength(10);
    expect(screen.queryByText(/^Page/)).toBeNull();
  });

  it("gives the id that was picked, by touch and by key", () => {
    const onPick = vi.fn();
    render(list({ onPick }));
    press("thing 2");
    pressKey("thing 3", "Enter");
    pressKey("More", " ");
    pressKey("thing 5", " ");
    expect(onPick.mock.calls).toEqual([["id2"], ["id3"], ["id5"]]);
  });

  it("says what the new page holds, begins again with a new list, and stands at the level asked for", () => {
    const onTurn = vi.fn();
    const { rerender } = render(list({ onTurn, headingLevel: 3 }));
    expect(screen.getByRole("heading", { level: 3 }).textContent).toBe("Things");
    expect(screen.getByRole("region", { name: "Things" })).toBeTruthy();
    press("More");
    expect(onTurn).toHaveBeenLastCalledWith(["thing 4", "thing 5", "thing 6", "thing 7"]);
    rerender(list({ onTurn, items: items.slice(1) }));
    expect(shown()[0]).toBe("thing 1");
  });

  it("lets no target be under 20 mm, and styles by class alone", () => {
    const css = readFileSync("src/ui/pick-list.css", "utf8");
    const targets = /\.pick-list \.button \{([^}]*)\}/.exec(css)?.[1] ?? "";
    for (const side of ["min-width", "min-height"]) {
      const mm = Number(new RegExp(`${side}: calc\\((\\d+) \\* var\\(--mm\\)\\)`).exec(targets)?.[1]);
      expect(mm, side).toBeGreaterThanOrEqual(20);
    }
    const { container } = render(list());
    expect(container.querySelectorAll("[style]")).toHaveLength(0);
  });
});
