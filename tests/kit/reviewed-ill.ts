// Scenes of an ill day and of a high reading, brought about in the real walk.
import type { DoseCard } from "#events/card.ts";
import type { Intent } from "#events/intent.ts";
import { ketoneCard, plusCard } from "./cards.ts";
import { bring, odileAlone, twice } from "./explore/at-table.ts";
import type { Table } from "./table.ts";

type Scene = readonly [when: string, table: Table];

const HI: Intent = { do: "read word", word: "HI", via: "touch" };
const heard: Intent = { do: "heard ill advice" };
const none: Intent = { do: "danger signs", any: false };

/** Somebody who felt ill in the kitchen and has no danger sign. */
const ill = (card: Partial<DoseCard>, ...then: Intent[]): Table =>
  odileAlone(card).send({ do: "open mishap", person: "odile", mishap: "feeling ill" }, none, ...then);
const reading = (t: Table, text: string): Table =>
  Number(text) > 250 ? twice(t, "reading when ill", text) : t.number("reading when ill", text);
const times = (n: number): Intent[] => Array.from({ length: n }, () => heard);
const ketones = (text: string): Table => reading(ill(ketoneCard), "180").number("ketones", text);

/** own: the words that stand where the clinic types. */
export function illScenes(own: string): Scene[] {
  const words: Partial<DoseCard> = {
    ...ketoneCard,
    high: { value: 300, advice: own },
    advice: { ...ketoneCard.advice, ill: own },
    ketones: { test: "blood", from: 250, whenIll: true, lines: [{ from: 0, says: own, call: "clinic" }] },
    sickDay: { rules: [own], callWhen: own },
  };
  const toClinic: Partial<DoseCard> = {
    ketones: { test: "blood", from: 250, whenIll: true, lines: [{ from: 0, says: null, call: "clinic" }] },
  };
  const late = odileAlone().send({ do: "open mishap", person: "odile", mishap: "feeling ill" });
  late.pass(5 * 60);
  late.send({ do: "pass time" });
  return [
    ["somebody feels ill", odileAlone().send({ do: "open mishap", person: "odile", mishap: "feeling ill" })],
    ["a danger sign is there", ill({}, { do: "danger signs", any: true })],
    ["nobody answers the question about danger signs", late],
    ["no danger sign", ill({})],
    ["no danger sign: the meter shows HI", ill({}, HI)],
    ["the meter shows HI again", ill({}, HI, HI)],
    ["the meter shows HI again; the card has its own words", ill(words, HI, HI)],
    ["the reading is high; the card has its own words", reading(ill(words), "320")],
    ["the reading is high, by a blank card", reading(ill({ high: null }), "320")],
    ["ketones 3.0, and the card calls the clinic", reading(ill(toClinic), "180").number("ketones", "3")],
    ["the reading is high, before the dose", twice(bring(odileAlone(words), "reading"), "reading", "320")],
    ["ketones are asked for, of blood", reading(ill(ketoneCard), "180")],
    ["ketones are asked for, on a strip", reading(ill(plusCard), "180")],
    ["a field of the strip was pressed", reading(ill(plusCard), "180").send({ do: "read strip", level: 3 })],
    ["no strip for ketones", reading(ill(ketoneCard), "180").send({ do: "no ketone strips" })],
    ["ketones 0.3", ketones("0.3")],
    ["ketones 1.5", ketones("1.5")],
    ["ketones 3.0", ketones("3")],
    ["ketones below the card's first line", reading(ill(plusCard), "180").send({ do: "read strip", level: 0 }, { do: "agree number" })],
    ["ketones; the card has its own words", reading(ill(words), "180").number("ketones", "1")],
    ["the first rule", reading(ill({}), "180")],
    ["the second rule of a blank card", reading(ill({}), "180").send(heard)],
    [
      "a rule; the card has its own words",
      reading(ill({ ...words, ketones: plusCard.ketones ?? ketoneCard.ketones }), "180").send({ do: "no ketone strips" }, heard, heard),
    ],
    ["the end, by a blank card", reading(ill({}), "180").send(...times(2))],
    ["the end, by a blank card, after HI", ill({}, HI, HI, ...times(3))],
    [
      "the end; the card has its own words",
      reading(ill({ ...words, ketones: plusCard.ketones ?? ketoneCard.ketones }), "180").send({ do: "no ketone strips" }, ...times(4)),
    ],
  ];
}

/** The tables of these scenes, and of a low by cards of 15 and of 20 grams, in both countries' words. */
export const reviewedTables = (): Table[] => [
  ...illScenes("Ring us.").map(([, table]) => table),
  ...([15, 20] as const).flatMap((treatGrams) =>
    (["en-US", "en-GB"] as const).map((language) =>
      odileAlone({ care: { ...ketoneCard.care, treatGrams } }, { language }).send({ do: "open low", person: "odile" }),
    ),
  ),
];
