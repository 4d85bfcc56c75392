// Before anything of the demo goes: what will be lost, and a clear yes or no.
import { Confirm } from "#ui/confirm.tsx";
import { FIRST } from "#words/en/first.ts";
import { FIXED } from "#words/en/fixed.ts";
import "./first.css";

export interface OwnQuestionProps {
  /** own: an own household begins. demo: the demo begins anew. */
  about: "own" | "demo";
  onYes(): void;
  onNo(): void;
}

export function OwnQuestion({ about, onYes, onNo }: OwnQuestionProps) {
  const words = about === "own" ? FIRST.ownQuestion : FIRST.demoQuestion;
  return (
    <Confirm
      bar={null}
      title={words.title}
      sentences={words.lines.map((text) => ({ text, current: false }))}
      moreLabel={FIXED.readOn}
      focusHeading
      yes={{ label: words.yes, onPress: onYes }}
      no={{ label: words.no, onPress: onNo }}
    />
  );
}
