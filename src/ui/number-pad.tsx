// The number pad: 1-2-3 on top, keys of 20 mm, Delete and the button that goes on 12 mm apart and away from the keys.
// It holds no value of its own: what was typed stays as it is when something is wrong with it.
import { useContext, useLayoutEffect, useRef } from "preact/hooks";
import { BigButton } from "./button.tsx";
import { GuardContext } from "./guard-context.tsx";
import { usePress } from "./press.ts";

export interface NumberPadProps {
  /** The digits typed so far, as typed. */
  value: string;
  onDigit: (digit: string) => void;
  /** Given only if the unit uses a point: then the point key is there. */
  onPoint?: () => void;
  onDelete: () => void;
  onDone: () => void;
  /** The unit in full words, shown beside the number. */
  unitWords: string;
  /** What the number is, for screen readers. */
  label: string;
  doneLabel: string;
  deleteLabel: string;
  /** The decimal mark of the person: "." or ",". */
  pointMark?: string;
}

const rows = ["123", "456", "789"];

export function NumberPad(props: NumberPadProps) {
  const { value, onDigit, onPoint, onDelete, onDone, pointMark = "." } = props;
  useTypedKeys(props);
  return (
    <div class="pad">
      <output class="pad-shown" aria-label={props.label} aria-live="off">
        <span class="pad-number" data-empty={value === "" ? "yes" : undefined}>
          {value}
        </span>
        <span class="pad-unit">{props.unitWords}</span>
      </output>
      <div class="pad-actions">
        <BigButton role="choice" label={props.deleteLabel} onPress={onDelete} safe />
        <BigButton role="main" label={props.doneLabel} onPress={onDone} />
      </div>
      <div class="pad-keys">
        {rows.flatMap((row) => [...row].map((digit) => <PadKey key={digit} mark={digit} onPress={() => onDigit(digit)} />))}
        {onPoint ? <PadKey mark={pointMark} onPress={onPoint} /> : <span class="pad-gap" />}
        <PadKey mark="0" onPress={() => onDigit("0")} />
      </div>
    </div>
  );
}

function PadKey({ mark, onPress }: { mark: string; onPress: () => void }) {
  const press = usePress(onPress, "digit");
  return (
    <button type="button" class="button pad-key" {...press}>
      {mark}
    </button>
  );
}

/** Digits typed on a keyboard, a remote or a number block count wherever the focus is, except in a text field. */
function useTypedKeys(props: NumberPadProps) {
  const guard = useContext(GuardContext);
  const latest = useRef(props);
  latest.current = props;
  // A layout effect ends with its screen; a plain one lives until the next paint, and would hear one more key.
  useLayoutEffect(() => {
    const typed = (event: KeyboardEvent) => {
      if (event.repeat || event.ctrlKey || event.altKey || event.metaKey || inTextField(event.target)) return;
      const act = actionOf(event, latest.current);
      if (act === null) return;
      event.preventDefault();
      if (guard.allow(`typed ${event.key}`, /^[0-9.,]$/.test(event.key) ? "digit" : "act")) act();
    };
    window.addEventListener("keydown", typed);
    return () => window.removeEventListener("keydown", typed);
  }, [guard]);
}

function actionOf(event: KeyboardEvent, pad: NumberPadProps): (() => void) | null {
  if (/^[0-9]$/.test(event.key)) return () => pad.onDigit(event.key);
  if (event.key === "." || event.key === ",") return pad.onPoint ?? null;
  if (event.key === "Backspace") return pad.onDelete;
  // On a button Enter presses that button.
  if (event.key === "Enter" && !(event.target instanceof HTMLButtonElement)) return pad.onDone;
  return null;
}

function inTextField(target: EventTarget | null): boolean {
  return target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement;
}
