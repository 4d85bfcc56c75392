// @vitest-environment jsdom
import { act, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { BigButton } from "#ui/button.tsx";
import { GuardProvider } from "#ui/guard-context.tsx";
import { makeGuard } from "#ui/guards.ts";
import { useKeys } from "#ui/keys.ts";
import { usualScan } from "#ui/switch-scan.ts";
import { useSwitchScan } from "#ui/use-switch-scan.ts";

let ms = 0;
beforeEach(() => {
  ms = 0;
  vi.useFakeTimers();
});
afterEach(() => vi.useRealTimers());

const pass = (more: number) => {
  act(() => {
    for (let gone = 0; gone < more; gone += 50) {
      ms += 50;
      vi.advanceTimersByTime(50);
    }
  });
};

function shown(part: { onBack?: () => void; scan?: boolean; say?: (label: string) => void }) {
  const presses: string[] = [];
  const guard = makeGuard(() => ms + 10_000);
  function Page({ screenKey, scan }: { screenKey: string; scan: boolean }) {
    useKeys({ onBack: part.onBack ?? (() => {}) });
    useSwitchScan({ on: scan, settings: usualScan, buttonsKey: screenKey, say: part.say ?? (() => {}), now: () => ms });
    return (
      <>
        {["Help", "Again", "Next"].map((label) => (
          <BigButton key={label} role="choice" label={label} safe={label === "Again"} onPress={() => presses.push(label)} />
        ))}
        <input aria-label="Name" />
      </>
    );
  }
  const page = (screenKey: string, scan: boolean) => (
    <GuardProvider guard={guard}>
      <Page screenKey={screenKey} scan={scan} />
    </GuardProvider>
  );
  const { rerender } = render(page("one", part.scan ?? false));
  return { presses, go: (screenKey: string, scan = part.scan ?? false) => rerender(page(screenKey, scan)) };
}

describe("keys", () => {
  it("walk from button to button by the arrows, round at the ends", () => {
    shown({});
    const order = ["ArrowRight", "ArrowDown", "ArrowDown", "ArrowDown", "ArrowLeft"].map((key) => {
      fireEvent.keyDown(document.activeElement ?? document.body, { key });
      return document.activeElement?.textContent;
    });
    expect(order).toEqual(["Help", "Again", "Next", "Help", "Next"]);
  });

  it("go back by Escape, once for a held key", () => {
    const onBack = vi.fn();
    shown({ onBack });
    fireEvent.keyDown(document.body, { key: "Escape" });
    ms += 5000;
    fireEvent.keyDown(document.body, { key: "Escape", repeat: true });
    expect(onBack).toHaveBeenCalledTimes(1);
  });

  it("leave the arrows to a text field, and do nothing for letters", () => {
    shown({});
    const field = screen.getByLabelText("Name");
    field.focus();
    fireEvent.keyDown(field, { key: "ArrowRight" });
    expect(document.activeElement).toBe(field);
    for (const key of ["h", "b", "q"]) fireEvent.keyDown(document.body, { key });
    expect(document.activeElement).toBe(field);
  });
});

describe("one switch", () => {
  const lit = () => document.querySelector("[data-lit]")?.textContent ?? null;

  it("lights and says the safe button first, then the others in turn", () => {
    const say = vi.fn();
    shown({ scan: true, say });
    expect(lit()).toBe("Again");
    pass(2000);
    expect(lit()).toBe("Help");
    pass(2000);
    expect(lit()).toBe("Next");
    expect(say.mock.calls.flat()).toEqual(["Again", "Help", "Next"]);
  });

  it("presses the lit button when the switch is held, and no other although a button has the focus", () => {
    const { presses } = shown({ scan: true });
    const help = screen.getByRole("button", { name: "Help" });
    help.focus();
    pass(4000);
    fireEvent.keyDown(help, { key: " " });
    pass(600);
    fireEvent.keyUp(help, { key: " " });
    expect(presses).toEqual(["Next"]);
  });

  it("presses nothing for a short touch", () => {
    const { presses } = shown({ scan: true });
    fireEvent.keyDown(document.body, { key: "Enter" });
    pass(400);
    fireEvent.keyUp(document.body, { key: "Enter" });
    expect(presses).toEqual([]);
  });

  it("goes dark after three rounds and when it is turned off", () => {
    const { go } = shown({ scan: true });
    pass(3 * 3 * 2000);
    expect(lit()).toBeNull();
    go("two");
    expect(lit()).toBe("Again");
    go("two", false);
    expect(lit()).toBeNull();
  });
});
