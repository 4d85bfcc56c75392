// @vitest-environment jsdom
import { cleanup, render, screen } from "@testing-library/preact";
import type { ComponentChildren } from "preact";
import { afterEach, describe, expect, it, vi } from "vitest";
import { FirstScreen } from "#screens/first/first-screen.tsx";
import { OwnQuestion } from "#screens/first/own-question.tsx";
import { FaultScreen, InsecureScreen, SecondWindowScreen } from "#screens/first/stop-screens.tsx";
import { GuardProvider } from "#ui/guard-context.tsx";
import { lastSaved } from "#words/en/first.ts";
import { CAUTIONS, NOT_FOR } from "#words/en/fixed.ts";
import { fixedCard, odile, odilePen } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";
import { buttons, guard, press } from "../calm-press.ts";

afterEach(() => cleanup());
const show = (screenful: ComponentChildren) => render(<GuardProvider guard={guard}>{screenful}</GuardProvider>);
const words = () => document.body.textContent ?? "";

describe("the first screen of a new household", () => {
  it("says every caution and what the tool is not for, before anything is set up", () => {
    const [onDemo, onOwn] = [vi.fn(), vi.fn()];
    show(<FirstScreen onDemo={onDemo} onOwn={onOwn} />);
    for (const line of [...CAUTIONS, ...NOT_FOR]) expect(screen.getByText(line)).toBeTruthy();
    press("Look at the demo");
    expect(onDemo).toHaveBeenCalledOnce();
    press("Start our own household");
    expect(onOwn).toHaveBeenCalledOnce();
  });
});

describe("the question before the demo goes", () => {
  it("says what goes, and does nothing on a no", () => {
    const [onYes, onNo] = [vi.fn(), vi.fn()];
    show(<OwnQuestion about="own" onYes={onYes} onNo={onNo} />);
    expect(words()).toContain("The demo goes, with all its days.");
    press("No, keep the demo");
    expect([onYes.mock.calls.length, onNo.mock.calls.length]).toEqual([0, 1]);
    press("Yes, start our own");
    expect(onYes).toHaveBeenCalledOnce();
  });
});

describe("an address that is not secure", () => {
  it("says what will not work, that it is not for use, and what to do", () => {
    show(<InsecureScreen address="http://192.168.1.20:4173" onAgain={vi.fn()} />);
    for (const said of [
      "http://192.168.1.20:4173",
      "no voice input",
      "without a network",
      "Two windows",
      "Do not inject by this page.",
      "https",
    ])
      expect(words()).toContain(said);
    expect(buttons()).toEqual(["Look again"]);
  });
});

describe("a second window", () => {
  it("says so, and takes over only when asked", () => {
    const onUseHere = vi.fn();
    show(<SecondWindowScreen onUseHere={onUseHere} />);
    expect(screen.getByRole("heading", { level: 1 }).textContent).toBe("Open in another window");
    expect(onUseHere).not.toHaveBeenCalled();
    press("Use here");
    expect(onUseHere).toHaveBeenCalledOnce();
  });
});

describe("a fault", () => {
  const numbers = ["Emergency: 911.", "Harbour Clinic: 555 0142."];

  it("names the last saved step, the paper way and whom to call", () => {
    show(
      <FaultScreen kind="stopped" lastSaved="today at 12:05 in the afternoon." numbers={numbers} detail="Error: boom" onAgain={vi.fn()} />,
    );
    expect(screen.getByRole("heading", { level: 1 }).textContent).toBe("The app stopped");
    for (const said of [
      "Your last saved step: today at 12:05 in the afternoon.",
      "Go on with your paper card.",
      ...numbers,
      "For the keeper: Error: boom",
    ])
      expect(words()).toContain(said);
    expect(buttons()).toEqual(["Start again"]);
  });

  it("says of a step that was not stored that it does not count", () => {
    show(<FaultScreen kind="not stored" lastSaved={null} numbers={numbers} />);
    expect(words()).toContain("That step does not count.");
    expect(words()).not.toContain("Your last saved step");
    expect(buttonsOrNone()).toEqual([]);
  });
});

const buttonsOrNone = () => screen.queryAllByRole("button").map((button) => button.textContent);

describe("the last saved step", () => {
  const table = () => new Table([{ person: odile, card: fixedCard, pens: [odilePen] }]);

  it("says after an opened needle step that the dose counts as taken", () => {
    const t = table();
    t.send({ do: "open meal", person: "odile", meal: "breakfast" }, { do: "already washed" });
    expect(lastSaved(t.state, t.now)).toMatch(/^today at .+\. Odile: no insulin went in on this walk\.$/);
    t.number("reading", "120").send({ do: "exercise", hard: false }, { do: "meal is ready" }, { do: "heard dose" });
    t.send(
      { do: "pick pen", pen: "odile-meal", how: "mark" },
      { do: "insulin looks", look: "as it should be" },
      { do: "needle fitted" },
      { do: "primed", stream: true },
    );
    t.number("dial", "6").send({ do: "take spot" }, { do: "skin cleaned", how: "wiped" });
    t.pass(25);
    t.send({ do: "wait is over" });
    expect(lastSaved(t.state, t.now)).toMatch(/Odile: the needle step began\. It counts as taken\.$/);
  });
});
