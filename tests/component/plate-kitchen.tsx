// The plate with the rules behind it, for tests.
import { screen } from "@testing-library/preact";
import { useState } from "preact/hooks";
import { vi } from "vitest";
import type { PlateLine } from "#events/plate.ts";
import { type Counting, foodById } from "#rules/food/foods.ts";
import { lineFor, plateTotal } from "#rules/food/plate.ts";
import { PlateBuilder, type PlateBuilderProps } from "#screens/kitchen/plate.tsx";
import type { PlateFrame } from "#screens/kitchen/plate-part.ts";
import { GuardProvider } from "#ui/guard-context.tsx";
import { guard, press } from "./calm-press.ts";

/** What the screen is about: the notice where there is one. */
export const heading = () => screen.getAllByRole("heading").at(-1)?.textContent;

export const lineOf = (id: string, portions: number, counting: Counting = "total"): PlateLine => {
  const food = foodById(id);
  const line = food === null ? null : lineFor(food, portions, counting, "US");
  if (line === null || "refused" in line) throw new Error(`no line for ${id}`);
  return line;
};

const frame: PlateFrame = {
  chrome: { quiet: false, onHelp: vi.fn(), onAgain: vi.fn(), onQuiet: vi.fn(), onBack: vi.fn(), onWrong: vi.fn() },
  speaking: -1,
  focusHeading: false,
  says: [],
  refused: false,
};

/** The answers of the screen, without the five things that are always there. */
export const choices = () => [...document.querySelectorAll(".screen-actions button")].map((button) => button.textContent ?? "");

/** Every answer, over all turns of More. */
export const allChoices = () => {
  const seen: string[] = [];
  for (let turn = 0; turn < 30; turn++) {
    const fresh = choices().filter((label) => !seen.includes(label));
    if (fresh.length === 0) break;
    seen.push(...fresh);
    if (choices().includes("More")) press("More");
  }
  return seen.filter((label) => label !== "More");
};

/** The sentences on the screen. */
export const captions = () => [...document.querySelectorAll(".caption")].map((caption) => caption.textContent ?? "");

/** The plate with the rules behind it, as the walk keeps it. */
export const Kitchen = (props: Partial<PlateBuilderProps> & { start?: PlateLine[] }) => {
  const { start = [], counting = "total", locale = "US" } = props;
  const [lines, setLines] = useState(start);
  return (
    <GuardProvider guard={guard}>
      <PlateBuilder
        lines={lines}
        total={plateTotal(lines)}
        locale={locale}
        counting={counting}
        usualMeals={[]}
        frame={frame}
        onGrams={vi.fn()}
        onServings={vi.fn()}
        onUsual={vi.fn()}
        onDone={vi.fn()}
        {...props}
        onAdd={(id, portions) => {
          props.onAdd?.(id, portions);
          const food = foodById(id);
          const line = food === null ? null : lineFor(food, portions, counting, locale);
          if (line !== null && !("refused" in line)) setLines([...lines, line]);
        }}
        onRemove={(index) => {
          props.onRemove?.(index);
          setLines(lines.filter((_, place) => place !== index));
        }}
      />
    </GuardProvider>
  );
};
