// What a hand or a voice wants. Intents are not stored; the facts they lead to are.
import type { MealName } from "./card.ts";
import type { Reminder, ReminderAnswer } from "./happened-reminder.ts";
import type { MishapKind } from "./happened-walk.ts";
import type { ClockTime, GlucoseUnit, LocalDate } from "./quantity.ts";
import type { Spot } from "./spot.ts";
import type { NumberSlot, Via } from "./told.ts";

export type Intent =
  // The kitchen screen
  | { do: "open meal"; person: string; meal: MealName }
  | { do: "open low"; person: string }
  | { do: "open reading"; person: string }
  | { do: "open background"; person: string; at: ClockTime; insulin: string }
  | { do: "open mishap"; person: string; mishap: MishapKind }
  | { do: "turn to"; person: string }
  | { do: "set aside"; person: string }
  | { do: "answer meal"; person: string; ate: "all" | "half" | "hardly any" | "not kept down" }
  | { do: "answer reminder"; person: string; day: LocalDate; reminder: Reminder; answer: ReminderAnswer }
  /** Whoever treats the person watches now: the hourly readings end here. */
  | { do: "doctor watches"; person: string }
  /** insulin: id of a background insulin; left out: mealtime insulin. */
  | { do: "tell a dose later"; person: string; units: number | null; minutesAgo: number | null; insulin?: string }
  | { do: "feel for lumps"; person: string; found: "none" | "not now" }
  /** spot null: found, and nobody can tell where. */
  | { do: "mark lump"; person: string; spot: Spot | null }
  | { do: "lump is gone"; person: string; id: string }
  // Any step
  | { do: "leave" }
  | { do: "back" }
  | { do: "report"; mishap: MishapKind }
  | { do: "agree clock" }
  | { do: "doubt clock" }
  | { do: "pass time" }
  // Numbers
  | { do: "give number"; slot: NumberSlot; text: string; via: Via; helper: string | null }
  | { do: "agree number" }
  | { do: "change number" }
  | { do: "choose unit"; unit: GlucoseUnit }
  | { do: "read word"; word: "HI" | "LO"; via: Via }
  // Waits
  | { do: "begin wait" }
  | { do: "wait is over" }
  | { do: "jump wait"; reason: string }
  // Answers, step by step
  | { do: "answer taken"; answer: "yes" | "no" | "do not know" }
  | { do: "the first was not taken" }
  | { do: "already washed" }
  | { do: "skip washing"; reason: string }
  | { do: "leave out reading" }
  | { do: "heard high advice" }
  | { do: "exercise"; hard: boolean }
  | { do: "add food"; food: string; portions: number }
  | { do: "remove food"; index: number }
  | { do: "plate is complete" }
  | { do: "usual meal"; index: number }
  | { do: "meal is ready" }
  | { do: "meal is not ready" }
  | { do: "heard dose" }
  | { do: "meal eaten first" }
  | { do: "name helper"; name: string }
  | { do: "pick pen"; pen: string; how: "mark" | "scan" }
  | { do: "pen says"; name: "the insulin" | "another" }
  | { do: "insulin looks"; look: "as it should be" | "clumped" | "frozen" | "overheated" }
  | { do: "insulin mixed" }
  | { do: "needle fitted" }
  | { do: "primed"; stream: boolean }
  | { do: "take spot" }
  | { do: "not this spot"; reason: "sore" | "lump" | "scar or mole" | "cannot reach" | "other" }
  | { do: "skin cleaned"; how: "wiped" | "clean without a wipe" }
  | { do: "button is down" }
  | { do: "needle came out early" }
  /** The one press for nought; said aloud it is a number like any other, and read back. */
  | { do: "window is at zero" }
  | { do: "window not seen" }
  | { do: "button feels"; how: "flat" | "standing out" | "not sure" }
  | { do: "needle went in"; answer: "yes" | "no" | "not sure" }
  | { do: "heard mishap advice" }
  | { do: "put away" }
  | { do: "eating" }
  | { do: "cannot eat" }
  | { do: "finish" }
  // Low
  | { do: "took sugar"; food: string; grams: number }
  | { do: "cannot swallow" }
  | { do: "no meter" }
  /** The step that was said is done; the next one is said. */
  | { do: "help step done" }
  // Ill, or very high
  | { do: "danger signs"; any: boolean }
  | { do: "read strip"; level: number }
  | { do: "no ketone strips" }
  | { do: "heard ill advice" }
  | { do: "finish ill" };
