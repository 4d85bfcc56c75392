// What the form asks for high glucose and ill days.
import type { KetoneTest } from "#events/ill-rules.ts";
import { MOST_KETONE_LINES, MOST_SICK_DAY_RULES, stripOptions } from "#keeping/card-ill.ts";
import type { Draft } from "#keeping/problem.ts";
import type { Section, Spec } from "#screens/drawer/parts/spec.ts";
import { CARD } from "#words/en/drawer/card.ts";
import { PARTS } from "#words/en/drawer/fields.ts";
import { choice, number, where } from "./specs.ts";

const TESTS: readonly KetoneTest[] = ["blood", "urine words", "urine plus signs"];
const FIRST_LINES = 3;
const places = (n: number): number[] => Array.from({ length: n }, (_, i) => i);

function linesShown(draft: Draft): number {
  const typed = places(MOST_KETONE_LINES).filter((i) => ["from", "says", "call"].some((name) => draft[`ketones.lines.${i}.${name}`]));
  return Math.max(FIRST_LINES, Number(draft["rows.ketones"] ?? 0), (typed.at(-1) ?? -1) + 1);
}

function lineSpecs(draft: Draft, test: KetoneTest): Spec[] {
  return places(linesShown(draft)).map((i): Spec => {
    const at = `ketones.lines.${i}`;
    const from = test === "blood" ? number(`${at}.from`) : choice(`${at}.from`, ...stripOptions(test));
    return {
      kind: "row",
      field: at,
      below: true,
      specs: [from, { kind: "long", field: `${at}.says` }, choice(`${at}.call`, "no", "clinic", "emergency")],
    };
  });
}

export function illSection(draft: Draft, onChange: (field: string, value: string) => void): Section {
  const test = TESTS.find((t) => t === draft.ketones);
  const shown = linesShown(draft);
  const more = {
    label: CARD.otherRow,
    goesTo: `ketones.lines.${shown}`,
    onPress: () => onChange("rows.ketones", String(shown + 1)),
  };
  return {
    heading: PARTS.ill,
    specs: [
      choice("ketones", "blank", ...TESTS),
      ...where(test !== undefined, number("ketones.from"), choice("ketones.whenIll", "no", "yes")),
      ...(test ? lineSpecs(draft, test) : []),
      ...places(MOST_SICK_DAY_RULES).map((i): Spec => ({ kind: "text", field: `sickDay.rules.${i}` })),
      { kind: "long", field: "sickDay.callWhen" },
    ],
    ...(test && shown < MOST_KETONE_LINES ? { more: [more] } : {}),
  };
}
