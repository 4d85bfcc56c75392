import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { type Expected, expected, type Hearing, numberOfKey } from "#speech/ear/answers.ts";
import { type Decision, decide, type Listened } from "#speech/ear/decide.ts";
import { type Ear, listen, openEar } from "#speech/ear/hear.ts";
import { lexiconOf } from "#speech/ear/lexicon.ts";
import { readManifest, readMember } from "#speech/ear/manifest.ts";
import { closingAfter, usualClosing } from "#speech/ear/patience.ts";
import { understand } from "#speech/understand.ts";
import { HEARINGS } from "./questions.ts";
import type { Asked } from "./texts.ts";

const folder = new URL("../../../public/ear/", import.meta.url);
const hash = async (bytes: ArrayBuffer): Promise<string> => createHash("sha256").update(new Uint8Array(bytes)).digest("hex");

/** The ear as it is shipped, opened as the app opens it. */
export async function ownEar(): Promise<Ear> {
  const manifest = readManifest(JSON.parse(await readFile(new URL("ear.json", folder), "utf8")));
  const weights = await Promise.all(
    manifest.members.map(async (member) => readMember(member, Uint8Array.from(await readFile(new URL(member.file, folder))).buffer, hash)),
  );
  return openEar(manifest, weights, lexiconOf(await readFile(new URL("words.tsv", folder), "utf8"), manifest.phones));
}

/** What came of one utterance. */
export type Answer = {
  kind: Decision["kind"];
  /** What the app would take it for: the id of an offer or the number's text; null when it asks again or turns away. */
  taken: string | null;
  /** What it would not swear to, the likeliest first: numbers as their text, offers as their id. */
  guesses: readonly string[];
  /** The likeliest of them as it was said. */
  said: string;
  /** What fitted best, taken or not, in the same words; null when it was no answer to the question. */
  best: string | null;
  /** The numbers behind the decision, for tuning. */
  listened: Listened;
  ms: number;
  /** From the end of speech to this: silence that is waited for, and computing that does not go on within it. */
  reactionMs: number;
};

/** The two numbers of "one five, or five zero?". */
export type Between = readonly [string, string];

export class Listener {
  readonly #ear: Ear;
  readonly #expected = new Map<string, Expected>();

  constructor(ear: Ear) {
    this.#ear = ear;
  }

  hear(sound: Float32Array, asked: Asked, between: Between | null = null): Answer {
    const hearing = between === null ? HEARINGS[asked] : only(HEARINGS[asked], between);
    const name = `${asked} ${between?.join(" or ") ?? ""}`;
    const what = this.#expected.get(name) ?? expected(hearing, this.#ear.lexicon);
    this.#expected.set(name, what);
    const before = performance.now();
    const listened = listen(sound, what, this.#ear);
    const decision = decide(listened, what);
    const ms = performance.now() - before;
    const top = listened.together[0];
    const kept = { ...listened, together: listened.together.slice(0, 4) };
    return {
      kind: decision.kind,
      taken: takenFor(decision, asked),
      guesses: decision.kind === "ask again" ? decision.texts.flatMap((text) => meaningOfText(text, asked) ?? []) : [],
      said: decision.kind === "ask again" ? (decision.texts[0] ?? "") : "",
      best: top && what.answers(top.key) ? meaningOf(top.key) : null,
      listened: kept,
      ms,
      reactionMs: reactionOf(decision, hearing, ms),
    };
  }
}

/** As the app narrows the question (app/asked-number.ts). */
export function only(hearing: Hearing, between: Between): Hearing {
  const values = between.map(Number);
  return hearing.range ? { ...hearing, range: { ...hearing.range, low: Math.min(...values), high: Math.max(...values) } } : hearing;
}

/** What was understood is known while the silence still runs; what was not is looked at once more when all of it is there (speech/ears-own.ts). */
function reactionOf(decision: Decision, hearing: Hearing, ms: number): number {
  const closing = closingAfter(decision, hearing);
  const look =
    usualClosing(hearing)
      .looks.filter((at) => at <= closing)
      .at(-1) ?? closing;
  return decision.kind === "understood" ? Math.max(closing, look + ms) : closing + ms;
}

/** The app reads an understood text by the same rules as any recogniser's. */
function takenFor(decision: Decision, asked: Asked): string | null {
  if (decision.kind !== "understood") return null;
  return meaningOfText(decision.text, asked);
}

export function meaningOfText(text: string, asked: Asked): string | null {
  const understood = understand({ text, alternatives: [] }, HEARINGS[asked].offers);
  if (understood.kind === "offer") return understood.id;
  return understood.kind === "number" ? understood.text : null;
}

function meaningOf(key: string): string {
  const number = numberOfKey(key);
  return number === null ? key : String(number);
}
