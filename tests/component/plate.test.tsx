// @vitest-environment jsdom
import { cleanup, render, screen } from "@testing-library/preact";
import axe from "axe-core";
import { afterEach, describe, expect, it, vi } from "vitest";
import type { PlateLine } from "#events/plate.ts";
import { grams } from "#events/quantity.ts";
import type { PlateBuilderProps } from "#screens/kitchen/plate.tsx";
import { pick, press } from "./calm-press.ts";
import { allChoices, captions, choices, heading, Kitchen, lineOf } from "./plate-kitchen.tsx";

afterEach(() => cleanup());

describe("filling the plate", () => {
  it("goes from kind to food to portions to the plate, with the running total", () => {
    const onAdd = vi.fn();
    render(<Kitchen onAdd={onAdd} />);
    expect(heading()).toBe("How do you want to count?");
    press("By kind of food");
    pick("Beans and lentils");
    pick("chickpeas");
    expect(heading()).toBe("Chickpeas: how much?");
    expect(captions()).toEqual([
      "Chickpeas: how much?",
      "One portion is half a cup, cooked.",
      "It weighs 82 grams and holds 22.5 grams of carbs.",
    ]);
    expect(choices()).toEqual(["One portion", "Two portions", "Half a portion", "More"]);
    pick("One and a half portions");
    expect(onAdd).toHaveBeenCalledWith("chickpeas", 1.5);
    expect(heading()).toBe("Your plate");
    expect(screen.getByText("33.8 grams of carbs so far.")).toBeTruthy();
    press("Add food");
    press("By first letter");
    press("A to D");
    press("B");
    pick("Fruit");
    pick("banana");
    press("One portion");
    expect(screen.getByText("60.8 grams of carbs so far.")).toBeTruthy();
    expect(captions().slice(2)).toEqual(["One portion of banana, 27 grams.", "One and a half portions of chickpeas, 33.8 grams."]);
  });

  it("counts as the card counts: half a cup of chickpeas holds 16.3 grams where fibre is left out", () => {
    render(<Kitchen counting="available" said={{ text: "chickpeas" }} />);
    expect(screen.getByText(/holds 16\.3 grams of carbs/)).toBeTruthy();
    press("One portion");
    expect(screen.getByText("16.3 grams of carbs so far.")).toBeTruthy();
  });

  it("finds the glucose under its letter alone, and says to leave it off if it treated a low", () => {
    render(<Kitchen />);
    pick("By first letter");
    press("E to H");
    press("G");
    pick("Sugar for a low");
    pick("glucose gel, 15 gram tube");
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
    expect(screen.getByText("13.8 grams of carbs so far.")).toBeTruthy();
    press("Take food off");
    press(/jam/);
    expect(heading()).toBe("How do you want to count?");
    expect(allChoices()).not.toContain("To the plate");
  });

  it("shows the newest three foods and says how many more there are", () => {
    render(<Kitchen start={["apple", "jam", "pita", "naan", "bagel"].map((id) => lineOf(id, 1))} />);
    expect(
      captions()
        .slice(2, 5)
        .map((line) => line.split(",")[0]),
    ).toEqual(["One portion of bagel", "One portion of naan", "One portion of pita bread"]);
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
    expect(choices()).toEqual(["By kind of food", "By first letter", "Grams of the whole meal", "To the plate"]);
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
  });
});
