// @vitest-environment jsdom
import { act, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, describe, expect, it, vi } from "vitest";
import { Banner } from "#ui/banner.tsx";
import { Calibration } from "#ui/calibration.tsx";
import { Countdown, figures } from "#ui/countdown.tsx";
import { GuardProvider } from "#ui/guard-context.tsx";
import { Live } from "#ui/live.tsx";
import { applyLook, biggerThan } from "#ui/look.ts";
import { Notice } from "#ui/notice.tsx";
import { TextField } from "#ui/text-field.tsx";
import { guard, press } from "../calm-press.ts";

afterEach(() => vi.useRealTimers());

describe("the countdown", () => {
  it("counts parts of a second as whole ones and never goes below 0", () => {
    expect([20, 19.2, 0.1, 0, -3].map(figures)).toEqual(["20", "20", "1", "0", "0"]);
  });

  it("shows minutes above 99 seconds", () => {
    expect([99, 100, 900, 899.5].map(figures)).toEqual(["99", "1:40", "15:00", "15:00"]);
  });

  it("says the wait in words and keeps the figures from screen readers", () => {
    render(<Countdown secondsLeft={18} words="18 seconds left" />);
    const timer = screen.getByRole("timer");
    expect(timer.getAttribute("aria-live")).toBe("off");
    expect(screen.getByText("18").getAttribute("aria-hidden")).toBe("true");
    expect(screen.getByText("18 seconds left")).toBeTruthy();
  });
});

describe("a notice", () => {
  it("says what we got, what is wrong and what to do, in this order", () => {
    const { container } = render(
      <Notice heading="Number too big" got="You entered 1800." wrong="Readings go up to 600." todo="Press the numbers again." />,
    );
    expect(screen.getByRole("heading", { name: "Number too big" })).toBeTruthy();
    expect([...container.querySelectorAll("p")].map((line) => line.textContent)).toEqual([
      "You entered 1800.",
      "Readings go up to 600.",
      "Press the numbers again.",
    ]);
  });
});

describe("a banner", () => {
  it("shows its words with any drawing", () => {
    render(<Banner kind="note" text="Speech is off" icon={<svg aria-hidden="true" />} />);
    expect(screen.getByText("Speech is off")).toBeTruthy();
  });
});

describe("what a screen reader is told", () => {
  it("is nothing at all while the app itself speaks, though both regions are there", () => {
    vi.useFakeTimers();
    render(<Live voice="app" status="Saved." alert="Call now." />);
    act(() => void vi.advanceTimersByTime(1000));
    expect(screen.getByRole("status").textContent).toBe("");
    expect(screen.getByRole("alert").textContent).toBe("");
  });

  it("comes after the region was emptied, one message at a time", () => {
    vi.useFakeTimers();
    const { rerender } = render(<Live voice="reader" status="One." />);
    const status = screen.getByRole("status");
    expect(status.textContent).toBe("");
    act(() => void vi.advanceTimersByTime(100));
    expect(status.textContent).toBe("One.");
    rerender(<Live voice="reader" status="Two." />);
    act(() => void vi.advanceTimersByTime(50));
    expect(status.textContent).toBe("");
    act(() => void vi.advanceTimersByTime(50));
    expect(status.textContent).toBe("Two.");
    expect(screen.getByRole("status")).toBe(status);
  });
});

describe("the look of the page", () => {
  it("is set as properties and attributes of the root", () => {
    const root = document.createElement("html");
    applyLook(root, { mmPx: 5.884, size: 1.4, theme: "dark" });
    expect(root.style.getPropertyValue("--mm")).toBe("5.884px");
    expect(root.style.getPropertyValue("--k")).toBe("1.4");
    expect(root.dataset).toMatchObject({ size: "1.4", theme: "dark" });
  });

  it("follows the device for somebody who never chose, and no longer than that", () => {
    const root = document.createElement("html");
    vi.stubGlobal("matchMedia", () => ({ matches: true }));
    applyLook(root, { mmPx: 5.9, size: 1, theme: "follow" });
    expect(root.dataset.theme).toBe("dark");
    applyLook(root, { mmPx: 5.9, size: 1, theme: "light" });
    expect(root.dataset.theme).toBe("light");
    vi.unstubAllGlobals();
    applyLook(root, { mmPx: 5.9, size: 1, theme: "follow" });
    expect(root.dataset.theme).toBe("light");
  });

  it("grows by steps and comes round to the first", () => {
    expect([biggerThan(1), biggerThan(1.4), biggerThan(2)]).toEqual([1.4, 2, 1]);
  });
});

describe("calibration", () => {
  it("moves only the outline until it fits, then hands over the millimetre", () => {
    const onDone = vi.fn();
    render(
      <GuardProvider guard={guard}>
        <Calibration
          mmPx={5}
          onDone={onDone}
          onBack={vi.fn()}
          title="Hold a card here"
          todo="Make it as wide as the card."
          outlineLabel="Outline of a card"
          backLabel="Back"
          narrowerLabel="Narrower"
          widerLabel="Wider"
          doneLabel="It fits"
        />
      </GuardProvider>,
    );
    const outline = screen.getByRole("img", { name: "Outline of a card" });
    expect(outline.style.getPropertyValue("--try")).toBe("5px");
    press("Wider");
    expect(outline.style.getPropertyValue("--try")).toBe("5.2px");
    expect(document.documentElement.style.getPropertyValue("--mm")).toBe("");
    press("It fits");
    expect(onDone).toHaveBeenCalledExactlyOnceWith(5.2);
  });
});

describe("a text field", () => {
  it("is named by its label and described by hint and problem, and keeps a wrong entry", () => {
    const onInput = vi.fn();
    render(
      <TextField
        label="Largest dose"
        value="180"
        onInput={onInput}
        hint="In units."
        problem="The card allows 60 at most."
        keyboard="numeric"
        unitWords="units"
      />,
    );
    const box = screen.getByLabelText("Largest dose");
    const about = (box.getAttribute("aria-describedby") ?? "").split(" ").map((id) => document.getElementById(id)?.textContent);
    expect(about).toEqual(["In units.", "The card allows 60 at most."]);
    expect(box).toMatchObject({ value: "180", type: "text", inputMode: "numeric" });
    expect(box.getAttribute("aria-invalid")).toBe("true");
    fireEvent.input(box, { target: { value: "60" } });
    expect(onInput).toHaveBeenCalledWith("60");
  });

  it("hides what is typed if it is a secret", () => {
    render(<TextField label="PIN" value="1234" onInput={vi.fn()} secret />);
    expect(screen.getByLabelText("PIN")).toMatchObject({ type: "password" });
  });
});
