// The drawer with the rules behind it, and hands that use a keyboard only.
import { act, fireEvent, waitFor } from "@testing-library/preact";
import { useState } from "preact/hooks";
import { canonical } from "#events/canonical.ts";
import type { DoseCard } from "#events/card.ts";
import { NO_TRIES } from "#keeping/pin.ts";
import type { Draft } from "#keeping/problem.ts";
import { type DrawerProps, DrawerScreen } from "#screens/drawer/drawer-screen.tsx";
import { GuardProvider } from "#ui/guard-context.tsx";
import type { NewFact } from "#walk/decide.ts";
import { fold } from "#walk/fold.ts";
import { emptyHouse, type HouseState } from "#walk/state.ts";
import { fieldName } from "#words/en/drawer/fields.ts";
import { optionName } from "#words/en/drawer/options.ts";
import { guard, pressKey, wait } from "../calm-press.ts";

export const NOW = { wall: Date.UTC(2026, 5, 3, 17, 0, 0), mono: 1000, boot: "boot-1", zone: "America/Chicago", offset: -300 };
export const hashOf = (card: DoseCard): string => `hash of ${canonical(card).length}`;

export const PICTURE = "data:image/jpeg;base64,AAAA";
export const CODE = "ABCD-EFGH-JKLM-NPQR";

/** A PIN that is kept backwards: quick, and not the PIN itself. */
const backwards = (pin: string) => [...pin].reverse().join("");
const hashPin: DrawerProps["hashPin"] = async (pin) => ({ salt: "", hash: backwards(pin), rounds: 1 });
const checkPin: DrawerProps["checkPin"] = async (pin, kept) => (backwards(pin) === kept.hash ? "right" : "wrong");

export const withFacts = (facts: readonly NewFact[], from: HouseState = emptyHouse): HouseState =>
  facts.reduce((house, f) => fold(house, { readable: true, seq: house.lastSeq + 1, at: NOW, ...f }), from);

export const ines: NewFact = {
  person: null,
  walk: null,
  event: { type: "keeper added", keeper: { id: "k1", name: "Ines", pin: { salt: "", hash: backwards("2580"), rounds: 1 } } },
};
export const begun: NewFact = {
  person: null,
  walk: null,
  event: { type: "household begun", household: { kind: "home", emergencyNumber: "911", country: "US" } },
};

interface KitchenProps extends Partial<DrawerProps> {
  start?: HouseState;
  stored?: NewFact[];
  /** The disk refuses, with this detail. */
  refuses?: string;
}

export function Kitchen({ start = emptyHouse, stored = [], refuses, ...over }: KitchenProps) {
  const [house, setHouse] = useState(start);
  const [tries, setTries] = useState(NO_TRIES);
  const [ids] = useState({ next: 1 });
  const keep = async (facts: NewFact[]) => {
    if (refuses !== undefined) return { notStored: refuses };
    stored.push(...facts);
    setHouse((before) => withFacts(facts, before));
    return { notStored: null };
  };
  return (
    <GuardProvider guard={guard}>
      <DrawerScreen
        now={NOW}
        today="2026-06-03"
        prefs={{ mm: null, k: 1, theme: null }}
        onPrefs={() => undefined}
        hashCard={hashOf}
        hashPin={hashPin}
        checkPin={checkPin}
        newId={() => `id-${ids.next++}`}
        newCode={() => CODE}
        smallPicture={async (file) => (file.type === "image/jpeg" ? PICTURE : "not a picture")}
        pictureIn={async () => PICTURE}
        onClose={() => undefined}
        rowsBetween={async () => []}
        onPractise={() => undefined}
        tries={tries}
        onTries={setTries}
        {...over}
        house={house}
        keep={keep}
      />
    </GuardProvider>
  );
}

/** Presses a button with the Enter key and waits for what comes of it. */
export async function enter(name: string): Promise<void> {
  pressKey(name, "Enter");
  await waitFor(() => undefined);
  await new Promise((done) => setTimeout(done, 0));
}

/** The space bar on a radio button or a tick box, as browsers take it: the key comes first, the click follows. */
export function space(element: HTMLElement): void {
  wait(5000);
  element.focus();
  if (document.activeElement !== element) throw new Error("no focus: a keyboard could not reach it");
  if (fireEvent.keyDown(element, { key: " " })) fireEvent.click(element);
  fireEvent.keyUp(element, { key: " " });
}

/** Labels by their words: the forms are long, and searching by role takes seconds. */
const boxOf = (label: string): HTMLElement | null => {
  const found = [...document.querySelectorAll("label")].find((one) => one.textContent === label);
  return found ? (document.getElementById(found.htmlFor) ?? found.querySelector("input")) : null;
};
const groupOf = (field: string): Element | undefined =>
  [...document.querySelectorAll("fieldset")].find((group) => group.querySelector("legend")?.textContent === fieldName(field));

export function type(label: string, text: string): void {
  const box = boxOf(label);
  if (!(box instanceof HTMLInputElement || box instanceof HTMLTextAreaElement)) throw new Error(`${label} is no text box`);
  box.focus();
  fireEvent.input(box, { target: { value: text } });
}

export function choose(field: string, option: string): void {
  const words = optionName(field, option);
  const radio = [...(groupOf(field)?.querySelectorAll("label") ?? [])].find((label) => label.textContent === words)?.querySelector("input");
  if (!radio) throw new Error(`${field} has no answer ${words}`);
  space(radio);
}

/** False while the form does not ask for this field yet. */
function answer(field: string, value: string): boolean {
  const box = boxOf(fieldName(field));
  if (/\.bands\.\d+\.call$/.test(field)) {
    if (!box) return false;
    if (value === "yes") space(box);
    return true;
  }
  if (groupOf(field)) choose(field, value);
  else if (box) type(fieldName(field), value);
  else return false;
  return true;
}

/** Types a draft into the form on the screen, choices first where they open further fields. */
export function fill(draft: Draft): void {
  const left = new Map(Object.entries(draft).filter(([, value]) => value !== ""));
  // One drawing a round: as fast as a browser that fills in a form, and nothing may be lost by it.
  for (let round = 0; round < 5 && left.size > 0; round++) {
    void act(() => {
      for (const [field, value] of left) {
        if (answer(field, value)) left.delete(field);
      }
    });
  }
  if (left.size > 0) throw new Error(`no field for ${[...left.keys()].join(", ")}`);
}

export async function openWithPin(pin = "2580"): Promise<void> {
  type("PIN", pin);
  await enter("Open the drawer");
}
