// How many fingers: pressed on the pad, or said.
import { useState } from "preact/hooks";
import { MOST_FINGERS_TOLD } from "#rules/body/told-place.ts";
import { Bar } from "#screens/shared/bar.tsx";
import { useHearable } from "#screens/shared/hear.ts";
import { NumberPad } from "#ui/number-pad.tsx";
import { Screen } from "#ui/screen.tsx";
import { FIXED } from "#words/en/fixed.ts";
import { fingersSaid, LUMPS } from "#words/en/lumps.ts";
import type { ChoicesScreenProps } from "./choices-screen.tsx";

type FingerCountProps = Pick<ChoicesScreenProps, "chrome" | "speaking" | "focusHeading" | "banner"> & {
  question: string;
  onCount(count: number): void;
};

const COUNTS = Array.from({ length: MOST_FINGERS_TOLD + 1 }, (_, count) => count);

export function FingerCount({ question, chrome, speaking, focusHeading, banner, onCount }: FingerCountProps) {
  const [text, setText] = useState("");
  const buttons = COUNTS.map((count) => {
    const [label = "", ...also] = fingersSaid(count);
    return { label, also, press: () => onCount(count) };
  });
  useHearable({ title: question, lines: [question], buttons }, false);
  const count = Number(text);
  return (
    <Screen
      title={question}
      bar={<Bar chrome={chrome} />}
      sentences={[{ text: question, current: speaking === 0 }]}
      moreLabel={FIXED.readOn}
      focusHeading={focusHeading}
      banner={banner}
      shape="pad"
    >
      <NumberPad
        value={text}
        onDigit={(digit) => setText((before) => (COUNTS.includes(Number(before + digit)) ? String(Number(before + digit)) : before))}
        onDelete={() => setText((before) => before.slice(0, -1))}
        onDone={() => {
          if (text !== "") onCount(count);
        }}
        unitWords={LUMPS.fingers}
        label={FIXED.numberIs}
        doneLabel={FIXED.ok}
        deleteLabel={FIXED.delete}
      />
    </Screen>
  );
}
