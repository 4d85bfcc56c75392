// Who may change things: a name, and a PIN of which only a hash is kept.
import type { Happened, Of } from "#events/happened.ts";
import { whyNotPin } from "./pin.ts";
import type { Draft, Problem } from "./problem.ts";
import { Reader } from "./reader.ts";

type Keeper = Of<"keeper added">["keeper"];

/** Name and PIN of a new keeper: all problems, or [] when the PIN may be hashed. */
export function keeperProblems(draft: Draft, keepers: readonly { name: string }[]): readonly Problem[] {
  const r = new Reader(draft);
  const name = r.text("keeper.name", 40);
  const same = keepers.find((keeper) => keeper.name.toLowerCase() === name.toLowerCase());
  if (same) r.note("keeper.name", { why: "taken", by: same.name });
  return [...r.problems, ...pinProblems(draft)];
}

/** A PIN is never repeated in a sentence. */
export function pinProblems(draft: Draft): readonly Problem[] {
  const r = new Reader(draft);
  const pin = whyNotPin(r.raw("keeper.pin"), r.raw("keeper.again"));
  return pin === null ? [] : [{ field: pin === "not the same" ? "keeper.again" : "keeper.pin", got: "", why: "pin", pin }];
}

export const changePin = (keeper: string, pin: Keeper["pin"], by: Of<"keeper PIN changed">["by"]): Happened[] => [
  { type: "keeper PIN changed", keeper, pin, by },
];
export const makeCode = (keeper: string, code: Keeper["pin"]): Happened[] => [{ type: "recovery code made", keeper, code }];

export const addKeeper = (draft: Draft, id: string, pin: Keeper["pin"]): Happened[] => [
  { type: "keeper added", keeper: { id, name: new Reader(draft).raw("keeper.name"), pin } },
];
