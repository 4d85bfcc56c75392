// The names of what can go wrong, on its buttons and for the ear.
import type { MishapKind } from "#events/happened-walk.ts";
import { type Label, label } from "#words/say.ts";

export const MISHAP_LABELS: Readonly<Record<MishapKind, Label>> = {
  "too much": label("Too much insulin", "too much"),
  "too little": label("Too little insulin", "too little"),
  "wrong insulin": label("Wrong insulin"),
  "nothing came out": label("Nothing came out"),
  "number left in the window": label("A number is left", "not zero"),
  "not sure": label("Not sure it went in", "i am not sure it went in"),
  "it hurt or bled": label("It hurt or bled", "it hurts", "it is bleeding"),
  "button too stiff": label("The button is stiff", "the button is too stiff"),
  "pen ran out": label("The pen ran out", "pen is empty"),
  "cannot eat": label("I cannot eat"),
  "half eaten": label("I ate only part"),
  "hardly eaten": label("I ate hardly any"),
  vomiting: label("Food came up", "i was sick"),
  "eaten, not injected": label("I ate, no insulin", "i forgot the insulin"),
  "needle stick": label("Needle hurt somebody"),
  "feeling ill": label("I feel ill", "i am ill"),
  "something else": label("Something else"),
};
