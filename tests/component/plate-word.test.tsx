// @vitest-environment jsdom
import { cleanup, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, describe, expect, it, vi } from "vitest";
import { pick, press, wait } from "./calm-press.ts";
import { allChoices, choices, heading, Kitchen } from "./plate-kitchen.tsx";

afterEach(() => cleanup());

describe("a food that was named", () => {
  it("asks which, where the word is ambiguous, and adds nothing by itself", () => {
    const onAdd = vi.fn();
    render(<Kitchen said={{ text: "biscuits" }} onAdd={onAdd} />);
    expect(heading()).toBe("Which one is it?");
    expect(screen.getByText("People use “biscuit” for different foods.")).toBeTruthy();
    expect(allChoices()).toEqual([
      "buttermilk biscuit",
      "chocolate chip cookies",
      "wheatmeal biscuits",
      "wheat biscuit cereal",
      "None of these",
    ]);
    expect(onAdd).not.toHaveBeenCalled();
    pick("None of these");
    expect(heading()).toBe("How do you want to count?");
  });

  it("asks in the person's English", () => {
    render(<Kitchen locale="UK" said={{ text: "chips" }} />);
    expect(allChoices()).toEqual(expect.arrayContaining(["crisps", "thin-cut fries", "chip shop chips"]));
  });

  it("lets the person choose where several foods hold the word", () => {
    render(<Kitchen said={{ text: "milk" }} />);
    expect(heading()).toBe("Which one is it?");
    expect(choices()[0]).toBe("whole milk");
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
    pick("To the plate");
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
    expect(choices()).toEqual(["Grams of the whole meal", "Another food"]);
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
    fireEvent.click(screen.getByRole("button", { name: "One portion" }));
    expect(onAdd).not.toHaveBeenCalled();
    wait(700);
    fireEvent.click(screen.getByRole("button", { name: "One portion" }));
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
