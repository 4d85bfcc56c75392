/** One case put to both: the app's card rules and the reference on paper. */
import type { DoseCard } from "#events/card.ts";
import { lookUp } from "#rules/card/lookup.ts";
import type { Silent, Situation, Told } from "#rules/card/told.ts";
import { check } from "../../reference/card/check.ts";
import type { Answer } from "../../reference/card/shapes.ts";
import { Dice } from "../voice/dice.ts";
import { anyCard, KINDS, type Kind } from "./any-card.ts";
import { anyMoment } from "./any-moment.ts";
import { cardOnPaper, momentOnPaper } from "./on-paper.ts";

export type Tally = { cases: number; told: number; silent: number; disagreements: number };
export type Disagreement = { kind: Kind; card: DoseCard; situation: Situation; app: string; reference: string };

/** Ten moments a card: a card is dear to make and cheap to ask. */
const MOMENTS = 10;

function appSaid(said: Told | Silent): string {
  if (!said.told) return "asks";
  const call = said.cautions.some(({ caution }) => caution === "card says call the clinic");
  return `${said.units} = ${said.food.toFixed(9)} + ${said.correction.toFixed(9)}${call ? ", call" : ""}${said.timing === "after eating" ? ", after" : ""}`;
}

function paperSaid(said: Answer): string {
  if (said.say === "ask") return "asks";
  const food = said.food.valueOf().toFixed(9);
  const correction = said.correction.valueOf().toFixed(9);
  return `${said.units.valueOf()} = ${food} + ${correction}${said.call ? ", call" : ""}${said.afterEating ? ", after" : ""}`;
}

/** Both must ask, or both must tell the same units of the same two parts, the same call and the same time to inject. */
export function compare(card: DoseCard, situation: Situation): { app: string; reference: string; why: string; said: Told | Silent } {
  const app = lookUp(card, situation);
  const paper = check(cardOnPaper(card, card.meals[situation.meal]), momentOnPaper(card, situation));
  const why = paper.say === "ask" ? ` (${paper.why} ${paper.about})` : "";
  return { app: appSaid(app), reference: paperSaid(paper), why: `${app.told ? "" : app.why}${why}`, said: app };
}

/** The same name gives the same cases on every machine. */
export function compareMany(name: string, cases: number): { tallies: Record<Kind, Tally>; disagreements: Disagreement[] } {
  const empty = (): Tally => ({ cases: 0, told: 0, silent: 0, disagreements: 0 });
  const tallies = Object.fromEntries(KINDS.map((kind) => [kind, empty()])) as Record<Kind, Tally>;
  const disagreements: Disagreement[] = [];
  const cards = Math.ceil(cases / MOMENTS);
  for (let i = 0; i < cards; i++) {
    const kind = KINDS[i % KINDS.length] ?? "bands";
    const dice = new Dice(`${name} ${i}`);
    const card = anyCard(dice, kind);
    for (let j = 0; j < MOMENTS; j++) {
      const situation = anyMoment(dice, card);
      const { app, reference, why, said } = compare(card, situation);
      const tally = tallies[kind];
      tally.cases += 1;
      if (said.told) tally.told += 1;
      else tally.silent += 1;
      if (app === reference) continue;
      tally.disagreements += 1;
      disagreements.push({ kind, card, situation, app, reference: `${reference}${why}` });
    }
  }
  return { tallies, disagreements };
}
