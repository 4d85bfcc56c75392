import type { Hearing } from "#speech/ear/answers.ts";
import type { SpokenOffer } from "#speech/understand.ts";
import type { Asked } from "./texts.ts";

// The offers of ten screens as the walk gives them (src/words/en/labels.ts, src/app/spoken-offers.ts), written out so that the measure stays the same
// while labels move.
const ALWAYS: readonly SpokenOffer[] = [
  { id: "help", phrases: ["help", "help me"] },
  { id: "again", phrases: ["again", "say it again", "repeat"] },
  { id: "quiet", phrases: ["quiet", "be quiet"] },
  { id: "back", phrases: ["back", "go back"] },
  { id: "wrong", phrases: ["something is wrong"] },
  { id: "voice", phrases: ["who speaks"] },
  { id: "louder", phrases: ["louder", "speak louder"] },
  { id: "softer", phrases: ["softer", "speak softer"] },
  { id: "slower", phrases: ["slower", "speak slower"] },
  { id: "faster", phrases: ["faster", "speak faster"] },
  { id: "stop", phrases: ["stop here", "leave this"] },
];
const offers = (...said: readonly string[][]): SpokenOffer[] => [...said.map((phrases) => ({ id: phrases[0] ?? "", phrases })), ...ALWAYS];
const READING: readonly SpokenOffer[] = [
  { id: "number", number: true },
  { id: "high", phrases: ["it shows hi", "it says high"] },
  { id: "low", phrases: ["it shows lo", "it says low"] },
  ...ALWAYS,
];

export const HEARINGS: Readonly<Record<Asked, Hearing>> = {
  "read back": {
    offers: [
      { id: "yes", phrases: ["yes", "yes it is", "that is right", "correct"] },
      { id: "no", phrases: ["no change it", "no", "no it is not", "that is wrong", "change it"], refuses: true },
      ...ALWAYS,
    ],
  },
  needle: { offers: offers(["both caps off", "ready", "done"]) },
  ate: { offers: offers(["all of it", "all", "i ate it all"], ["half"], ["hardly any"], ["not kept down", "i was sick"]) },
  insulin: {
    offers: offers(
      ["yes it is", "yes", "it looks right"],
      ["it has clumps", "it is clumped"],
      ["it was frozen", "it is frozen"],
      ["it was too hot", "it is too hot"],
    ),
  },
  place: {
    offers: offers(
      ["use this place", "yes", "use it"],
      ["it is sore", "sore"],
      ["a lump is there", "lump"],
      ["a scar or mole", "scar", "mole"],
      ["i cannot reach", "cannot reach"],
      ["another place", "no"],
    ),
  },
  "went in": {
    offers: offers(
      ["yes it went in", "yes", "it went in"],
      ["no it did not", "it did not", "it did not go in"],
      ["i am not sure", "not sure"],
    ),
  },
  meal: { offers: offers(["breakfast"], ["lunch"], ["dinner"], ["snack"], ["i feel low", "i feel strange", "low sugar"]) },
  last: {
    offers: offers(["i understand", "understood"], ["go on", "next"], ["done", "finish", "all done"], ["that is all", "plate is complete"]),
  },
  "mg/dL": { offers: READING, range: { low: 1.1, high: 600, step: 1 } },
  "mmol/L": { offers: READING, range: { low: 1.1, high: 600, step: 0.1, fractionsTo: 33.3 } },
  units: { offers: [{ id: "number", number: true, unit: "units" }, ...ALWAYS], range: { low: 0, high: 80, step: 0.5 } },
  grams: { offers: [{ id: "number", number: true, unit: "grams" }, ...ALWAYS], range: { low: 0, high: 400, step: 1 } },
};
