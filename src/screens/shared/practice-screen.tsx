// Before practice: what it is, and who practises. It is not begun while a walk is open or a bell waits.
import { type ChoiceButton, ChoicesScreen } from "#screens/kitchen/choices-screen.tsx";
import { mayPractise } from "#walk/may-practise.ts";
import type { HouseState } from "#walk/state.ts";
import { FIXED } from "#words/en/fixed.ts";
import { PRACTICE } from "#words/en/practice.ts";
import { markedName } from "#words/en/who.ts";
import type { Chrome } from "./bar.tsx";

export interface PracticeScreenProps {
  house: HouseState;
  chrome: Chrome;
  speaking: number;
  focusHeading: boolean;
  onBegin(person: string): void;
  onBack(): void;
}

export function PracticeScreen({ house, chrome, onBegin, onBack, ...rest }: PracticeScreenProps) {
  const may = mayPractise(house);
  const people = Object.values(house.people);
  const several = people.length > 1;
  const begin: ChoiceButton[] = people.map(({ person }) => ({
    label: several ? markedName(person) : PRACTICE.start,
    role: several ? "choice" : "main",
    press: () => onBegin(person.id),
  }));
  return (
    <ChoicesScreen
      {...rest}
      chrome={{ ...chrome, onBack }}
      title={PRACTICE.title}
      lines={may ? [...PRACTICE.intro, ...(several ? [FIXED.who] : [])] : PRACTICE.busy}
      byHand={may && several}
      buttons={may ? begin : [{ label: FIXED.ok, role: "main", press: onBack }]}
    />
  );
}
