// Draws what a form asks. A problem stands beside its field, and nothing that was typed is ever taken away.
import { useEffect, useRef, useState } from "preact/hooks";
import type { Draft, Problem } from "#keeping/problem.ts";
import { BigButton } from "#ui/button.tsx";
import { TextField, type TextFieldProps } from "#ui/text-field.tsx";
import { fieldHint, fieldName } from "#words/en/drawer/fields.ts";
import { optionName, unitWords } from "#words/en/drawer/options.ts";
import { sayProblem } from "#words/en/drawer/problems.ts";
import { ChoiceField, TickField } from "./choice-field.tsx";
import { LongField } from "./long-field.tsx";
import type { Section, Spec } from "./spec.ts";

export interface FormProps {
  sections: readonly Section[];
  draft: Draft;
  problems: readonly Problem[];
  /** The unit of glucose that belongs to this form, for the words beside the boxes. */
  glucose?: string;
  onChange(field: string, value: string): void;
}

export function Form({ sections, ...rest }: FormProps) {
  const root = useRef<HTMLDivElement>(null);
  const [goTo, setGoTo] = useState<string | null>(null);
  useEffect(() => {
    if (goTo === null) return;
    root.current?.querySelector<HTMLInputElement>(`[data-field="${goTo}"] input`)?.focus();
    setGoTo(null);
  }, [goTo]);
  return (
    <div ref={root}>
      {sections.map((section) => (
        <section key={section.heading ?? ""} aria-label={section.heading}>
          {section.heading === undefined ? null : <h2>{section.heading}</h2>}
          {section.specs.map((spec) => (
            <Field key={spec.field} spec={spec} {...rest} />
          ))}
          {section.more ? (
            <div class="drawer-actions">
              {section.more.map(({ label, goesTo, onPress }) => (
                <BigButton
                  key={label}
                  role="choice"
                  label={label}
                  onPress={() => {
                    onPress();
                    setGoTo(goesTo);
                  }}
                />
              ))}
            </div>
          ) : null}
        </section>
      ))}
    </div>
  );
}

const KEYBOARD = { text: "text", name: "text", long: "text", number: "decimal", phone: "tel", pin: "numeric" } as const;

function Field({ spec, ...form }: { spec: Spec } & Omit<FormProps, "sections">) {
  const { draft, problems, glucose = "", onChange } = form;
  const { field } = spec;
  if (spec.kind === "row") {
    return (
      <div class={spec.below ? "field-row field-below" : "field-row"} data-field={field}>
        {spec.specs.map((inner) => (
          <Field key={inner.field} spec={inner} {...form} />
        ))}
      </div>
    );
  }
  const value = draft[field] ?? "";
  const label = fieldName(field);
  const found = problems.find((problem) => problem.field === field);
  const problem = found ? { problem: sayProblem(found) } : {};
  if (spec.kind === "tick")
    return <TickField label={label} checked={value === "yes"} onTick={(on) => onChange(field, on ? "yes" : "no")} />;
  if (spec.kind === "choice") {
    const options = spec.options.map((option) => ({ value: option, label: optionName(field, option) }));
    return <ChoiceField label={label} options={options} value={value} onChoose={(option) => onChange(field, option)} {...problem} />;
  }
  const hint = spec.hint ?? fieldHint(field);
  const common = { label, value, onInput: (text: string) => onChange(field, text), ...problem, ...(hint === undefined ? {} : { hint }) };
  if (spec.kind === "long") return <LongField {...common} />;
  const unit = unitWords(field, glucose);
  const extra: Partial<TextFieldProps> = {
    keyboard: KEYBOARD[spec.kind],
    ...(unit === "" ? {} : { unitWords: unit }),
    ...(spec.kind === "pin" ? { secret: true, fill: "new-password" as const } : {}),
    ...(spec.kind === "name" ? { fill: "name" as const } : {}),
  };
  return <TextField {...common} {...extra} />;
}
