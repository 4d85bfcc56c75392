// One page for whoever comes when the person does not answer. It is said line by line, at the pace of who reads along.
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import type { Stamp } from "#events/stamp.ts";
import type { Chrome } from "#screens/shared/bar.tsx";
import { useHearable } from "#screens/shared/hear.ts";
import type { HouseState, PersonState } from "#walk/state.ts";
import { HELPER, helperPage } from "#words/en/helper.ts";
import { type ChoiceButton, TurnedScreen } from "./choices-screen.tsx";

export interface HelperScreenProps {
  house: HouseState;
  me: PersonState;
  now: Stamp;
  focusHeading: boolean;
  chrome: Chrome;
  banner: ComponentChildren;
  onClose(): void;
}

export function HelperScreen({ house, me, now, focusHeading, chrome, banner, onClose }: HelperScreenProps) {
  const [at, turnTo] = useState(0);
  const { facts, todo } = helperPage(house, me, now);
  const lines = [...facts, ...todo];
  const line = Math.min(at, lines.length - 1);
  const last = line === lines.length - 1;
  // The page is left by Back, as every screen is: a second button for it would take the room of two lines.
  const buttons: ChoiceButton[] = [{ label: last ? HELPER.first : HELPER.next, role: "main", press: () => turnTo(last ? 0 : line + 1) }];
  useHearable({ title: HELPER.title, lines: [lines[line] ?? ""], buttons }, false);
  return (
    <TurnedScreen
      title={HELPER.title}
      lines={lines}
      speaking={line}
      focusHeading={focusHeading}
      chrome={{ ...chrome, onBack: onClose }}
      banner={banner}
      buttons={buttons}
      together
    />
  );
}
