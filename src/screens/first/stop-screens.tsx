// Screens on which nothing else goes on: an address that is not secure, a second window, a fault. Each says why, what to do, and whom to call.
import { BigButton } from "#ui/button.tsx";
import { Screen } from "#ui/screen.tsx";
import { FAULT, type FaultKind, INSECURE, SECOND_WINDOW } from "#words/en/first.ts";
import { FIXED } from "#words/en/fixed.ts";
import "./first.css";

const shown = (lines: readonly string[]) => lines.map((text) => ({ text, current: false }));

export interface InsecureScreenProps {
  /** The address as the browser shows it: "http://192.168.1.20:4173". */
  address: string;
  /** Loads the page again. */
  onAgain(): void;
}

export function InsecureScreen({ address, onAgain }: InsecureScreenProps) {
  return (
    <Screen
      title={INSECURE.title}
      bar={null}
      sentences={shown(INSECURE.lines(address))}
      moreLabel={FIXED.readOn}
      focusHeading
      actions={<BigButton role="main" safe label={INSECURE.again} onPress={onAgain} />}
    />
  );
}

export interface SecondWindowScreenProps {
  /** Takes the lock over: the other window stops writing. */
  onUseHere(): void;
}

export function SecondWindowScreen({ onUseHere }: SecondWindowScreenProps) {
  return (
    <Screen
      title={SECOND_WINDOW.title}
      bar={null}
      sentences={shown(SECOND_WINDOW.lines)}
      moreLabel={FIXED.readOn}
      focusHeading
      actions={<BigButton role="main" label={SECOND_WINDOW.here} onPress={onUseHere} />}
    />
  );
}

export interface FaultScreenProps {
  kind: FaultKind;
  /** In words, from lastSaved() of words/en/first.ts; null when nothing is known. */
  lastSaved: string | null;
  /** Whom to call: numbersToCall() of words/en/kitchen.ts. */
  numbers: readonly string[];
  /** For the keeper, as the browser said it. */
  detail?: string;
  /** Loads the page again; left out where that would not help. */
  onAgain?: () => void;
}

/** The paper way comes before the reason: the person at the table needs that, the keeper the other. */
export function FaultScreen({ kind, lastSaved, numbers, detail, onAgain }: FaultScreenProps) {
  const { title, lines } = FAULT[kind];
  const last = lastSaved === null ? [] : [FAULT.last(lastSaved)];
  const why = detail === undefined ? [] : [FAULT.detail(detail)];
  return (
    <Screen
      title={title}
      bar={null}
      sentences={shown([...lines, ...last, ...FAULT.paper, ...numbers, ...why])}
      moreLabel={FIXED.readOn}
      focusHeading
      actions={onAgain ? <BigButton role="main" safe label={FAULT.again} onPress={onAgain} /> : null}
    />
  );
}
