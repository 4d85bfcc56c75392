// @vitest-environment jsdom
import { act, cleanup, render, screen } from "@testing-library/preact";
import { afterEach, describe, expect, it } from "vitest";
import { App } from "#app/app.tsx";
import type { Desk } from "#app/desk.ts";
import type { Intent } from "#events/intent.ts";
import { GuardProvider } from "#ui/guard-context.tsx";
import { PAD_BUTTON } from "#words/en/fixed.ts";
import { PRACTICE } from "#words/en/practice.ts";
import { setUp } from "../kit/fresh-house.ts";
import { byTheClock, practiceTable, TO_THE_NEEDLE, TO_THE_NEEDLE_BY_THE_CLOCK } from "../kit/practice-table.ts";
import { guard, press } from "./calm-press.ts";

afterEach(() => cleanup());

const page = (desk: Desk, practise: ((person: string) => void) | null) => (
  <GuardProvider guard={guard}>
    <App desk={desk} hasTones={() => true} notices={null} dayBook={() => null} drawer={() => null} practise={practise} />
  </GuardProvider>
);

const marks = () => [...document.querySelectorAll(".screen")].map((one) => one.querySelector(".screen-mark")?.textContent ?? null);

async function practising(facts = setUp) {
  const t = await practiceTable(facts);
  await t.practice.begin("odile");
  const desk = t.practice.desk.value;
  if (!desk) throw new Error("practice did not begin");
  render(page(desk, null));
  const answer = (...intents: Intent[]) => act(() => t.answer(...intents));
  return { ...t, desk, answer };
}

describe("the strip that says it is practice", () => {
  it("stands on every screen of the walk, from the first to the last", async () => {
    const t = await practising();
    const after: Intent[] = [
      { do: "button is down" },
      { do: "needle came out early" },
      { do: "window not seen" },
      { do: "button feels", how: "flat" },
      { do: "put away" },
      { do: "eating" },
    ];
    let screens = 0;
    for (const intent of [...TO_THE_NEEDLE, ...after]) {
      expect([t.step(), marks()]).toEqual([t.step(), [PRACTICE.banner]]);
      screens++;
      await t.answer(intent);
    }
    expect(t.step()).toBe("done");
    expect(marks()).toEqual([PRACTICE.banner]);
    expect(screens).toBeGreaterThanOrEqual(20);
  });

  it("stands on every screen of a background walk too", async () => {
    const t = await practising(byTheClock());
    const after: Intent[] = [{ do: "button is down" }, { do: "needle came out early" }, { do: "window is at zero" }, { do: "put away" }];
    for (const intent of [...TO_THE_NEEDLE_BY_THE_CLOCK, ...after]) {
      expect([t.step(), marks()]).toEqual([t.step(), [PRACTICE.banner]]);
      await t.answer(intent);
    }
    expect([t.step(), marks()]).toEqual(["done", [PRACTICE.banner]]);
  });

  it("stands over the pad, Help, who speaks and what the tool is", async () => {
    const t = await practising();
    await t.answer({ do: "already washed" });
    press(PAD_BUTTON.reading);
    expect(document.querySelector(".screen-pad")).not.toBeNull();
    expect(marks()).toEqual([PRACTICE.banner]);
    for (const overlay of ["help", "voice", "about"] as const) {
      await act(() => t.desk.open(overlay));
      expect([overlay, marks()]).toEqual([overlay, [PRACTICE.banner]]);
    }
  });

  it("stands nowhere in the house itself", async () => {
    const t = await practiceTable();
    await t.real.send({ do: "open meal", person: "odile", meal: "lunch" });
    render(page(t.real, () => undefined));
    expect(marks()).toEqual([null]);
  });
});

describe("the way into practice", () => {
  it("is behind Help in the kitchen, says what it is, and begins with one press", async () => {
    const t = await practiceTable();
    const began: string[] = [];
    render(page(t.real, (person) => void began.push(person)));
    await act(() => t.real.open("practice"));
    expect([...document.querySelectorAll(".caption")].map((line) => line.textContent)).toEqual(PRACTICE.intro);
    press(PRACTICE.start);
    expect(began).toEqual(["odile"]);
    expect(t.real.overlay.value).toBeNull();
  });

  it("is shut while a walk is open", async () => {
    const t = await practiceTable();
    await t.real.send({ do: "open meal", person: "odile", meal: "lunch" });
    await t.real.send({ do: "leave" });
    render(page(t.real, () => undefined));
    await act(() => t.real.open("practice"));
    expect(screen.queryByRole("button", { name: PRACTICE.start })).toBeNull();
    expect(document.body.textContent).toContain(PRACTICE.busy[0]);
  });
});
