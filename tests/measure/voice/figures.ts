import type { Row } from "../measured.ts";
import { percentile, upper95 } from "./bounds.ts";
import { type Dialogue, isSwap } from "./dialogue.ts";
import { STEADY } from "./noises.ts";
import type { Foreign, Own } from "./trials.ts";
import type { Results } from "./worker.ts";

const share = (all: number, of: number): number => (of === 0 ? 0 : Math.round((all / of) * 10_000) / 10_000);
const percent = (some: number, of: number): string => (of === 0 ? "-" : `${((100 * some) / of).toFixed(1)} %`);
const count = <T>(all: readonly T[], is: (one: T) => boolean): number => all.filter(is).length;

/** Right at the first try: what fits best is the whole answer and nothing else; whether it is taken at once or asked about is in the columns beside it. */
const right = (o: Own): boolean => o.best === o.truth;
const takenRight = (o: Own): boolean => o.taken === o.truth;
const takenWrong = (o: Own): boolean => o.taken !== null && o.taken !== o.truth;
const SORTS = ["yes/no", "commands", "numbers"] as const;
const order = (where: string): number =>
  ["clean", "kettle", "fan", "tap", "dishes", "radio"].findIndex((n) => where.startsWith(n)) * 2 + (where.endsWith("10 dB") ? 1 : 0);

/** Of each sort of answer, for each place, held-out voices apart from the trained. */
export function answerRows(all: readonly Own[]): Row[] {
  const rows: Row[] = [];
  for (const trainedOn of [false, true]) {
    for (const sort of SORTS) {
      const places = [...new Set(all.map((o) => o.where))].sort((a, b) => order(a) - order(b));
      for (const where of places) {
        const some = all.filter((o) => o.trainedOn === trainedOn && o.sort === sort && o.where === where);
        if (some.length === 0) continue;
        const beside = some.filter((o) => o.packaged !== undefined);
        rows.push({
          what: `${sort}, ${where}, ${trainedOn ? "voices trained on" : "voices never met"}`,
          n: some.length,
          right: percent(count(some, right), some.length),
          "taken at once": percent(count(some, takenRight), some.length),
          "asked again": percent(
            count(some, (o) => o.kind === "ask again"),
            some.length,
          ),
          "turned away": percent(
            count(some, (o) => o.kind === "turned away"),
            some.length,
          ),
          "taken wrong": count(some, takenWrong),
          packaged:
            beside.length === 0
              ? ""
              : percent(
                  count(beside, (o) => o.packaged === o.truth),
                  beside.length,
                ),
        });
      }
    }
  }
  return rows;
}

export function voiceRows(all: readonly Own[]): Row[] {
  const voiceOf = (o: Own): string => o.clip.replace(/ \d+: .*/, "");
  return [...new Set(all.map(voiceOf))].map((voice) => {
    const some = all.filter((o) => voiceOf(o) === voice && o.sort === "numbers");
    const clean = some.filter((o) => o.where === "clean");
    const loud = some.filter((o) => o.where.endsWith("10 dB") && !o.where.startsWith("radio"));
    return {
      what: `numbers of ${voice}`,
      n: some.length,
      right: `clean ${percent(count(clean, right), clean.length)}, 10 dB ${percent(count(loud, right), loud.length)}`,
    };
  });
}

export function foreignRows(all: readonly Foreign[]): Row[] {
  return (["broadcast", "noise", "another question"] as const).map((of) => {
    const some = all.filter((f) => f.of === of);
    const taken = count(some, (f) => f.taken !== null);
    return { what: `taken for an answer: ${of}`, n: some.length, "taken wrong": taken, right: percent(some.length - taken, some.length) };
  });
}

export function dialogueRows(all: readonly Dialogue[]): Row[] {
  return [...new Set(all.map((d) => d.where))].flatMap((where) =>
    (["perfect", "1 in 20"] as const).map((listener) => {
      const some = all.filter((d) => d.where === where && d.listener === listener);
      const rightOnes = count(some, (d) => d.ended === "right");
      const touch = count(some, (d) => d.ended === "touch");
      const swaps = count(some, (d) => d.swap);
      return {
        what: `conversation, ${where}, ${listener === "perfect" ? "perfect listener" : "yes to 1 wrong number in 20"}`,
        n: some.length,
        right: percent(rightOnes, some.length),
        "asked again": `to touch ${percent(touch, some.length)}`,
        "taken wrong": some.length - rightOnes - touch,
        ...(swaps > 0 ? { swaps } : {}),
      };
    }),
  );
}

/** The worst steady noise at 10 dB, by this share. */
function worst<T extends { where: string }>(all: readonly T[], of: (some: readonly T[]) => number): number {
  return Math.min(
    ...STEADY.map((noise) => all.filter((o) => o.where === `${noise} 10 dB`)).map((some) => (some.length === 0 ? 1 : of(some))),
  );
}

/** False rejects: own answers by a quiet room or a steady noise that are turned away. */
const rejectable = (o: Own): boolean => !o.trainedOn && !o.where.startsWith("radio");

/** The figures of the measure in their order: shares from 0 to 1 of voices never trained on. */
export function figures({ own, foreign, dialogues }: Results, utterances: number): Record<string, number> {
  const held = own.filter((o) => !o.trainedOn);
  const of = (sort: string) => held.filter((o) => o.sort === sort);
  const clean = (sort: string) => of(sort).filter((o) => o.where === "clean");
  const rightShare = (some: readonly Own[]): number => share(count(some, right), some.length);
  const kind = (which: Dialogue["listener"]) => dialogues.filter((d) => d.listener === which);
  const steady = kind("perfect").filter((d) => !d.where.startsWith("radio"));
  const perfect = kind("perfect");
  const wrong = count(perfect, (d) => d.ended === "wrong");
  const own10 = held.filter(rejectable);
  return {
    utterances,
    yesnoClean: rightShare(clean("yes/no")),
    yesno10dB: worst(of("yes/no"), rightShare),
    commandsClean: rightShare(clean("commands")),
    commands10dB: worst(of("commands"), rightShare),
    numbersClean: rightShare(clean("numbers")),
    numbers10dB: worst(of("numbers"), rightShare),
    packagedNumbers10dB: worst(of("numbers"), (some) =>
      share(
        count(some, (o) => o.packaged === o.truth),
        some.length,
      ),
    ),
    dialogueRight10dB:
      steady.length === 0
        ? 0
        : worst(kind("1 in 20"), (some) =>
            share(
              count(some, (d) => d.ended === "right"),
              some.length,
            ),
          ),
    dialogueSafe10dB:
      steady.length === 0
        ? 0
        : worst(kind("1 in 20"), (some) =>
            share(
              count(some, (d) => d.ended !== "wrong"),
              some.length,
            ),
          ),
    wrongAccepted: wrong,
    wrongAcceptedUpper95: Math.round(upper95(wrong, perfect.length) * 10_000) / 10_000,
    swapsAccepted: count(perfect, (d) => d.swap),
    falseAccept: share(
      count(foreign, (f) => f.taken !== null),
      foreign.length,
    ),
    falseReject: share(
      count(own10, (o) => o.kind === "turned away"),
      own10.length,
    ),
    reactionMsMedian: Math.round(percentile(reactions(own), 0.5)),
  };
}

/** What is turned away gets no reaction. */
const reactions = (own: readonly Own[]): number[] => own.filter((o) => o.kind !== "turned away").map((o) => o.reactionMs);

export const reactionRows = (own: readonly Own[]): Row[] =>
  (["words", "numbers", "all"] as const).map((what) => {
    const some = own.filter((o) => what === "all" || (o.sort === "numbers") === (what === "numbers"));
    const ms = reactions(some);
    return {
      what: `end of speech to reaction, ${what}`,
      n: ms.length,
      right: `median ${Math.round(percentile(ms, 0.5))} ms, 95th ${Math.round(percentile(ms, 0.95))} ms; computing ${Math.round(
        percentile(
          some.map((o) => o.ms),
          0.5,
        ),
      )} ms`,
    };
  });

export const swapRow = (own: readonly Own[]): Row => {
  const swaps = own.filter((o) => !o.trainedOn && o.sort === "numbers" && o.best !== null && isSwap(o.best, o.truth));
  return {
    what: "teen heard as ten or ten as teen at the first try",
    n: count(own, (o) => !o.trainedOn && o.sort === "numbers"),
    "taken wrong": count(swaps, takenWrong),
    right: `${swaps.length} heard so`,
  };
};
