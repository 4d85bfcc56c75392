// A dose taken away from home: how many units and how long ago, each with "I do not know".
import { useState } from "preact/hooks";
import type { Intent } from "#events/intent.ts";
import { checkUnits } from "#rules/pen/units.ts";
import type { Chrome } from "#screens/shared/bar.tsx";
import { Bar } from "#screens/shared/bar.tsx";
import { NumberPad } from "#ui/number-pad.tsx";
import { Screen } from "#ui/screen.tsx";
import { FIXED } from "#words/en/fixed.ts";
import { ChoicesScreen } from "./choices-screen.tsx";

export interface LaterScreenProps {
  person: string;
  speaking: number;
  focusHeading: boolean;
  chrome: Chrome;
  onIntent(intent: Intent): void;
}

const AGO: readonly { label: string; minutes: number | null }[] = [
  { label: "Less than 1 hour ago", minutes: 0 },
  { label: "1 hour ago", minutes: 60 },
  { label: "2 hours ago", minutes: 120 },
  { label: "3 hours ago", minutes: 180 },
  { label: "4 hours ago", minutes: 240 },
  { label: "I do not know", minutes: null },
];

export function LaterScreen(props: LaterScreenProps) {
  const [text, setText] = useState("");
  const [units, setUnits] = useState<number | null | undefined>(undefined);
  if (units !== undefined) {
    const buttons = AGO.map((a) => ({
      label: a.label,
      press: () => props.onIntent({ do: "tell a dose later", person: props.person, units, minutesAgo: a.minutes }),
    }));
    return (
      <ChoicesScreen
        {...props}
        chrome={{ ...props.chrome, onBack: () => setUnits(undefined) }}
        title="When was it?"
        lines={["When was it?"]}
        buttons={buttons}
      />
    );
  }
  const done = () => {
    const checked = checkUnits(text, "0.5");
    // An empty pad means that the number is not known.
    if (text === "") setUnits(null);
    else if (checked.ok) setUnits(checked.units);
  };
  return (
    <Screen
      title="How many units?"
      bar={<Bar chrome={props.chrome} />}
      sentences={[{ text: "How many units? Leave it empty if you do not know.", current: false }]}
      moreLabel={FIXED.readOn}
      focusHeading={props.focusHeading}
      shape="pad"
    >
      <NumberPad
        value={text}
        onDigit={(d) => setText((t) => (t.length < 4 ? t + d : t))}
        onPoint={() => setText((t) => `${t}.`)}
        onDelete={() => setText((t) => t.slice(0, -1))}
        onDone={done}
        unitWords="units"
        label={FIXED.numberIs}
        doneLabel={FIXED.ok}
        deleteLabel={FIXED.delete}
      />
    </Screen>
  );
}
