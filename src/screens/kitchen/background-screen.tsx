// Which background dose: by the card's hours. One dose a day is begun at once and never comes here.
import type { ComponentChildren } from "preact";
import type { Intent } from "#events/intent.ts";
import type { Chrome } from "#screens/shared/bar.tsx";
import { backgroundDosesOf } from "#walk/insulin.ts";
import type { HouseState, PersonState } from "#walk/state.ts";
import { FIXED } from "#words/en/fixed.ts";
import { labelOf } from "#words/en/labels.ts";
import { ChoicesScreen } from "./choices-screen.tsx";

export const backgroundIntents = (me: PersonState): Intent[] =>
  backgroundDosesOf(me.card?.card ?? null).map(({ at, insulin }) => ({
    do: "open background",
    person: me.person.id,
    at,
    insulin: insulin.id,
  }));

export interface BackgroundScreenProps {
  house: HouseState;
  me: PersonState;
  speaking: number;
  focusHeading: boolean;
  chrome: Chrome;
  banner: ComponentChildren;
  onIntent(intent: Intent): void;
}

export function BackgroundScreen({ house, me, onIntent, ...common }: BackgroundScreenProps) {
  const buttons = backgroundIntents(me).map((intent) => ({
    label: labelOf(intent, house).shown,
    also: labelOf(intent, house).said,
    press: () => onIntent(intent),
  }));
  return <ChoicesScreen {...common} title={FIXED.background} lines={[FIXED.whichBackground]} buttons={buttons} />;
}
