// A labelled text field for the drawer. Never type=number: scrolling changes it and bad input is dropped without a word.
import { useId } from "preact/hooks";

export interface TextFieldProps {
  label: string;
  value: string;
  onInput: (value: string) => void;
  /** Stands under the label. */
  hint?: string;
  /** What is wrong and what to do; the entry itself stays. */
  problem?: string;
  /** Shown after the box and read with the label. */
  unitWords?: string;
  keyboard?: "text" | "numeric" | "decimal" | "tel";
  /** Dots instead of letters, for a PIN. */
  secret?: boolean;
  fill?: "off" | "name" | "tel" | "current-password" | "new-password";
}

export function TextField(props: TextFieldProps) {
  const { label, value, onInput, hint, problem, unitWords, keyboard = "text", secret, fill = "off" } = props;
  const id = useId();
  const about = [hint && `${id}-hint`, problem && `${id}-problem`].filter(Boolean).join(" ");
  const box = {
    id,
    value,
    class: "field-box",
    inputMode: keyboard,
    autoComplete: fill,
    spellcheck: false,
    "aria-describedby": about === "" ? undefined : about,
    "aria-invalid": problem ? true : undefined,
    onInput: (event: Event & { currentTarget: HTMLInputElement }) => onInput(event.currentTarget.value),
  };
  return (
    <div class="field" data-problem={problem ? "yes" : undefined}>
      <label class="field-label" for={id}>
        {label}
      </label>
      {hint ? (
        <p class="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      ) : null}
      {problem ? (
        <p class="field-problem" id={`${id}-problem`}>
          {problem}
        </p>
      ) : null}
      <div class="field-line">
        {secret ? <input type="password" {...box} /> : <input type="text" {...box} />}
        {unitWords ? <span class="field-unit">{unitWords}</span> : null}
      </div>
    </div>
  );
}
