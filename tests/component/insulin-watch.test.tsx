// @vitest-environment jsdom
import { cleanup, render } from "@testing-library/preact";
import { useState } from "preact/hooks";
import { afterEach, describe, expect, it, vi } from "vitest";
import { KitchenScreen, type KitchenView } from "#screens/kitchen/kitchen-screen.tsx";
import { type HearableScreen, HearContext } from "#screens/shared/hear.ts";
import { GuardProvider } from "#ui/guard-context.tsx";
import { me, odileAlone } from "../kit/explore/at-table.ts";
import type { Table } from "../kit/table.ts";
import { guard, press } from "./calm-press.ts";
import { captions, choices } from "./plate-kitchen.tsx";

afterEach(() => cleanup());

const chrome = { quiet: false, onHelp: vi.fn(), onAgain: vi.fn(), onQuiet: vi.fn(), onBack: vi.fn(), onWrong: vi.fn() };

/** The kitchen screen with the real walk behind it. */
function open(t: Table, stores = true): { heard(): HearableScreen | undefined } {
  const heard: HearableScreen[] = [];
  function Kitchen() {
    const [views, setViews] = useState<readonly KitchenView[]>([]);
    const [, redraw] = useState(0);
    return (
      <KitchenScreen
        {...{ house: t.state, now: t.now, speaking: -1, focusHeading: false, chrome, banner: null, restBanner: null, noted: null }}
        {...{ views, onViews: setViews, onRead: vi.fn(), onDayBook: vi.fn(), onDrawer: vi.fn(), onHelper: vi.fn() }}
        onIntent={(intent) => {
          if (stores) t.send(intent);
          redraw((n) => n + 1);
        }}
      />
    );
  }
  render(
    <HearContext.Provider value={(screen) => screen && heard.push(screen)}>
      <GuardProvider guard={guard}>
        <Kitchen />
      </GuardProvider>
    </HearContext.Provider>,
  );
  return { heard: () => heard.at(-1) };
}

const watched = () => odileAlone().send({ do: "open mishap", person: "odile", mishap: "too much" }, { do: "heard mishap advice" });

describe("insulin that is watched, on the kitchen screen", () => {
  it("stands on top with what is to be done, shown and said alike, and leads to a reading", () => {
    const t = watched();
    const { heard } = open(t);
    expect(captions()).toEqual(["Too much insulin may be in.", "Odile, measure now."]);
    expect(heard()?.lines).toEqual(captions());
    expect(choices()[0]).toBe("Watch your glucose");
    press("Watch your glucose");
    expect(captions()).toContain("Measure each hour until 6:00 in the evening.");
    press("Measure now");
    expect(t.step()).toBe("wash");
    expect(me(t).walk?.kind).toBe("reading");
  });

  it("ends by a hand that says a doctor watches, and by no voice", () => {
    const t = watched();
    const { heard } = open(t);
    press("Watch your glucose");
    expect(heard()?.buttons.find(({ label }) => label === "A doctor watches")).toMatchObject({ byHand: true });
    press("A doctor watches");
    expect(captions()).toContain("Is a doctor with you now?");
    expect(heard()?.buttons.find(({ label }) => label === "Yes, a doctor")).toMatchObject({ byHand: true });
    press("No");
    expect(me(t).insulinWatch).not.toBeNull();
    expect(choices()).toContain("Measure now");
    press("A doctor watches");
    press("Yes, a doctor");
    expect(me(t).insulinWatch).toBeNull();
    expect(captions()).toEqual(["Saved. A doctor watches you now.", "The tablet asks for no more readings."]);
    press("OK");
    expect(choices()).not.toContain("Watch your glucose");
  });

  it("says nothing of saved while nothing is stored", () => {
    open(watched(), false);
    for (const name of ["Watch your glucose", "A doctor watches", "Yes, a doctor"]) press(name);
    expect(captions()).toContain("Is a doctor with you now?");
  });
});
