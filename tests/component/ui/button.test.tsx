// @vitest-environment jsdom
import { createEvent, fireEvent, render, screen } from "@testing-library/preact";
import { describe, expect, it, vi } from "vitest";
import { BigButton, type ButtonRole } from "#ui/button.tsx";
import { GuardProvider } from "#ui/guard-context.tsx";
import { makeGuard } from "#ui/guards.ts";

function shown(role: ButtonRole = "main", more: { pressed?: boolean; describedBy?: string } = {}) {
  let ms = 10_000;
  const onPress = vi.fn();
  const guard = makeGuard(() => ms);
  render(
    <GuardProvider guard={guard}>
      <BigButton label="Next" role={role} onPress={onPress} {...more} />
      <p>glass</p>
    </GuardProvider>,
  );
  const button = screen.getByRole("button", { name: "Next" });
  button.getBoundingClientRect = () => new DOMRect(100, 100, 200, 100);
  return { button, onPress, wait: (more: number) => (ms += more) };
}

// jsdom builds pointer events without their own fields.
function pointer(target: Element, kind: "pointerDown" | "pointerUp" | "pointerCancel", pointerId: number, x = 150, y = 150): void {
  const event = createEvent[kind](target, { bubbles: true });
  Object.defineProperties(event, { pointerId: { value: pointerId }, clientX: { value: x }, clientY: { value: y }, button: { value: 0 } });
  fireEvent(target, event);
}

describe("a large button", () => {
  it("acts on lift and not before, and once although the browser sends its click too", () => {
    const { button, onPress, wait } = shown();
    pointer(button, "pointerDown", 1);
    expect(onPress).not.toHaveBeenCalled();
    pointer(button, "pointerUp", 1);
    expect(onPress).toHaveBeenCalledTimes(1);
    // A slow tablet: the click comes after the guard would have let it through.
    wait(5000);
    fireEvent.click(button, { detail: 1 });
    expect(onPress).toHaveBeenCalledTimes(1);
  });

  it.each(["pointerUp", "pointerCancel"] as const)("has a frame while it is held down, and none after %s", (end) => {
    const { button } = shown();
    pointer(button, "pointerDown", 1);
    expect(button.hasAttribute("data-down")).toBe(true);
    pointer(button, end, 1);
    expect(button.hasAttribute("data-down")).toBe(false);
  });

  it("ignores a second tap after 699 ms and takes it after 701 ms", () => {
    for (const [gap, times] of [
      [699, 1],
      [701, 2],
    ] as const) {
      const { button, onPress, wait } = shown();
      fireEvent.click(button);
      wait(gap);
      fireEvent.click(button);
      expect(onPress, `${gap} ms`).toHaveBeenCalledTimes(times);
      document.body.replaceChildren();
    }
  });

  it("does nothing when the finger slides off before it lifts", () => {
    const { button, onPress } = shown();
    pointer(button, "pointerDown", 1);
    pointer(button, "pointerUp", 1, 150, 300);
    expect(onPress).not.toHaveBeenCalled();
  });

  it("forgives a tremble that lifts up to 4 mm beside it", () => {
    const { button, onPress, wait } = shown();
    pointer(button, "pointerDown", 1);
    pointer(button, "pointerUp", 1, 150, 222);
    expect(onPress).toHaveBeenCalledTimes(1);
    wait(1000);
    pointer(button, "pointerDown", 1);
    pointer(button, "pointerUp", 1, 150, 230);
    expect(onPress).toHaveBeenCalledTimes(1);
  });

  it("does nothing for a lift that began elsewhere", () => {
    const { button, onPress } = shown();
    pointer(screen.getByText("glass"), "pointerDown", 1);
    pointer(button, "pointerUp", 1);
    expect(onPress).not.toHaveBeenCalled();
  });

  it("ignores a finger that comes while a palm rests on the glass", () => {
    const { button, onPress, wait } = shown();
    const glass = screen.getByText("glass");
    pointer(glass, "pointerDown", 1);
    pointer(button, "pointerDown", 2);
    pointer(button, "pointerUp", 2);
    expect(onPress).not.toHaveBeenCalled();
    pointer(glass, "pointerUp", 1);
    wait(1000);
    pointer(button, "pointerDown", 3);
    pointer(button, "pointerUp", 3);
    expect(onPress).toHaveBeenCalledTimes(1);
  });

  it("forgets a press that the browser took away", () => {
    const { button, onPress } = shown();
    pointer(button, "pointerDown", 1);
    pointer(button, "pointerCancel", 1);
    pointer(button, "pointerUp", 1);
    expect(onPress).not.toHaveBeenCalled();
  });

  it.each(["Enter", " "])("acts once for the key %j, on its way up, however long it is held", (key) => {
    const { button, onPress, wait } = shown();
    fireEvent.keyDown(button, { key });
    for (let n = 0; n < 20; n++) {
      wait(100);
      fireEvent.keyDown(button, { key, repeat: true });
    }
    expect(onPress).not.toHaveBeenCalled();
    fireEvent.keyUp(button, { key });
    expect(onPress).toHaveBeenCalledTimes(1);
  });

  it("ignores a key that was already down when it got the focus", () => {
    const { button, onPress } = shown();
    fireEvent.keyDown(button, { key: "Enter", repeat: true });
    fireEvent.keyUp(button, { key: "Enter" });
    expect(onPress).not.toHaveBeenCalled();
  });

  it("does nothing for letters", () => {
    const { button, onPress } = shown();
    fireEvent.keyDown(button, { key: "n" });
    fireEvent.keyUp(button, { key: "n" });
    expect(onPress).not.toHaveBeenCalled();
  });

  it("takes the plain click of a screen reader or a switch", () => {
    const { button, onPress } = shown();
    button.click();
    expect(onPress).toHaveBeenCalledTimes(1);
  });

  it.each(["main", "stop", "wait"] as const)("gives the role %s a drawing of its own, hidden from screen readers", (role) => {
    const { button } = shown(role);
    const drawing = button.querySelector("svg");
    expect(drawing?.getAttribute("aria-hidden")).toBe("true");
    expect(button.className).toContain(`button-${role}`);
  });

  it("says that it is chosen by a tick and in words for screen readers", () => {
    const { button } = shown("choice", { pressed: true });
    expect(button.getAttribute("aria-pressed")).toBe("true");
    expect(button.querySelector("svg")).not.toBeNull();
  });

  it("is never disabled and writes no style into the markup", () => {
    const { button } = shown("wait");
    expect(button.hasAttribute("disabled")).toBe(false);
    expect(document.body.innerHTML).not.toContain("style=");
  });
});
