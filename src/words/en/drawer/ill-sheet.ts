// The part of the sheet for high glucose and ill days: read aloud against the paper, and looked over by whoever gave the card.
import type { DoseCard } from "#events/card.ts";
import { ketoneLineOf, stripLevels } from "#rules/glucose/ketones.ts";
import { ketonesWords } from "#words/en/ketones.ts";
import { fieldName } from "./fields.ts";
import { optionName } from "./options.ts";
import type { SheetLine } from "./sheet.ts";

const BLANK = "Blank. Call the clinic.";
const line = (field: string, value: string): SheetLine => ({ label: fieldName(field), value });

export function illLines(card: DoseCard): SheetLine[] {
  const { ketones, sickDay } = card;
  return [
    ...(ketones
      ? [
          line("ketones", optionName("ketones", ketones.test)),
          line("ketones.from", ketones.from === null ? "Blank." : `${ketones.from} ${card.glucoseUnit} or more`),
          line("ketones.whenIll", ketones.whenIll ? "Yes" : "No"),
          ...ketones.lines.map(({ from, says, call }, i) =>
            line(
              `ketones.lines.${i}`,
              `${ketonesWords(ketones.test, from)} or more: ${says ?? BLANK} ${optionName(`ketones.lines.${i}.call`, call)}.`,
            ),
          ),
        ]
      : [line("ketones", BLANK)]),
    ...(sickDay && sickDay.rules.length > 0 ? sickDay.rules.map((rule, i) => line(`sickDay.rules.${i}`, rule)) : [line("sickDay", BLANK)]),
    line("sickDay.callWhen", sickDay?.callWhen ?? BLANK),
  ];
}

/** Results to look over: just below each line and on it; of a strip every field. Own choice. */
function results(rule: NonNullable<DoseCard["ketones"]>): number[] {
  if (rule.test !== "blood") return [...stripLevels(rule.test)];
  const around = rule.lines.flatMap(({ from }) => [Math.max(0, Math.round((from - 0.1) * 10) / 10), from]);
  return [...new Set(around)].sort((a, b) => a - b);
}

/** Cells of the trial sheet: this result, and what the tablet would say. */
export function ketoneTrial(card: DoseCard): { asked: string; told: string }[] {
  const rule = card.ketones;
  if (!rule) return [];
  return results(rule).map((value) => {
    const found = ketoneLineOf(rule, value);
    const call = found && found.call !== "no" ? ` ${optionName("ketones.lines.0.call", found.call)}.` : "";
    return { asked: `Ketones: ${ketonesWords(rule.test, value)}`, told: `${found?.says ?? BLANK}${call}` };
  });
}
