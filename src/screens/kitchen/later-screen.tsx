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
  /** Background insulins of the card, beside mealtime insulin; none: nothing is asked. */
  insulins: readonly { id: string; name: string }[];
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

/** Background insulin works for a day: hours further back count. */
const LONG_AGO: typeof AGO = [
  { label: "Less than 1 hour ago", minutes: 0 },
  { label: "2 hours ago", minutes: 120 },
  { label: "4 hours ago", minutes: 240 },
  { label: "8 hours ago", minutes: 480 },
  { label: "12 hours ago", minutes: 720 },
  { label: "I do not know", minutes: null },
];

/** null: mealtime insulin. */
type Which = string | null;

export function LaterScreen(props: LaterScreenProps) {
  const [which, setWhich] = useState<Which | undefined>(props.insulins.length === 0 ? null : undefined);
  if (which === undefined) {
    const buttons = [
      { label: "Mealtime insulin", press: () => setWhich(null) },
      ...props.insulins.map(({ id, name }) => ({
        label: `${name.charAt(0).toUpperCase()}${name.slice(1)}`,
        press: () => setWhich(id),
      })),
    ];
    return <ChoicesScreen {...props} title="Which insulin?" lines={["Which insulin did you take?"]} buttons={buttons} />;
  }
  const onBack = props.insulins.length === 0 ? props.chrome.onBack : () => setWhich(undefined);
  return <AmountScreen {...props} chrome={{ ...props.chrome, onBack }} which={which} />;
}

function AmountScreen(props: LaterScreenProps & { which: Which }) {
  const { which } = props;
  const [text, setText] = useState("");
  const [units, setUnits] = useState<number | null | undefined>(undefined);
  if (units !== undefined) {
    const later = { do: "tell a dose later", person: props.person, units } as const;
    const buttons = (which === null ? AGO : LONG_AGO).map((a) => ({
      label: a.label,
      press: () => props.onIntent({ ...later, minutesAgo: a.minutes, ...(which === null ? {} : { insulin: which }) }),
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
