// @vitest-environment jsdom
import { fireEvent, render, screen } from "@testing-library/preact";
import { describe, expect, it, vi } from "vitest";
import { GuardProvider } from "#ui/guard-context.tsx";
import { NumberPad, type NumberPadProps } from "#ui/number-pad.tsx";
import { guard, press, wait } from "../calm-press.ts";

function shown(more: Partial<NumberPadProps> = {}) {
  const calls: string[] = [];
  const pad = (value: string) => (
    <GuardProvider guard={guard}>
      <NumberPad
        value={value}
        onDigit={(digit) => calls.push(digit)}
        onDelete={() => calls.push("delete")}
        onDone={() => calls.push("done")}
        unitWords="units"
        label="Dose"
        doneLabel="OK"
        deleteLabel="Delete"
        {...more}
      />
    </GuardProvider>
  );
  const { rerender } = render(pad("180"));
  return { calls, type: (value: string) => rerender(pad(value)) };
}

function typed(key: string, target: Element | Window = window, more: KeyboardEventInit = {}): void {
  wait(1000);
  fireEvent.keyDown(target, { key, ...more });
}

describe("the number pad", () => {
  it("has 1-2-3 on top and 0 at the foot", () => {
    shown();
    const keys = [...document.querySelectorAll(".pad-key")].map((key) => key.textContent);
    expect(keys).toEqual(["1", "2", "3", "4", "5", "6", "7", "8", "9", "0"]);
  });

  it("gives each digit, delete and done", () => {
    const { calls } = shown();
    for (const name of ["1", "5", "0", "Delete", "OK"]) press(name);
    expect(calls).toEqual(["1", "5", "0", "delete", "done"]);
  });

  it.each(["112", "155"])("takes %s typed quickly, a digit every 300 ms, by finger and by keys", (number) => {
    const { calls } = shown();
    wait(5000);
    for (const digit of number) {
      fireEvent.click(screen.getByRole("button", { name: digit }));
      wait(300);
    }
    for (const digit of number) {
      fireEvent.keyDown(window, { key: digit });
      wait(300);
    }
    expect(calls.join("")).toBe(number + number);
  });

  it("takes a digit once from a hand that trembles, and Delete and OK as slowly as any button", () => {
    const { calls } = shown();
    wait(5000);
    for (const name of ["1", "Delete", "OK"]) {
      fireEvent.click(screen.getByRole("button", { name }));
      wait(200);
      fireEvent.click(screen.getByRole("button", { name }));
      if (name !== "1") {
        wait(300);
        fireEvent.click(screen.getByRole("button", { name }));
      }
    }
    expect(calls).toEqual(["1", "delete", "done"]);
  });

  it("shows the value as typed with its unit in words, and keeps it when told of an error", () => {
    const { type } = shown();
    const number = screen.getByLabelText("Dose");
    expect(number.textContent).toBe("180units");
    type("1800");
    expect(number.textContent).toBe("1800units");
  });

  it("has a point only if the unit has one, with the person's own mark", () => {
    const first = shown();
    expect(screen.queryByRole("button", { name: "." })).toBeNull();
    typed(".");
    expect(first.calls).toEqual([]);
    document.body.replaceChildren();
    const onPoint = vi.fn();
    shown({ onPoint, pointMark: "," });
    press(",");
    typed(".");
    expect(onPoint).toHaveBeenCalledTimes(2);
  });

  it("takes a digit tapped twice within 700 ms once", () => {
    const { calls } = shown();
    press("5");
    fireEvent.click(screen.getByRole("button", { name: "5" }));
    expect(calls).toEqual(["5"]);
  });

  it("takes digits typed on a keyboard, and Backspace and Enter", () => {
    const { calls } = shown();
    for (const key of ["4", "2", "Backspace", "Enter"]) typed(key, document.body);
    expect(calls).toEqual(["4", "2", "delete", "done"]);
  });

  it("takes no letters, no repeats and no combinations", () => {
    const { calls } = shown();
    typed("a");
    typed("5", window, { repeat: true });
    typed("5", window, { ctrlKey: true });
    expect(calls).toEqual([]);
  });

  it("takes a typed key that bounces once, and another key at once", () => {
    const { calls } = shown();
    typed("5");
    fireEvent.keyDown(window, { key: "5" });
    fireEvent.keyDown(window, { key: "6" });
    expect(calls).toEqual(["5", "6"]);
  });

  it("leaves Enter to the button that has the focus", () => {
    const { calls } = shown();
    typed("Enter", screen.getByRole("button", { name: "Delete" }));
    expect(calls).toEqual([]);
  });

  it("leaves digits typed in a text field to the field", () => {
    const { calls } = shown();
    const field = document.body.appendChild(document.createElement("input"));
    typed("5", field);
    expect(calls).toEqual([]);
    field.remove();
  });

  it("stops listening when it is gone", () => {
    const calls: string[] = [];
    const { unmount } = render(
      <NumberPad
        value=""
        onDigit={(d) => calls.push(d)}
        onDelete={vi.fn()}
        onDone={vi.fn()}
        unitWords="units"
        label="Dose"
        doneLabel="OK"
        deleteLabel="Delete"
      />,
    );
    unmount();
    typed("5");
    expect(calls).toEqual([]);
  });
});
