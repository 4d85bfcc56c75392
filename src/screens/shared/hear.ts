// Buttons of the small screens around the walk, for the ear: what can be pressed can be said. Who it is can only be pressed.
import { createContext } from "preact";
import { useContext, useEffect, useLayoutEffect } from "preact/hooks";

export interface HearableButton {
  label: string;
  /** It chooses a person: pressed only, since a voice alone never does. */
  byHand?: boolean;
  /** Only said: the screen has no room for it, and another button leads to the same. */
  byVoice?: boolean;
  /** What may be said for it besides its label. */
  also?: readonly string[];
  press(): void;
}

export interface HearableScreen {
  title: string;
  lines: readonly string[];
  /** Shown after the lines and said with them; when they alone change, nothing is said. */
  calm?: readonly string[];
  buttons: readonly HearableButton[];
  /** A number that may be said here. */
  number?: HearableNumber;
  /** Who does not answer is asked again. */
  asksAgain?: boolean;
  /** By hand only: nothing is heard here, not even what is always there. */
  deaf?: boolean;
}

export interface HearableNumber {
  /** The whole number that another question asked for before: what fitted there in doubt and fits here too was heard twice. */
  askedBefore?: string;
  range: { low: number; high: number; step: 1 | 0.5 | 0.1; fractionsTo?: number };
  take(text: string): "taken" | "turned away";
}

export type Register = (screen: HearableScreen | null) => void;

export const HearContext = createContext<Register>(() => undefined);

/** Tells the ear and the mouth about this screen for as long as it is shown. byHand: nothing on it may be chosen by voice. */
export function useHearable(screen: HearableScreen, byHand: boolean): void {
  const register = useContext(HearContext);
  const { title, lines, calm = [], buttons, deaf = false } = screen;
  const what = JSON.stringify([title, lines, calm, buttons.map((b) => b.label), byHand, deaf]);
  useEffect(() => {
    register({ title, lines, calm, buttons: byHand ? [] : buttons, deaf });
  }, [register, what]);
  useEffect(() => () => register(null), [register]);
}

/** What Back on the screen does: said, or pressed as a key, it does the same. null: no screen shows one. */
export interface ShownBack {
  press: (() => void) | null;
}

export const BackContext = createContext<ShownBack>({ press: null });

export function useBack(press: () => void): void {
  const shown = useContext(BackContext);
  useLayoutEffect(() => {
    shown.press = press;
    return () => {
      if (shown.press === press) shown.press = null;
    };
  });
}
