import type { Measured, Row } from "./measured.ts";
import { corpus } from "./voice/corpus.ts";
import { crew } from "./voice/crew.ts";
import { answerRows, dialogueRows, figures, foreignRows, reactionRows, swapRow, voiceRows } from "./voice/figures.ts";

/**
 * How well the ear hears: spoken answers of Debian's synthesisers in a quiet kitchen and beside five noises, conversations about numbers, and sounds that
 * are no answers. `small` hears a seventh of them. `tune` hears the two thirds that thresholds may be chosen with; without it the final third, which
 * nothing was chosen with. A number among the arguments is the minutes it may hear for, before it says what it left out.
 */
export async function measure(args: readonly string[]): Promise<Measured> {
  const small = args.includes("small");
  const share = args.includes("tune") ? "tune" : "final";
  const size = small ? "small" : "full";
  const started = performance.now();
  const spoken = await corpus(size);
  const utterances = spoken.clips.length;
  const spokenMs = performance.now() - started;
  const results = await crew({ size, extent: { share, small }, minutes: minutes(args, small ? 1.2 : 9) });
  const { own, foreign, dialogues } = results;
  const rows: Row[] = [
    ...answerRows(own),
    ...voiceRows(own),
    swapRow(own),
    ...dialogueRows(dialogues),
    ...foreignRows(foreign),
    ...reactionRows(own),
    {
      what: `the ${share === "final" ? "final third" : "two thirds for tuning"} of the corpus`,
      n: own.length + foreign.length + dialogues.length,
    },
    {
      what: "minutes to speak and to hear it all",
      right: `${(spokenMs / 60_000).toFixed(1)} + ${((performance.now() - started - spokenMs) / 60_000).toFixed(1)}`,
    },
  ];
  return { rows, figures: figures(results, utterances) };
}

function minutes(args: readonly string[], usual: number): number {
  return args.map(Number).find((n) => n > 0) ?? usual;
}
