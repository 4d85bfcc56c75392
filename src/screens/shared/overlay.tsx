// Help and "Something is wrong": laid over any step, and closing them loses nothing.
import type { Intent } from "#events/intent.ts";
import { type ChoiceButton, ChoicesScreen } from "#screens/kitchen/choices-screen.tsx";
import type { Offer } from "#walk/context.ts";
import type { HouseState } from "#walk/state.ts";
import { FIXED } from "#words/en/fixed.ts";
import { labelOf } from "#words/en/labels.ts";
import type { Chrome } from "./bar.tsx";

interface OverlayProps {
  house: HouseState;
  offers: readonly Offer[];
  chrome: Chrome;
  speaking: number;
  focusHeading: boolean;
  onIntent(intent: Intent): void;
  /** Back to where the overlay was opened. */
  onClose(): void;
  /** Out of all overlays: an answer was given. */
  onAnswered(): void;
}

export function WrongScreen(props: OverlayProps & { numbers: readonly string[] }) {
  const wrongs = props.offers.flatMap((o) => (o.offer === "press" && (o.role === "wrong" || o.intent.do === "leave") ? [o.intent] : []));
  const buttons: ChoiceButton[] = [
    { label: FIXED.nothingWrong, press: props.onClose },
    ...wrongs.map((intent) => ({
      label: labelOf(intent, props.house).shown,
      press: () => {
        props.onAnswered();
        props.onIntent(intent);
      },
    })),
  ];
  return (
    <ChoicesScreen
      {...props}
      chrome={{ ...props.chrome, onBack: props.onClose }}
      title={FIXED.whatIsWrong}
      lines={props.numbers}
      buttons={buttons}
      byHand={wrongs.some((intent) => intent.do === "open low") && Object.keys(props.house.people).length > 1}
    />
  );
}

export interface HelpActs {
  bigger(): void;
  theme(): void;
  dark: boolean;
  louder(): void;
  softer(): void;
  faster(): void;
  slower(): void;
  voice(): void;
  oneSwitch(): void;
  scanning: boolean;
  drawer(): void;
  dayBook(): void;
  about(): void;
  practice(): void;
}

export function HelpScreen(props: OverlayProps & { lines: readonly string[]; acts: HelpActs; inWalk: boolean }) {
  const { acts } = props;
  const leave = props.offers.flatMap((o) => (o.offer === "press" && o.intent.do === "leave" ? [o.intent] : []));
  const buttons: ChoiceButton[] = [
    { label: FIXED.close, press: props.onClose },
    { label: FIXED.bigger, press: acts.bigger },
    { label: acts.dark ? FIXED.light : FIXED.dark, press: acts.theme },
    { label: FIXED.voiceMode, press: acts.voice },
    { label: acts.scanning ? FIXED.noSwitch : FIXED.oneSwitch, press: acts.oneSwitch },
    { label: FIXED.louder, press: acts.louder },
    { label: FIXED.softer, press: acts.softer },
    { label: FIXED.slower, press: acts.slower },
    { label: FIXED.faster, press: acts.faster },
    ...leave.map((intent) => ({
      label: labelOf(intent, props.house).shown,
      press: () => {
        props.onAnswered();
        props.onIntent(intent);
      },
    })),
    ...(props.inWalk
      ? []
      : [
          { label: FIXED.dayBook, press: acts.dayBook },
          { label: FIXED.drawer, press: acts.drawer },
          { label: FIXED.practice, press: acts.practice },
        ]),
    { label: FIXED.about, press: acts.about },
  ];
  return (
    <ChoicesScreen
      {...props}
      chrome={{ ...props.chrome, onBack: props.onClose, onHelp: props.onClose }}
      title={FIXED.help}
      lines={props.lines}
      buttons={buttons}
    />
  );
}
