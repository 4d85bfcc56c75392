// A box for a few sentences of the card.
import { useId } from "preact/hooks";

export interface LongFieldProps {
  label: string;
  value: string;
  onInput: (value: string) => void;
  hint?: string;
  problem?: string;
}

export function LongField({ label, value, onInput, hint, problem }: LongFieldProps) {
  const id = useId();
  const about = [hint && `${id}-hint`, problem && `${id}-problem`].filter(Boolean).join(" ");
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
      <textarea
        id={id}
        class="field-box long-box"
        rows={3}
        value={value}
        aria-describedby={about === "" ? undefined : about}
        aria-invalid={problem ? true : undefined}
        onInput={(event) => onInput(event.currentTarget.value)}
      />
    </div>
  );
}
