// Up to four large choices. More than four is more than one screen: that is for the caller to split.
import type { ComponentChildren } from "preact";
import { BigButton } from "./button.tsx";

export interface Choice {
  id: string;
  label: string;
  onPress: () => void;
  icon?: ComponentChildren;
  /** Given where one choice stays chosen. */
  pressed?: boolean;
}

export interface ChoiceListProps {
  /** Names the group for screen readers. */
  name: string;
  choices: readonly Choice[];
}

export function ChoiceList({ name, choices }: ChoiceListProps) {
  if (choices.length > 4) throw new Error(`${choices.length} choices on one screen: 4 at most`);
  return (
    <fieldset class="choices" aria-label={name}>
      {choices.map(({ id, ...choice }) => (
        <BigButton key={id} role="choice" {...choice} />
      ))}
    </fieldset>
  );
}
