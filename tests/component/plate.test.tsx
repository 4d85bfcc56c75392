// @vitest-environment jsdom
import { cleanup, fireEvent, render, screen } from "@testing-library/preact";
import axe from "axe-core";
import { useState } from "preact/hooks";
import { afterEach, describe, expect, it, vi } from "vitest";
import type { PlateLine } from "#events/plate.ts";
import { grams } from "#events/quantity.ts";
import { type Counting, foodById } from "#rules/food/foods.ts";
import { lineFor, plateTotal } from "#rules/food/plate.ts";
import { PlateBuilder, type PlateBuilderProps } from "#screens/kitchen/plate.tsx";
import { GuardProvider } from "#ui/guard-context.tsx";
import { buttons, guard, pick, press, wait } from "./calm-press.ts";

afterEach(() => cleanup());

/** What the screen is about: the notice where there is one. */
const heading = () => screen.getAllByRole("heading").at(-1)?.textContent;

const lineOf = (id: string, portions: number, counting: Counting = "total"): PlateLine => {
  const food = foodById(id);
  const line = food === null ? null : lineFor(food, portions, counting, "US");
  if (line === null || "refused" in line) throw new Error(`no line for ${id}`);
  return line;
};

/** The plate with the rules behind it, as the walk keeps it. */
const Kitchen = (props: Partial<PlateBuilderProps> & { start?: PlateLine[] }) => {
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

describe("filling the plate", () => {
  it("goes from kind to food to portions to the plate, with the running total", () => {
    const onAdd = vi.fn();
    render(<Kitchen onAdd={onAdd} />);
    expect(heading()).toBe("How do you want to count?");
    press("By kind of food");
    pick("Beans and lentils");
    pick("chickpeas");
    expect(heading()).toBe("Chickpeas: how much?");
    expect(screen.getByText(/One portion is half a cup, cooked\. It weighs 82 grams and holds 22\.5 grams of carbs\./)).toBeTruthy();
    expect(buttons()).toEqual([
      "Half a portion",
      "One portion",
      "One and a half portions",
      "Two portions",
      "To the plate",
      "Before",
      "More",
    ]);
    press("One and a half portions");
    expect(onAdd).toHaveBeenCalledWith("chickpeas", 1.5);
    expect(heading()).toBe("Your plate");
    expect(screen.getByText("Total: 33.8 grams of carbs")).toBeTruthy();
    press("Add food");
    press("By first letter");
    press("B");
    pick("Fruit");
    pick("banana");
    press("One portion");
    expect(screen.getByText("Total: 60.8 grams of carbs")).toBeTruthy();
    expect(screen.getAllByRole("listitem").map((li) => li.textContent)).toEqual([
      "One portion of banana, 27 grams",
      "One and a half portions of chickpeas, 33.8 grams",
    ]);
  });

  it("counts as the card counts: half a cup of chickpeas holds 16.3 grams where fibre is left out", () => {
    render(<Kitchen counting="available" said={{ text: "chickpeas" }} />);
    expect(screen.getByText(/holds 16\.3 grams of carbs/)).toBeTruthy();
    press("One portion");
    expect(screen.getByText("Total: 16.3 grams of carbs")).toBeTruthy();
  });

  it("finds the glucose under its letter alone, and says to leave it off if it treated a low", () => {
    render(<Kitchen />);
    press("By first letter");
    press("G");
    pick("Sugar for a low");
    expect(buttons()).toContain("glucose gel, 15 gram tube");
    press("glucose gel, 15 gram tube");
    expect(screen.getByText(/If it treated a low, leave it off\./)).toBeTruthy();
  });

  it("takes any number of portions up to twenty, through More", () => {
    const onAdd = vi.fn();
    render(<Kitchen onAdd={onAdd} said={{ text: "jam" }} />);
    pick("Twenty portions");
    expect(onAdd).toHaveBeenCalledWith("jam", 20);
  });

  it("takes a food off again, and asks how to count once the plate is empty", () => {
    const onRemove = vi.fn();
    render(<Kitchen start={[lineOf("apple", 1), lineOf("jam", 1)]} onRemove={onRemove} />);
    press("Take food off");
    press(/apple/);
    expect(onRemove).toHaveBeenCalledWith(0);
    expect(screen.getByText("Total: 13.8 grams of carbs")).toBeTruthy();
    press("Take food off");
    press(/jam/);
    expect(heading()).toBe("How do you want to count?");
    expect(buttons()).not.toContain("To the plate");
  });

  it("shows the newest three foods and says how many more there are", () => {
    render(<Kitchen start={["apple", "jam", "pita", "naan", "bagel"].map((id) => lineOf(id, 1))} />);
    expect(screen.getAllByRole("listitem").map((li) => li.textContent?.split(",")[0])).toEqual([
      "One portion of bagel",
      "One portion of naan",
      "One portion of pita bread",
    ]);
    expect(screen.getByText("2 more foods are on the plate.")).toBeTruthy();
  });

  it("hands on grams, servings, the usual meal, and that it is all", () => {
    const calls = { onGrams: vi.fn(), onServings: vi.fn(), onUsual: vi.fn(), onDone: vi.fn() };
    const usualMeals = [
      { name: "porridge and toast", grams: grams(45) },
      { name: "eggs", grams: grams(1) },
    ];
    const { unmount } = render(<Kitchen {...calls} usualMeals={usualMeals} />);
    press("Eggs, 1 gram");
    press("Porridge and toast, 45 grams");
    expect(calls.onUsual.mock.calls).toEqual([[1], [0]]);
    pick("Grams of the whole meal");
    pick("Servings of 15 grams");
    unmount();
    render(<Kitchen {...calls} usualMeals={usualMeals} start={[lineOf("apple", 1)]} />);
    press("That is all");
    expect([calls.onGrams, calls.onServings, calls.onDone].map((call) => call.mock.calls.length)).toEqual([1, 1, 1]);
    // Once foods are on the plate a usual meal would count them twice.
    press("Add food");
    expect(buttons()).toEqual(["By kind of food", "By first letter", "Grams of the whole meal", "To the plate"]);
  });
});

describe("a food that was named", () => {
  it("asks which, where the word is ambiguous, and adds nothing by itself", () => {
    const onAdd = vi.fn();
    render(<Kitchen said={{ text: "biscuits" }} onAdd={onAdd} />);
    expect(heading()).toBe("Which one is it?");
    expect(screen.getByText("People use “biscuit” for different foods.")).toBeTruthy();
    expect(buttons()).toEqual([
      "buttermilk biscuit",
      "chocolate chip cookies",
      "wheatmeal biscuits",
      "wheat biscuit cereal",
      "None of these",
    ]);
    expect(onAdd).not.toHaveBeenCalled();
    press("None of these");
    expect(heading()).toBe("How do you want to count?");
  });

  it("asks in the person's English", () => {
    render(<Kitchen locale="UK" said={{ text: "chips" }} />);
    expect(buttons()).toEqual(expect.arrayContaining(["crisps", "thin-cut fries", "chip shop chips"]));
  });

  it("lets the person choose where several foods hold the word", () => {
    render(<Kitchen said={{ text: "milk" }} />);
    expect(heading()).toBe("Which one is it?");
    expect(buttons()[0]).toBe("whole milk");
  });

  it("reads the one food back with its portion before anything is counted", () => {
    const onAdd = vi.fn();
    render(<Kitchen said={{ text: "banana" }} onAdd={onAdd} />);
    expect(heading()).toBe("Banana: how much?");
    expect(onAdd).not.toHaveBeenCalled();
  });

  it("says so when the table has no such food, and goes on", () => {
    const onGrams = vi.fn();
    render(<Kitchen said={{ text: "gravel" }} onGrams={onGrams} />);
    expect(heading()).toBe("Food not in the table");
    press("Grams of the whole meal");
    expect(onGrams).toHaveBeenCalledOnce();
    press("Another food");
    expect(heading()).toBe("How do you want to count?");
  });

  it("may be named again with the same word", () => {
    const { rerender } = render(<Kitchen said={{ text: "banana" }} />);
    press("To the plate");
    expect(heading()).toBe("How do you want to count?");
    rerender(<Kitchen said={{ text: "banana" }} />);
    expect(heading()).toBe("Banana: how much?");
  });
});

describe("a food whose fibre is not known", () => {
  it("is never counted where the card leaves fibre out", () => {
    const onAdd = vi.fn();
    render(<Kitchen counting="available" said={{ text: "cornbread" }} onAdd={onAdd} />);
    expect(heading()).toBe("Fibre not known");
    expect(buttons()).toEqual(["Grams of the whole meal", "Another food"]);
    expect(onAdd).not.toHaveBeenCalled();
  });

  it("is counted where the card counts total", () => {
    render(<Kitchen counting="total" said={{ text: "cornbread" }} />);
    expect(screen.getByText(/holds 28\.3 grams of carbs/)).toBeTruthy();
  });
});

describe("a shaky hand", () => {
  it("does not choose portions with the second tap of a double tap on the food", () => {
    const onAdd = vi.fn();
    render(<Kitchen said={{ text: "milk" }} onAdd={onAdd} />);
    press("whole milk");
    wait(200);
    fireEvent.click(screen.getByRole("button", { name: "Half a portion" }));
    expect(onAdd).not.toHaveBeenCalled();
    wait(700);
    fireEvent.click(screen.getByRole("button", { name: "Half a portion" }));
    expect(onAdd).toHaveBeenCalledOnce();
  });

  it("is not kept waiting when the page is only drawn again", () => {
    const onGrams = vi.fn();
    const { rerender } = render(<Kitchen onGrams={onGrams} />);
    wait(5000);
    rerender(<Kitchen onGrams={onGrams} />);
    fireEvent.click(screen.getByRole("button", { name: "Grams of the whole meal" }));
    expect(onGrams).toHaveBeenCalledOnce();
  });
});

describe("everybody", () => {
  const places: [string, Partial<PlateBuilderProps> & { start?: PlateLine[] }][] = [
    ["an empty plate", {}],
    ["a full plate", { start: ["apple", "jam", "pita", "naan"].map((id) => lineOf(id, 2)) }],
    ["a choice", { said: { text: "chips" } }],
    ["portions", { said: { text: "banana" } }],
    ["fibre not known", { said: { text: "pancake" }, counting: "available" }],
    ["no such food", { said: { text: "gravel" } }],
  ];
  it.each(places)("can use %s: no fault that axe finds", async (_, props) => {
    const { container } = render(<Kitchen {...props} />);
    // Colour and the page's own landmarks are not there in a part alone.
    const found = await axe.run(container, { rules: { "color-contrast": { enabled: false }, region: { enabled: false } } });
    expect(found.violations.map((violation) => violation.id)).toEqual([]);
    expect(found.passes.length).toBeGreaterThan(3);
    expect(container.querySelectorAll("[style]")).toHaveLength(0);
  });
});
