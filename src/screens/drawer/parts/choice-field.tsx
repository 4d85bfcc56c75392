// One answer of several, as native radio buttons: arrows move, the space bar chooses, a screen reader knows them.
import { useId } from "preact/hooks";

export interface ChoiceFieldProps {
  label: string;
  options: readonly { value: string; label: string }[];
  value: string;
  onChoose: (value: string) => void;
  problem?: string;
}

export function ChoiceField({ label, options, value, onChoose, problem }: ChoiceFieldProps) {
  const id = useId();
  return (
    <fieldset
      class="field choice-field"
      data-problem={problem ? "yes" : undefined}
      aria-describedby={problem ? `${id}-problem` : undefined}
    >
      <legend class="field-label">{label}</legend>
      {problem ? (
        <p class="field-problem" id={`${id}-problem`}>
          {problem}
        </p>
      ) : null}
      {options.map((option) => (
        <label key={option.value} class="choice-option">
          <input type="radio" name={id} value={option.value} checked={option.value === value} onChange={() => onChoose(option.value)} />
          <span>{option.label}</span>
        </label>
      ))}
    </fieldset>
  );
}

export interface TickFieldProps {
  label: string;
  checked: boolean;
  onTick: (checked: boolean) => void;
}

export function TickField({ label, checked, onTick }: TickFieldProps) {
  return (
    <label class="choice-option tick-field">
      <input type="checkbox" checked={checked} onChange={(event) => onTick(event.currentTarget.checked)} />
      <span>{label}</span>
    </label>
  );
}
