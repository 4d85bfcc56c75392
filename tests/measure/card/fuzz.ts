/**
 * Spoilt cards through the path that a keeper takes: both typings read, every problem said, every alarm said and confirmed, signed, and then
 * asked for doses. Each is refused in sentences that can be read, or it works: nothing throws, and what it tells is what the reference tells.
 */
import { canonical } from "#events/canonical.ts";
import type { DoseCard } from "#events/card.ts";
import type { Person } from "#events/person.ts";
import { readCard } from "#keeping/card-draft.ts";
import type { Draft } from "#keeping/problem.ts";
import { alarmKey, type Signed, signCard } from "#keeping/sign.ts";
import { sayAlarm } from "#words/en/drawer/alarms.ts";
import { saySignRefusal } from "#words/en/drawer/card.ts";
import { fieldName } from "#words/en/drawer/fields.ts";
import { sayLeaf, sayProblem, shownDifferences } from "#words/en/drawer/problems.ts";
import { cardSheet } from "#words/en/drawer/sheet.ts";
import { odile } from "../../kit/people.ts";
import { typed } from "../../unit/keeping/typing.ts";
import { Dice } from "../voice/dice.ts";
import { anyCard, KINDS, type Kind } from "./any-card.ts";
import { anyMoment } from "./any-moment.ts";
import { compare } from "./compare.ts";
import { broken, spoilt } from "./spoil.ts";

export type Fate = "refused in typing" | "refused in signing" | "signed as it was" | "signed after alarms";
export type Fuzzed = {
  fates: Record<Kind, Record<Fate, number>>;
  thrown: { kind: Kind; card: number; error: string }[];
  /** Sentences that a keeper could not read, each once. */
  unclear: string[];
  /** Moments put to signed cards, and those in which the reference said otherwise. */
  asked: number;
  disagreements: number;
};

const TODAY = "2026-03-01";
const MOMENTS = 4;

/** Words of a machine have no place on the keeper's page; what was typed is shown as it was, so it is not counted. */
function isClear(sentence: string, typedTexts: readonly string[]): boolean {
  const ours = typedTexts.reduce((rest, text) => (text === "" ? rest : rest.replaceAll(text, "")), sentence);
  if (/\b(undefined|null|NaN|Infinity|object Object|true|false)\b/.test(ours)) return false;
  return /[.?!]$/.test(sentence.trim()) && ours.split(/(?<=[.?!])\s+/).every((part) => part.trim().split(/\s+/).length <= 12);
}

class Case {
  readonly unclear: string[] = [];

  said(sentence: string, ...typedTexts: string[]): void {
    if (!isClear(sentence, typedTexts)) this.unclear.push(sentence);
  }

  /** A field's name, in the sentence in which the page shows it. */
  named(field: string): void {
    this.said(`${fieldName(field)}.`);
  }
}

/** A typing read as the page reads it; null where problems were said. */
function typing(one: Case, draft: Draft, person: string): DoseCard | null {
  const read = readCard(draft, person);
  if (read.ok) return read.card;
  for (const problem of read.problems) {
    one.named(problem.field);
    one.said(sayProblem(problem), problem.got);
  }
  return null;
}

function refusal(one: Case, signed: Extract<Signed, { ok: false }>): Fate {
  const { heading, got, wrong, todo } = saySignRefusal(signed);
  for (const part of [`${heading}.`, got, wrong, todo]) one.said(part);
  if (signed.refused === "typings differ") {
    for (const { field, first, second } of shownDifferences(signed.differences)) {
      one.named(field);
      one.said(`${sayLeaf(field, first)}, ${sayLeaf(field, second)}.`, String(first ?? ""), String(second ?? ""));
    }
  }
  return "refused in signing";
}

/** Signing with every alarm said and confirmed, as somebody would whose paper says all of it. */
function signing(one: Case, first: unknown, second: unknown, person: Person): { fate: Fate; card: DoseCard | null } {
  let agreed: string[] = [];
  for (;;) {
    const keeper = { id: "k1", name: "Ines" };
    const signed = signCard({ first, second, readBack: true, agreed, person, keeper, today: TODAY, hash: (card) => canonical(card) });
    if (signed.ok) {
      const [event] = signed.events;
      if (event?.type !== "card signed") throw new Error("Signed, and no card came into force.");
      return { fate: agreed.length > 0 ? "signed after alarms" : "signed as it was", card: event.card };
    }
    if (signed.refused !== "alarms not confirmed") return { fate: refusal(one, signed), card: null };
    for (const alarm of signed.alarms) one.said(sayAlarm(alarm));
    const keys = signed.alarms.map(alarmKey);
    if (keys.every((key) => agreed.includes(key))) throw new Error(`An alarm comes back after it was confirmed: ${keys.join(" ")}`);
    agreed = [...agreed, ...keys];
  }
}

const isDay = (date: string) => new Date(`${date}T00:00:00Z`).toJSON()?.startsWith(date) ?? false;

/** What no signed card may be: somebody else's, in another unit than the meter's, with a day that is none, over, or typed in two ways. */
function holds(card: DoseCard, first: unknown, second: unknown, person: Person): void {
  const days = [card.validFrom, card.reviewBy, card.validUntil].filter((day) => day !== null);
  const wrong = [
    card.person !== person.id && "somebody else's card",
    card.glucoseUnit !== person.glucoseUnit && "another unit than the meter's",
    !days.every(isDay) && "a day that is none",
    card.validUntil !== null && (card.validUntil < TODAY || card.validUntil < card.validFrom) && "over",
    JSON.stringify(first) !== JSON.stringify(second) && "typed in two ways",
  ].filter((one) => one !== false);
  if (wrong.length > 0) throw new Error(`Signed, though it is ${wrong.join(", ")}.`);
}

/** A signed card works: it can be printed, it answers, its answers are the reference's, and no dose is above the largest or off the step. */
function works(card: DoseCard, dice: Dice): number {
  if (cardSheet(card).length === 0) throw new Error("Signed, and its sheet is empty.");
  let disagreements = 0;
  for (let i = 0; i < MOMENTS; i++) {
    const { app, reference, said } = compare(card, anyMoment(dice, card));
    if (app !== reference) disagreements += 1;
    if (!said.told) continue;
    const steps = said.units / Number(card.rounding.step);
    if (said.units < 0 || said.units > (card.largestDose ?? 0) || Math.abs(steps - Math.round(steps)) > 1e-9) {
      throw new Error(`Told ${said.units} units, which the card does not allow.`);
    }
  }
  return disagreements;
}

/** Three ways to come to the signing: a spoilt typing twice, a spoilt second typing, a card that was never typed. */
function typings(one: Case, dice: Dice, card: DoseCard, person: Person): [unknown, unknown] | null {
  const way = dice.whole(0, 9);
  if (way < 2) {
    const torn = broken(card, dice);
    return [torn, structuredClone(torn)];
  }
  const draft = typed(card);
  const bad = spoilt(draft, dice);
  const first = typing(one, way < 4 ? draft : bad, person.id);
  const second = first && typing(one, bad, person.id);
  return first && second ? [first, second] : null;
}

const noFates = (): Record<Fate, number> => ({
  "refused in typing": 0,
  "refused in signing": 0,
  "signed as it was": 0,
  "signed after alarms": 0,
});

/** The same name gives the same cards on every machine. */
export function fuzz(name: string, cards: number): Fuzzed {
  const fates = Object.fromEntries(KINDS.map((kind) => [kind, noFates()])) as Fuzzed["fates"];
  const thrown: Fuzzed["thrown"] = [];
  const unclear = new Set<string>();
  let asked = 0;
  let disagreements = 0;
  for (let i = 0; i < cards; i++) {
    const dice = new Dice(`${name} ${i}`);
    const kind = KINDS[i % KINDS.length] ?? "bands";
    const made: DoseCard = { ...anyCard(dice, kind), person: "odile" };
    const card: DoseCard = made.insulin.kind ? made : { ...made, insulin: { ...made.insulin, kind: "rapid analogue" } };
    const person: Person = dice.roll() < 0.95 ? { ...odile, glucoseUnit: card.glucoseUnit } : odile;
    const one = new Case();
    try {
      const both = typings(one, dice, card, person);
      const signed = both && signing(one, both[0], both[1], person);
      fates[kind][signed?.fate ?? "refused in typing"] += 1;
      if (signed?.card) {
        holds(signed.card, both?.[0], both?.[1], person);
        asked += MOMENTS;
        disagreements += works(signed.card, dice);
      }
    } catch (error) {
      thrown.push({ kind, card: i, error: String(error) });
    }
    for (const sentence of one.unclear) unclear.add(sentence);
  }
  return { fates, thrown, unclear: [...unclear], asked, disagreements };
}
