// @vitest-environment jsdom
import { cleanup, fireEvent, render, screen } from "@testing-library/preact";
import { useState } from "preact/hooks";
import { afterEach, describe, expect, it, vi } from "vitest";
import type { Intent } from "#events/intent.ts";
import { DAY } from "#events/quantity.ts";
import { KitchenScreen, type KitchenView } from "#screens/kitchen/kitchen-screen.tsx";
import { type HearableScreen, HearContext } from "#screens/shared/hear.ts";
import { GuardProvider } from "#ui/guard-context.tsx";
import { fixedCard, odile, odilePen } from "../kit/people.ts";
import { Table } from "../kit/table.ts";
import { guard, pick, press } from "./calm-press.ts";
import { captions, choices } from "./plate-kitchen.tsx";

afterEach(() => cleanup());

const days = (n: number): number => (n * DAY) / 1000;
const due = () => {
  const t = new Table([{ person: odile, card: { ...fixedCard, validUntil: null, reviewBy: null }, pens: [odilePen] }]);
  t.pass(days(26));
  return t;
};
const chrome = { quiet: false, onHelp: vi.fn(), onAgain: vi.fn(), onQuiet: vi.fn(), onBack: vi.fn(), onWrong: vi.fn() };

/** The kitchen screen with the real walk behind it. heard: what the ear would be told. */
function open(t: Table, stores = true) {
  const sent: Intent[] = [];
  const heard: (HearableScreen | null)[] = [];
  function Kitchen() {
    const [views, setViews] = useState<readonly KitchenView[]>([]);
    const [, redraw] = useState(0);
    return (
      <KitchenScreen
        house={t.state}
        now={t.now}
        speaking={-1}
        focusHeading={false}
        chrome={chrome}
        banner={null}
        restBanner={null}
        views={views}
        onViews={setViews}
        noted={null}
        onRead={vi.fn()}
        onIntent={(intent) => {
          sent.push(intent);
          if (stores) t.send(intent);
          redraw((n) => n + 1);
        }}
        onDayBook={vi.fn()}
        onDrawer={vi.fn()}
        onHelper={vi.fn()}
      />
    );
  }
  render(
    <HearContext.Provider value={(screen) => heard.push(screen)}>
      <GuardProvider guard={guard}>
        <Kitchen />
      </GuardProvider>
    </HearContext.Provider>,
  );
  return { sent, heard };
}

const count = (digits: string) => {
  for (const digit of digits) press(digit);
  press("OK");
};

describe("the question about lumps on the kitchen screen", () => {
  it("stands among the four buttons when it is due, and is gone once answered", () => {
    const t = due();
    open(t);
    expect(captions()).toEqual(["Odile, feel for lumps when it suits you."]);
    expect(choices()).toEqual(["Feel for lumps", "More", "I feel low", "Start a meal"]);
    press("Feel for lumps");
    expect(captions()).toEqual([
      "Feel each place where you inject.",
      "A lump is thicker and firmer than the skin around it.",
      "Is there a new lump?",
    ]);
    press("No new lump");
    expect(captions()).toEqual(["Saved. The next question comes in four weeks."]);
    press("OK");
    expect(choices()).toEqual(["Did I take it?", "More", "I feel low", "Start a meal"]);
    press("More");
    expect(choices()).toEqual(["Measure glucose", "More", "I feel ill", "Start a meal"]);
    press("More");
    expect(choices()).toContain("Day book");
  });

  it("leads a found lump to its place, told by fingers from a landmark and read back", () => {
    const t = due();
    const { sent } = open(t);
    press("Feel for lumps");
    press("I found a lump");
    pick("Left thigh");
    press("Up from the knee");
    expect(captions()).toEqual(["How many fingers up from the knee?"]);
    count("8");
    expect(captions()).toEqual(["How many fingers outwards from there?"]);
    count("2");
    expect(captions()).toEqual(["Find your left knee.", "Go eight fingers up and two fingers outwards.", "Is the lump there?"]);
    press("Yes, it is there");
    const spot = {
      region: "thigh",
      side: "left",
      outMm: 2 * odile.body.fingerMm,
      downMm: odile.body.thighLengthMm - 8 * odile.body.fingerMm,
    };
    expect(sent).toEqual([{ do: "mark lump", person: "odile", spot }]);
    expect(captions()).toEqual(["Saved. No needle goes there now.", "Show the lump to your clinic."]);
  });

  it("lets a place be told again that was read back wrong, and stores nothing of the first", () => {
    const { sent } = open(due());
    press("Feel for lumps");
    press("I found a lump");
    pick("Right side of the belly");
    press("Below the navel");
    count("3");
    count("4");
    press("No, tell it again");
    expect(captions()).toEqual(["Where is the lump?"]);
    expect(sent).toEqual([]);
  });

  it("asks first about each old lump, where it was told", () => {
    const t = due();
    t.send({ do: "mark lump", person: "odile", spot: { region: "belly", side: "left", outMm: 68, downMm: 34 } });
    t.pass(days(28));
    const { sent } = open(t);
    press("Feel for lumps");
    expect(captions()[0]).toBe("A lump was noted on Wednesday, 1 July.");
    expect(captions().at(-1)).toBe("Is it still there?");
    press("It is gone");
    expect(sent).toEqual([{ do: "lump is gone", person: "odile", id: expect.any(String) }]);
    expect(captions().at(-1)).toBe("Is there a new lump?");
  });

  it("can be heard: every part and every count is among what may be said", () => {
    const { heard } = open(due());
    press("Feel for lumps");
    press("I found a lump");
    expect(heard.at(-1)?.buttons.map((b) => b.label)).toContain("Back of the right upper arm");
    pick("Left thigh");
    // The ear knows no groin and no knee.
    expect(heard.at(-1)?.buttons.map((b) => b.also)).toEqual([["down"], ["up"]]);
    press("Down from the groin");
    const said = heard.at(-1)?.buttons ?? [];
    expect(said.find((b) => b.label === "three")?.also).toContain("three fingers");
    expect(said).toHaveLength(25);
  });

  it("takes one press for one answer: a tremor's second tap lands on a screen that is deaf at first", () => {
    const { sent } = open(due());
    press("Feel for lumps");
    press("I found a lump");
    // At once, where "I found a lump" has just been.
    fireEvent.click(screen.getByRole("button", { name: "Right side of the belly" }));
    expect(captions()).toEqual(["Where is the lump?"]);
    expect(sent).toEqual([]);
  });

  it("says nothing is saved before it is", () => {
    open(due(), false);
    press("Feel for lumps");
    press("Not now");
    expect(captions()).toEqual(["One moment."]);
  });
});
