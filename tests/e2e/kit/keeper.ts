// A keeper's hands in the drawer: by touch or by keys alone. Answers are found by the label that stands beside the box.
import type { ElementHandle, Locator } from "playwright-core";
import type { Draft } from "#keeping/problem.ts";
import { fieldName } from "#words/en/drawer/fields.ts";
import { optionName } from "#words/en/drawer/options.ts";
import type { Tablet } from "./tablet.ts";

/** What one place of a form is, as somebody who looks at it knows it. */
interface Place {
  kind: "text" | "choice" | "tick" | "button" | "other";
  label: string;
  /** Of a choice: its answers in order, and which is chosen. */
  options: string[];
  chosen: number;
  value: string;
}

/** Runs in the page. */
function placeOf(element: Element | null): Place {
  const none: Place = { kind: "other", label: "", options: [], chosen: -1, value: "" };
  if (element instanceof HTMLButtonElement) return { ...none, kind: "button", label: element.textContent ?? "" };
  const group = element?.closest("fieldset");
  if (group) {
    const radios = [...group.querySelectorAll("input")];
    return {
      ...none,
      kind: "choice",
      label: group.querySelector("legend")?.textContent ?? "",
      options: radios.map((radio) => radio.closest("label")?.textContent ?? ""),
      chosen: radios.findIndex((radio) => radio.checked),
    };
  }
  if (element instanceof HTMLInputElement && element.type === "checkbox")
    return { ...none, kind: "tick", label: element.closest("label")?.textContent ?? "", value: element.checked ? "yes" : "no" };
  if (element instanceof HTMLInputElement || element instanceof HTMLTextAreaElement)
    return { ...none, kind: "text", label: document.querySelector(`label[for="${element.id}"]`)?.textContent ?? "", value: element.value };
  return none;
}

/** Answers by their labels; a choice by the words of its answer. */
function byLabel(draft: Draft): Map<string, string> {
  const answers = Object.entries(draft).filter(([, value]) => value !== "");
  return new Map(
    answers.flatMap(([field, value]) => {
      const name = fieldName(field);
      return /^(rows|columns)\./.test(field) ? [] : [[name, value] as const, [`${name} in words`, optionName(field, value)] as const];
    }),
  );
}

const chosenIn = (place: Place, answers: Map<string, string>): number =>
  place.options.indexOf(answers.get(`${place.label} in words`) ?? "");

export interface KeeperHands {
  readonly how: "touch" | "keys";
  press(name: string): Promise<void>;
  /** Fills in the page from its first field to its last and presses the button. */
  fillIn(draft: Draft, then: string): Promise<void>;
  tickAll(): Promise<void>;
}

const button = (t: Tablet, name: string): Locator => t.page.getByRole("button", { name, exact: true }).first();
const ROW = "Another row";

/** A row of this table is still to be typed: the label of its first box is wanted and not there. */
async function wantsRow(t: Tablet, answers: Map<string, string>): Promise<(index: number) => boolean> {
  const shown = await t.page.locator("main label").allTextContents();
  const missing = [...answers.keys()].filter((name) => /, row \d+: units$/.test(name) && !shown.includes(name));
  const meals = await t.page
    .getByRole("button", { name: ROW })
    .evaluateAll((all) => all.map((b) => b.closest("section")?.getAttribute("aria-label") ?? ""));
  return (index) => missing.some((name) => name.startsWith(`${meals[index] ?? "?"},`));
}

export function fingers(t: Tablet): KeeperHands {
  const press = async (name: string) => {
    await t.settle();
    await button(t, name).tap({ timeout: 8000 });
  };
  async function answer(control: Locator, answers: Map<string, string>): Promise<void> {
    const handle: ElementHandle<Element> | null = await control.elementHandle();
    if (!handle) return;
    const place = await handle.evaluate(placeOf);
    if (place.kind === "choice") {
      const wanted = chosenIn(place, answers);
      if (wanted >= 0 && wanted !== place.chosen) await control.locator("label").nth(wanted).tap();
      return;
    }
    const value = answers.get(place.label);
    if (place.kind === "tick" && value === "yes" && place.value !== "yes") await control.tap();
    if (place.kind !== "text" || value === undefined || place.value === value) return;
    await control.tap();
    await t.page.keyboard.insertText(value);
  }
  return {
    how: "touch",
    press,
    async fillIn(draft, then) {
      const answers = byLabel(draft);
      const all = async (controls: Locator) => {
        for (let i = 0; i < (await controls.count()); i++) await answer(controls.nth(i), answers);
      };
      // What is chosen opens further fields, and the tables get their rows; then every box in its turn.
      await all(t.page.locator("main fieldset"));
      const rows = t.page.getByRole("button", { name: ROW });
      for (let presses = 0; presses < 40; presses++) {
        const wants = await wantsRow(t, answers);
        const index = Array.from({ length: await rows.count() }, (_, i) => i).find(wants);
        if (index === undefined) break;
        await t.settle();
        await rows.nth(index).tap();
        await t.page.waitForFunction(() => document.activeElement instanceof HTMLInputElement);
      }
      await all(t.page.locator("main fieldset, main input:not([type=radio]), main textarea"));
      await press(then);
    },
    async tickAll() {
      const boxes = t.page.locator("main input[type=checkbox]");
      for (let i = 0; i < (await boxes.count()); i++) await boxes.nth(i).tap();
    },
  };
}

export function keysAlone(t: Tablet): KeeperHands {
  const { keyboard } = t.page;
  const here = (): Promise<Place> => t.page.evaluate(`(${placeOf.toString()})(document.activeElement)`);
  async function press(name: string): Promise<void> {
    await button(t, name).waitFor({ timeout: 8000 });
    for (let steps = 0; steps < 200; steps++) {
      const place = await here();
      if (place.kind === "button" && place.label === name) {
        await t.settle();
        await keyboard.press("Enter");
        return;
      }
      await keyboard.press("Tab");
    }
    throw new Error(`Tab does not reach "${name}" on:\n${await t.words()}`);
  }
  async function answer(place: Place, answers: Map<string, string>): Promise<void> {
    const value = answers.get(place.label);
    if (place.kind === "choice") {
      const wanted = chosenIn(place, answers);
      if (wanted < 0 || wanted === place.chosen) return;
      if (wanted === 0 && place.chosen < 0) await keyboard.press("Space");
      const from = Math.max(0, place.chosen);
      for (let i = 0; i < Math.abs(wanted - from); i++) await keyboard.press(wanted > from ? "ArrowDown" : "ArrowUp");
    } else if (place.kind === "tick" && value === "yes" && place.value !== "yes") await keyboard.press("Space");
    else if (place.kind === "text" && value !== undefined && place.value !== value) await keyboard.type(value);
  }
  return {
    how: "keys",
    press,
    async fillIn(draft, then) {
      const answers = byLabel(draft);
      for (let steps = 0; steps < 400; steps++) {
        const place = await here();
        if (place.kind === "button" && place.label === then) break;
        if (place.kind === "button" && place.label === ROW) {
          const section = await t.page.evaluate(() => document.activeElement?.closest("section")?.getAttribute("aria-label") ?? "");
          const shown = await t.page.locator("main label").allTextContents();
          if (
            [...answers.keys()].some((name) => name.startsWith(`${section}, row `) && name.endsWith(": units") && !shown.includes(name))
          ) {
            await t.settle();
            await keyboard.press("Enter");
            await t.page.waitForFunction(() => document.activeElement instanceof HTMLInputElement);
            continue;
          }
        }
        await answer(place, answers);
        await keyboard.press("Tab");
      }
      await press(then);
    },
    async tickAll() {
      for (let steps = 0; steps < 60; steps++) {
        const place = await here();
        if (place.kind === "tick" && place.value === "no") await keyboard.press("Space");
        if (place.kind === "button" && place.label === "Go on") return;
        await keyboard.press("Tab");
      }
    },
  };
}
