// @vitest-environment jsdom
import { cleanup, render, screen, waitFor } from "@testing-library/preact";
import { afterEach, describe, expect, it } from "vitest";
import type { EarTrial } from "#screens/drawer/ports.ts";
import type { EarState, EarTry } from "#words/en/drawer/ear.ts";
import { begun, enter, ines, Kitchen, openWithPin, withFacts } from "./kitchen-drawer.tsx";

afterEach(() => cleanup());

const home = withFacts([begun, ines]);
const heard = (more: Partial<EarTry> = {}): EarTry => ({ how: "sure", heard: ["one hundred twelve"], right: true, room: -55, ...more });

/** An ear that gives these answers, one try each. */
function ear(tries: EarTry[], state: Partial<EarState> = {}) {
  const asked = { stops: 0, installs: 0 };
  const told: EarState = { ear: "own", own: "ready", language: "not here", ...state };
  const trial: EarTrial = {
    state: async () => told,
    listen: async () => tries.shift() ?? heard({ how: "nothing", heard: [], right: false }),
    stop: () => void asked.stops++,
    install: async () => {
      asked.installs++;
      told.language = "ready";
      return true;
    },
  };
  return { trial, asked };
}

async function open(trial: EarTrial) {
  render(<Kitchen start={home} ear={trial} />);
  await openWithPin();
  await enter("Check the ear");
  await waitFor(() => expect(document.body.textContent).toMatch(/listens/));
}
const page = () => document.body.textContent ?? "";

describe("the page on which the ear is tried", () => {
  it("says what to say, and reports three tries, the room and the score", async () => {
    const { trial } = ear([
      heard(),
      heard({ how: "not sure", heard: ["one hundred twelve", "two hundred twelve"] }),
      heard({ heard: ["two hundred twelve"], right: false, room: -35 }),
    ]);
    await open(trial);
    expect(page()).toContain("Say: one hundred twelve.");
    expect(page()).toContain("The ear of Tablebell listens.");
    for (let i = 0; i < 3; i++) await enter("Listen");
    const items = screen.getAllByRole("listitem").map((li) => li.textContent);
    expect(items).toEqual([
      "Heard “one hundred twelve”. That is right. It was sure.",
      "Heard perhaps “one hundred twelve” or “two hundred twelve”. It was not sure. It would ask again.",
      "Heard “two hundred twelve”. That is wrong. It was sure.",
    ]);
    expect(page()).toContain("The room is loud. It measures 35 decibels below the loudest.");
    expect(page()).toContain("Heard right: 1 of 3.");
    await enter("Say it three more times");
    expect(screen.getAllByRole("listitem")).toHaveLength(1);
  });

  it("tells a screen reader each outcome as it comes", async () => {
    const { trial } = ear([heard()]);
    await open(trial);
    await enter("Listen");
    expect(screen.getAllByRole("status").map((status) => status.textContent)).toContain(
      "Heard “one hundred twelve”. That is right. It was sure.",
    );
  });

  it("offers no listening where no ear listens, and says why", async () => {
    const { trial } = ear([], { ear: "none", own: "off" });
    await open(trial);
    expect(screen.queryByRole("button", { name: "Listen" })).toBeNull();
    expect(page()).toContain("Nobody chose listening.");
  });

  it("fetches the browser's language only when a keeper presses that, after saying what it is", async () => {
    const { trial, asked } = ear([], { ear: "none", own: "no microphone", language: "can be fetched" });
    await open(trial);
    expect(asked.installs).toBe(0);
    expect(page()).toContain("Nothing you say is sent.");
    await enter("Fetch the language");
    expect(asked.installs).toBe(1);
    expect(screen.queryByRole("button", { name: "Fetch the language" })).toBeNull();
  });

  it("shuts the ear when it is left", async () => {
    const { trial, asked } = ear([]);
    await open(trial);
    await enter("Back to the drawer");
    expect(asked.stops).toBe(1);
  });
});
