// @vitest-environment jsdom
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { act, cleanup, render } from "@testing-library/preact";
import { useState } from "preact/hooks";
import { afterEach, describe, expect, it, vi } from "vitest";
import type { Intent } from "#events/intent.ts";
import type { Person } from "#events/person.ts";
import { HelperScreen } from "#screens/kitchen/helper-screen.tsx";
import { KitchenScreen, type KitchenView } from "#screens/kitchen/kitchen-screen.tsx";
import { type HearableScreen, HearContext } from "#screens/shared/hear.ts";
import { lexiconOf, waysToSay } from "#speech/ear/lexicon.ts";
import { readManifest } from "#speech/ear/manifest.ts";
import { GuardProvider } from "#ui/guard-context.tsx";
import { helperPage } from "#words/en/helper.ts";
import { backgroundOnlyCard } from "../kit/cards.ts";
import { bring, me, odileAlone } from "../kit/explore/at-table.ts";
import { fixedCard, odile, odileNight, odilePen } from "../kit/people.ts";
import { Table } from "../kit/table.ts";
import { guard, press } from "./calm-press.ts";
import { captions, choices } from "./plate-kitchen.tsx";

afterEach(() => cleanup());

const chrome = { quiet: false, onHelp: vi.fn(), onAgain: vi.fn(), onQuiet: vi.fn(), onBack: vi.fn(), onWrong: vi.fn() };
const HOURS: Person["mealHours"] = [
  { meal: "lunch", from: "11:30", until: "13:00" },
  { meal: "dinner", from: "17:30", until: "19:00" },
];
const table = () => odileAlone({ background: backgroundOnlyCard.background }, { mealHours: HOURS });
const MINUTE = 60;

/** The kitchen screen with the real walk behind it. heard: what the ear would be told, the newest last. */
function open(t: Table) {
  const heard: HearableScreen[] = [];
  let draw: () => void = () => undefined;
  function Kitchen() {
    const [views, setViews] = useState<readonly KitchenView[]>([]);
    const [, redraw] = useState(0);
    draw = () => redraw((n) => n + 1);
    const send = (intent: Intent) => {
      t.send(intent);
      draw();
    };
    return (
      <KitchenScreen
        {...{ house: t.state, now: t.now, speaking: -1, focusHeading: false, chrome, banner: null, restBanner: null, noted: null }}
        {...{ views, onViews: setViews, onIntent: send }}
        {...{ onRead: vi.fn(), onDayBook: vi.fn(), onDrawer: vi.fn(), onHelper: vi.fn() }}
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
  const later = (minutes: number) => {
    t.pass(minutes * MINUTE);
    t.send({ do: "pass time" });
    act(() => draw());
  };
  return { heard: () => heard.at(-1), later };
}

describe("the resting screen", () => {
  it("shows what is due beside the clock, and today's list is one press away with all else under it", () => {
    const t = table();
    open(t);
    expect(document.querySelector(".clock-due")?.textContent).toBe("Now: lunch.");
    expect(choices()).toEqual(["Did I take it?", "Today", "I feel low", "Start a meal"]);
    press("Today");
    expect(captions()).toEqual(["Lunch: now, until 1:00.", "Dinner: from 5:30.", "Insulin glargine: at 9:30 in the evening."]);
  });

  it("says what is due when it is asked for, and does not speak up when that changes", () => {
    const t = table();
    const { heard, later } = open(t);
    expect(heard()).toMatchObject({ lines: [], calm: ["Now: lunch."] });
    t.send({ do: "open meal", person: "odile", meal: "lunch" }, { do: "leave" }, { do: "set aside", person: "odile" });
    later(1);
    expect(heard()).toMatchObject({ lines: [], calm: ["Next: dinner, from 5:30."] });
  });

  it("hears what stands behind Today without going there", () => {
    const { heard } = open(table());
    expect(heard()?.buttons.map(({ label }) => label)).toEqual(expect.arrayContaining(["Long-acting insulin", "Measure glucose"]));
  });

  it("asks for day and time where a start of the app keeps calls waiting, and no more once they were agreed", () => {
    const t = table();
    t.restart();
    const { heard } = open(t);
    // Said, and shown beside the clock that it asks about; what is due waits for the answer.
    expect(heard()).toMatchObject({ lines: ["Clock right? Press Today."], calm: [] });
    expect([...document.querySelectorAll(".clock-due")].map((e) => e.textContent)).toEqual(["Clock right? Press Today."]);
    press("Today");
    press("Yes, it is right");
    expect(t.state.doubt).toBeNull();
    expect(captions()[0]).toBe("Lunch: now, until 1:00.");
  });
});

describe("a reminder on the screen", () => {
  it("stands with its answers, and the answer is kept", () => {
    const t = table();
    const { later } = open(t);
    later(61);
    expect(captions().slice(0, 2)).toEqual(["Odile, no lunch is in the book.", "Is it time to eat?"]);
    press("About lunch");
    expect(choices()).toEqual(["Eaten elsewhere", "Not eating", "Later", "Lunch"]);
    press("Eaten elsewhere");
    expect(me(t).day.called[0]).toMatchObject({ answer: "eaten elsewhere" });
    expect(captions()).toEqual(["Saved. You ate somewhere else.", "Was insulin taken there? Then press Away from home."]);
    expect(choices()).toEqual(["Away from home", "OK"]);
  });

  it("of a background dose offers the walk and Later, and takes no word for a dose", () => {
    const t = odileAlone({ background: backgroundOnlyCard.background });
    const { later } = open(t);
    later(9 * 60 + 46);
    expect(captions().slice(0, 2)).toEqual(["Odile, no insulin glargine is in the book today.", "Look at the clock and at your card."]);
    press("About the insulin");
    expect(captions()[2]).toBe("Taken without me? Press Away from home.");
    expect(choices()).toHaveLength(3);
    press("Later");
    expect(me(t)).toMatchObject({ backgroundDoses: [], walk: null });
  });

  it("of a background dose leads to the words of one taken without the tablet, and goes once it was told", () => {
    const t = odileAlone({ background: backgroundOnlyCard.background });
    const { later } = open(t);
    later(9 * 60 + 46);
    press("About the insulin");
    press("Away from home");
    expect(me(t).walk).toBeNull();
    expect(captions()[0]).not.toContain("is in the book today");
    t.send({ do: "tell a dose later", person: "odile", units: 14, minutesAgo: 0, insulin: "glargine-100" });
    later(1);
    expect(choices()).not.toContain("About the insulin");
  });
});

describe("the page for the helper", () => {
  const lines = (t: Table) => {
    const { facts, todo } = helperPage(t.state, me(t), t.now);
    return { facts, todo };
  };

  it("says who, what was injected, when, eaten or not, the last reading, and what to do in order", () => {
    const t = bring(odileAlone(), "eat");
    t.pass(16 * MINUTE);
    expect(lines(t)).toEqual({
      facts: [
        "Odile needs help. The number to call: 911.",
        "Injected: 6 units of insulin lispro.",
        "When: today, 12:00 in the afternoon.",
        "Eaten: no.",
        "Last reading: 120 milligrams per deciliter, today, 12:00 in the afternoon.",
      ],
      todo: [
        "Not awake? Call 911 first.",
        "Awake, and can swallow? Sugar first.",
        "Give four glucose tablets, 4 grams each.",
        "Or give half a cup of orange juice.",
        "Then open the front door.",
        "Wait 15 minutes. Then measure again.",
        "Not awake? Nothing by mouth. No insulin.",
        "Turn them on their side.",
        "Call 911.",
      ],
    });
  });

  it("gives the sugar that the card asks for, and none that the clinic bars", () => {
    const t = odileAlone({ care: { ...fixedCard.care, treatGrams: 20 } }, { leftOutSugars: ["glucose-tablets", "glucose-tablets-small"] });
    expect(lines(t).todo.slice(2, 4)).toEqual([
      "Give one and a half tubes of glucose gel.",
      "Or give five and a half fluid ounces of orange juice.",
    ]);
  });

  it("says of what is not known that it is not known", () => {
    const t = odileAlone().send({ do: "tell a dose later", person: "odile", units: null, minutesAgo: null });
    t.send({ do: "open low", person: "odile" }, { do: "cannot swallow" });
    expect(lines(t).facts).toEqual([
      "Odile needs help. The number to call: 911.",
      "Injected: amount not known of insulin lispro.",
      "That was told, and not seen.",
      "When: not known.",
      "Eaten: not known.",
      "Last reading: not known.",
    ]);
    expect(lines(odileAlone()).facts).toContain("No mealtime insulin is in this book.");
  });

  it("names the newest dose of each insulin, and of none that the other is missing", () => {
    const t = table();
    expect(lines(t).facts).toEqual(
      expect.arrayContaining(["No mealtime insulin is in this book.", "No insulin glargine is in this book."]),
    );
    t.send({ do: "tell a dose later", person: "odile", units: 14, minutesAgo: 60, insulin: "glargine-100" });
    t.send({ do: "open low", person: "odile" });
    expect(lines(t).facts.slice(1, 5)).toEqual([
      "No mealtime insulin is in this book.",
      "Injected: 14 units of insulin glargine.",
      "That was told, and not seen.",
      "When: today, 11:00 in the morning.",
    ]);
    t.pass(49 * 60 * MINUTE);
    expect(lines(t).facts).toContain("No insulin glargine in this book for 2 days.");
  });

  it("says of an open needle step that nobody is sure of it", () => {
    const t = bring(odileAlone(), "inject");
    expect(lines(t).facts.slice(1, 3)).toEqual(["Injected: 6 units of insulin lispro.", "Nobody is sure how much went in."]);
  });

  it("says the certain dose behind one that is in doubt, and a long-acting insulin that no card names", () => {
    const t = bring(new Table([{ person: odile, card: fixedCard, pens: [odilePen, odileNight] }]), "done").send({ do: "finish" });
    t.send({ do: "tell a dose later", person: "odile", units: null, minutesAgo: null });
    expect(lines(t).facts.slice(1, 7)).toEqual([
      "Injected: amount not known of insulin lispro.",
      "That was told, and not seen.",
      "When: not known.",
      "Before it: 6 units of insulin lispro.",
      "When: today, 12:00 in the afternoon.",
      "Insulin glargine is not in this book.",
    ]);
  });

  it("is said line by line, at the pace of who reads along, and begins again from the top", () => {
    const t = bring(odileAlone(), "eat");
    t.pass(16 * MINUTE);
    const heard: HearableScreen[] = [];
    render(
      <HearContext.Provider value={(screen) => screen && heard.push(screen)}>
        <GuardProvider guard={guard}>
          <HelperScreen {...{ house: t.state, me: me(t), now: t.now, focusHeading: false, chrome, banner: null, onClose: vi.fn() }} />
        </GuardProvider>
      </HearContext.Provider>,
    );
    const { facts, todo } = lines(t);
    expect(captions()).toEqual([...facts, ...todo]);
    for (const line of [...facts, ...todo]) {
      expect(heard.at(-1)?.lines).toEqual([line]);
      if (line !== todo.at(-1)) press("Next line");
    }
    press("From the top");
    expect(heard.at(-1)?.lines).toEqual([facts[0]]);
  });
});

describe("what may be said on these screens", () => {
  it("is made of words that the ear knows", async () => {
    const ear = (file: string) => readFile(join(import.meta.dirname, "../../public/ear", file), "utf8");
    const lexicon = lexiconOf(await ear("words.tsv"), readManifest(JSON.parse(await ear("ear.json"))).phones);
    const phrases = [
      ...["today", "about lunch", "about dinner", "about breakfast", "about the insulin", "eaten elsewhere", "i ate elsewhere"],
      ...["not eating", "i am not eating", "later", "ask me later", "for the helper", "next line", "from the top", "go back"],
      ...["yes it is right", "no it is wrong", "away from home"],
    ];
    const unknown = phrases.filter((phrase) => waysToSay(phrase.split(" "), lexicon).length === 0);
    expect(unknown).toEqual([]);
  });
});
