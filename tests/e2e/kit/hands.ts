// Three ways to answer the tablet: a finger, keys alone, a voice. Each presses one button by its name or gives one number.
import type { Locator } from "playwright-core";
import { TODAY } from "#words/en/due.ts";
import { FIXED } from "#words/en/fixed.ts";
import { digitsOf, inWords, soundAlike } from "#words/numbers.ts";
import type { Label } from "#words/say.ts";
import type { SpeechGlobal } from "./fake-speech.ts";
import type { Tablet } from "./tablet.ts";

export interface Hand {
  readonly how: "touch" | "keys" | "voice";
  press(label: Label): Promise<void>;
  /** Gives a number for the slot whose pad is behind the button of this name. */
  number(padButton: string, text: string): Promise<void>;
}

export const named = (tablet: Tablet, name: string): Locator => tablet.page.getByRole("button", { name, exact: true }).first();

/** The button itself, or after pressing the one that shows the rest of the answers, or the next few of them. */
async function find(tablet: Tablet, name: string, press: (button: Locator, name: string) => Promise<void>): Promise<Locator> {
  const button = named(tablet, name);
  const behind = tablet.page.getByRole("button", { name: new RegExp(`^(${FIXED.otherAnswers}|${FIXED.anotherPlace})$`) }).first();
  const more = tablet.page.locator(".screen-actions").getByRole("button", { name: FIXED.more, exact: true });
  const today = tablet.page.locator(".screen-actions").getByRole("button", { name: TODAY.title, exact: true });
  for (let turns = 0; turns < 12; turns++) {
    await button
      .or(behind)
      .or(more)
      .or(today)
      .first()
      .waitFor({ timeout: 8000 })
      .catch(async () => {
        throw new Error(`No button "${name}" on:\n${await tablet.words()}`);
      });
    if (await button.isVisible()) return button;
    // The screen may be laid out anew under the hand, and have all its answers on one page then: it is looked at again.
    const way = (await more.isVisible()) ? more : (await behind.isVisible()) ? behind : today;
    const called = way === more ? FIXED.more : way === behind ? FIXED.otherAnswers : TODAY.title;
    await press(way, called).catch(() => undefined);
  }
  throw new Error(`"${name}" is nowhere behind More on:\n${await tablet.words()}`);
}

const shown = (name: string): Label => ({ shown: name, said: [name.toLowerCase()] });

/** A finger on the glass, and nothing else. */
export function finger(tablet: Tablet): Hand {
  const tap = async (button: Locator) => {
    await tablet.settle();
    await button.tap({ timeout: 8000 });
  };
  const press = async ({ shown: name }: Label) => tap(await find(tablet, name, tap));
  return {
    how: "touch",
    press,
    async number(padButton, text) {
      await press(shown(padButton));
      for (const mark of text) await press(shown(mark));
      await press(shown(FIXED.ok));
    },
  };
}

/** Keys alone: Tab goes along, or the arrows go towards; Enter and Space press; digits are typed. */
export function keys(tablet: Tablet, way: "Tab" | "arrows"): Hand {
  let presses = 0;
  const go = async (button: Locator, name: string) => {
    for (let steps = 0; steps < 40; steps++) {
      const next = await button.evaluate((target) => {
        const from = document.activeElement;
        if (from === target) return null;
        if (!(from instanceof HTMLButtonElement)) return "ArrowRight";
        const here = from.getBoundingClientRect();
        const there = target.getBoundingClientRect();
        const across = Math.max(there.left - here.right, here.left - there.right);
        const down = Math.max(there.top - here.bottom, here.top - there.bottom);
        if (down > across) return there.top > here.top ? "ArrowDown" : "ArrowUp";
        return there.left > here.left ? "ArrowRight" : "ArrowLeft";
      });
      if (next === null) return;
      await tablet.page.keyboard.press(way === "Tab" ? "Tab" : next);
    }
    throw new Error(`${way} does not reach "${name}" on:\n${await tablet.words()}`);
  };
  const act = async (button: Locator, name: string) => {
    await go(button, name);
    await tablet.settle();
    await tablet.page.keyboard.press(presses++ % 2 === 0 ? "Enter" : "Space");
  };
  const press = async ({ shown: name }: Label) => act(await find(tablet, name, act), name);
  return {
    how: "keys",
    press,
    async number(padButton, text) {
      await press(shown(padButton));
      await named(tablet, FIXED.ok).waitFor();
      for (const mark of text) {
        await tablet.settle();
        await tablet.page.keyboard.press(mark);
      }
      // The button that opened the pad is gone, so Enter belongs to the pad.
      await tablet.page.keyboard.press("Enter");
    },
  };
}

/** A voice: waits until the tablet has spoken and listens, then says one phrase. */
export function voice(tablet: Tablet): Hand {
  const say = async (text: string) => {
    for (let tries = 0; tries < 80; tries++) {
      const heard = await tablet.page.evaluate((guess) => (globalThis as SpeechGlobal).fakeSpeech.hear([guess]), text);
      if (heard) return;
      await tablet.run(300);
    }
    throw new Error(`The tablet never listened for "${text}" on:\n${await tablet.words()}`);
  };
  return {
    how: "voice",
    press: ({ said }) => say(said.at(-1) ?? ""),
    // A teen and its ten would be asked about: they are said by their digits.
    number: (_padButton, text) => say(soundAlike(text) === null ? inWords(text, "en-US") : digitsOf(text).join(" ")),
  };
}
