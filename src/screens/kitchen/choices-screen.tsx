// One question and its answers, for the small screens around the walk.
import type { ComponentChildren } from "preact";
import { useEffect, useState } from "preact/hooks";
import { Bar, type Chrome } from "#screens/shared/bar.tsx";
import { useHearable } from "#screens/shared/hear.ts";
import { BigButton, type ButtonRole } from "#ui/button.tsx";
import { Screen } from "#ui/screen.tsx";
import { FIXED } from "#words/en/fixed.ts";

export interface ChoiceButton {
  label: string;
  role?: ButtonRole;
  byHand?: boolean;
  /** What may be said for it besides its label. */
  also?: readonly string[];
  press(): void;
}

export interface ChoicesScreenProps {
  title: string;
  lines?: readonly string[];
  /** After the lines; a change of these alone is not said. */
  calm?: readonly string[];
  /** All the lines stand in the head already. */
  inHead?: boolean;
  speaking: number;
  focusHeading: boolean;
  chrome: Chrome;
  buttons: readonly ChoiceButton[];
  /** Keeps the lower right corner, while the others turn two at a time. */
  stays?: ChoiceButton;
  /** Behind one of the buttons; whoever says them need not go there first. */
  heard?: readonly ChoiceButton[];
  banner?: ComponentChildren;
  /** In place of the heading, which then is for screen readers only. */
  head?: ComponentChildren;
  /** Letters do not grow: these words belong together, and stand on one page. */
  together?: boolean;
  /** Beside the words: the one thing to look at. */
  side?: ComponentChildren;
  /** Only a hand may choose here. */
  byHand?: boolean;
}

/** A question whose answers can be pressed or said. */
export function ChoicesScreen({ byHand = false, heard = [], ...props }: ChoicesScreenProps) {
  const { title, lines = [], calm = [], buttons } = props;
  useHearable({ title, lines, calm, buttons: [...buttons, ...(props.stays ? [props.stays] : []), ...heard] }, byHand);
  return <TurnedScreen {...props} />;
}

/** Labels longer than this fill three lines of a button: then letters stop growing, so that the words above keep their room. */
const LONG_LABEL = 20;
/** So short that two stand side by side in portrait, at every size and with an arrow. */
const BRIEF_LABEL = 3;
export const allBrief = (labels: readonly string[]): boolean => labels.every((label) => label.length <= BRIEF_LABEL);
export const anyLong = (labels: readonly string[]): boolean => labels.some((label) => label.length > LONG_LABEL);

function pageOf(buttons: readonly ChoiceButton[], stays: ChoiceButton | undefined, from: number, turnTo: (to: number) => void) {
  const all = stays ? [...buttons, stays] : buttons;
  if (all.length <= 4) return all;
  const many = stays ? 2 : 3;
  const next: ChoiceButton = { label: FIXED.more, press: () => turnTo(from + many < buttons.length ? from + many : 0) };
  if (!stays) return [...buttons.slice(from, from + many), next];
  const [one, ...two] = buttons.slice(from, from + many);
  return one ? [one, next, ...two, stays] : [next, stays];
}

/** Up to four buttons stand at the bottom. Of more, three at a time, and a fourth that brings the next three; by voice all are heard. */
export function TurnedScreen({
  title,
  lines = [],
  calm = [],
  inHead = false,
  buttons,
  stays,
  speaking,
  chrome,
  focusHeading,
  banner,
  head,
  together = false,
  side,
}: Omit<ChoicesScreenProps, "byHand" | "heard">) {
  const [from, turnTo] = useState(0);
  const which = buttons.map((b) => b.label).join("|");
  useEffect(() => turnTo(0), [which]);
  const shown = pageOf(buttons, stays, from, turnTo);
  return (
    <Screen
      title={title}
      bar={<Bar chrome={chrome} />}
      sentences={(inHead ? [] : [...lines, ...calm]).map((text, i) => ({ text, current: i === speaking }))}
      moreLabel={FIXED.readOn}
      focusHeading={focusHeading}
      banner={banner}
      side={side}
      hideTitle={head !== undefined || (buttons.length > 2 && lines.length + calm.length > 0)}
      dense={together || anyLong(shown.map((b) => b.label))}
      brief={allBrief(shown.map((b) => b.label))}
      actions={shown.map((b) => <BigButton key={b.label} label={b.label} role={b.role ?? "choice"} onPress={b.press} />)}
    >
      {head}
    </Screen>
  );
}
