// The first screen of a new household: what this is, what it is not for, and two ways on.
import { BigButton } from "#ui/button.tsx";
import { Screen } from "#ui/screen.tsx";
import { FIRST } from "#words/en/first.ts";
import { CAUTIONS, FIXED, NOT_FOR } from "#words/en/fixed.ts";
import "./first.css";

export interface FirstScreenProps {
  onDemo(): void;
  onOwn(): void;
  /** Place of the sentence being spoken, or -1: the sentences are FIRST_LINES. */
  speaking?: number;
}

/** Shown and, where a voice was chosen already, spoken. */
export const FIRST_LINES: readonly string[] = [FIRST.welcome, FIRST.cautions, ...CAUTIONS, ...NOT_FOR];

export function FirstScreen({ onDemo, onOwn, speaking = -1 }: FirstScreenProps) {
  return (
    <Screen
      title={FIRST.title}
      bar={null}
      sentences={FIRST_LINES.map((text, place) => ({ text, current: place === speaking }))}
      moreLabel={FIXED.readOn}
      focusHeading
      actions={
        <>
          <BigButton role="choice" safe label={FIRST.demo} onPress={onDemo} />
          <BigButton role="main" label={FIRST.own} onPress={onOwn} />
        </>
      }
    />
  );
}
