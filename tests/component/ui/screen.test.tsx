// @vitest-environment jsdom
import { fireEvent, render, screen } from "@testing-library/preact";
import { describe, expect, it, vi } from "vitest";
import { BigButton } from "#ui/button.tsx";
import { ChoiceList } from "#ui/choice-list.tsx";
import { Confirm } from "#ui/confirm.tsx";
import { FiveThings } from "#ui/five-things.tsx";
import { GuardProvider } from "#ui/guard-context.tsx";
import { makeGuard } from "#ui/guards.ts";
import { Screen, type ScreenProps } from "#ui/screen.tsx";
import { guard as calm, press } from "../calm-press.ts";

const nothing = () => {};
const five = (
  <FiveThings
    name="Always here"
    help={{ label: "Help", onPress: nothing }}
    again={{ label: "Again", onPress: nothing }}
    quiet={{ label: "Quiet", onPress: nothing }}
    back={{ label: "Back", onPress: nothing }}
    wrong={{ label: "Something is wrong", onPress: nothing }}
  />
);
const base: ScreenProps = {
  title: "Wash your hands",
  bar: five,
  moreLabel: "More",
  sentences: [
    { text: "Use soap.", current: false },
    { text: "Press Next when they are dry.", current: true },
  ],
};

describe("a screen", () => {
  it.each([
    ["Who is it?", "Who is it?"],
    ["Wash your hands", "Wash your hands with soap and warm water."],
    ["Hard exercise?", "Hard exercise today?"],
  ])("shows no heading that a sentence below repeats, and keeps it for screen readers: %s", (title, text) => {
    render(<Screen {...base} title={title} sentences={[{ text, current: false }]} />);
    expect(screen.getByRole("heading", { name: title }).className).toBe("for-ears");
  });

  it("shows a heading that tells more than its sentences", () => {
    render(<Screen {...base} title="Your dose" sentences={[{ text: "Lunch: the card says 2 units.", current: false }]} />);
    expect(screen.getByRole("heading", { name: "Your dose" }).className).toBe("screen-title");
  });

  it("offers the same five things first, in the same order, whatever else it shows", () => {
    const names = () => screen.getAllByRole("button").map((button) => button.textContent?.replace("?", ""));
    const always = ["Help", "Again", "Quiet", "Back", "Something is wrong"];
    const { rerender } = render(<Screen {...base} />);
    expect(names()).toEqual(always);
    rerender(<Screen {...base} title="Dry" actions={<BigButton role="main" label="Next" onPress={nothing} />} side={<p>drawing</p>} />);
    expect(names()).toEqual([...always, "Next"]);
  });

  it("names each of the five by its word alone", () => {
    render(<Screen {...base} />);
    for (const name of ["Help", "Something is wrong"]) expect(screen.getByRole("button", { name })).toBeTruthy();
  });

  it("shows every spoken sentence in full and marks only the one being said", () => {
    render(<Screen {...base} />);
    const [soap, dry] = ["Use soap.", "Press Next when they are dry."].map((text) => screen.getByText(text));
    expect(soap?.dataset.current).toBeUndefined();
    expect(dry?.dataset.current).toBe("yes");
  });

  it("takes no tap in the first 600 ms after it came up, and none after it changed", () => {
    let ms = 0;
    const onPress = vi.fn();
    const at = (title: string) => (
      <GuardProvider guard={guard}>
        <Screen {...base} title={title} actions={<BigButton role="main" label="Next" onPress={onPress} />} />
      </GuardProvider>
    );
    const guard = makeGuard(() => ms);
    const { rerender } = render(at("one"));
    const tap = () => fireEvent.click(screen.getByRole("button", { name: "Next" }));
    ms = 599;
    tap();
    expect(onPress).toHaveBeenCalledTimes(0);
    ms = 600;
    tap();
    expect(onPress).toHaveBeenCalledTimes(1);
    ms = 5000;
    rerender(at("two"));
    ms = 5599;
    tap();
    expect(onPress).toHaveBeenCalledTimes(1);
    ms = 5601;
    tap();
    expect(onPress).toHaveBeenCalledTimes(2);
  });

  it("does not count a change of words as a change of screen", () => {
    let ms = 10_000;
    const onPress = vi.fn();
    const guard = makeGuard(() => ms);
    const saying = (said: number) => (
      <GuardProvider guard={guard}>
        <Screen
          {...base}
          sentences={base.sentences.map((sentence, place) => ({ ...sentence, current: place === said }))}
          actions={<BigButton role="main" label="Next" onPress={onPress} />}
        />
      </GuardProvider>
    );
    const { rerender } = render(saying(0));
    ms = 11_000;
    rerender(saying(1));
    ms = 11_050;
    fireEvent.click(screen.getByRole("button", { name: "Next" }));
    expect(onPress).toHaveBeenCalledTimes(1);
  });

  it("gives the heading the focus at each change, if asked to", () => {
    const { rerender } = render(<Screen {...base} />);
    expect(document.activeElement).toBe(document.body);
    rerender(<Screen {...base} focusHeading />);
    expect(document.activeElement?.textContent).toBe("Wash your hands");
    screen.getByRole("button", { name: "Again" }).focus();
    rerender(<Screen {...base} focusHeading title="Dry" />);
    expect(document.activeElement?.textContent).toBe("Dry");
  });

  it("has exactly one heading of the first level, on the number pad screen too", () => {
    render(<Screen {...base} shape="pad" />);
    expect(screen.getAllByRole("heading", { level: 1 })).toHaveLength(1);
  });

  it("writes no style into the markup", () => {
    const { container } = render(<Screen {...base} side={<p>drawing</p>} />);
    // The pager sets two properties through the object model; nothing else may.
    const styled = [...container.querySelectorAll("[style]")].map((element) => element.className);
    expect(styled).toEqual(["pager"]);
  });
});

describe("asking for a second yes", () => {
  it("is a screen with both answers, the one that changes nothing first", () => {
    const yes = vi.fn();
    const no = vi.fn();
    render(
      <GuardProvider guard={calm}>
        <Confirm
          {...base}
          title="Stop this walk?"
          yes={{ label: "Yes, stop here", onPress: yes }}
          no={{ label: "No, go on", onPress: no }}
        />
      </GuardProvider>,
    );
    expect(screen.queryByRole("dialog")).toBeNull();
    expect(
      screen
        .getAllByRole("button")
        .slice(-2)
        .map((button) => button.textContent),
    ).toEqual(["No, go on", "Yes, stop here"]);
    press("No, go on");
    expect([yes.mock.calls.length, no.mock.calls.length]).toEqual([0, 1]);
    press("Yes, stop here");
    expect([yes.mock.calls.length, no.mock.calls.length]).toEqual([1, 1]);
  });
});

describe("a list of choices", () => {
  const choices = (count: number) => Array.from({ length: count }, (_, n) => ({ id: String(n), label: `Choice ${n}`, onPress: nothing }));

  it("shows up to four, in a named group", () => {
    render(<ChoiceList name="What to do" choices={choices(4)} />);
    expect(screen.getByRole("group", { name: "What to do" }).querySelectorAll("button")).toHaveLength(4);
  });

  it("holds a fifth for a defect", () => {
    expect(() => render(<ChoiceList name="What to do" choices={choices(5)} />)).toThrow(/4 at most/);
  });
});
