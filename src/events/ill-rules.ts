// What a card says for high glucose and for ill days: when ketones are looked for, what each line of them says, and the sick-day rules.
import * as z from "zod/mini";

/** Readings of a strip in the order of its field of colours, as words or as plus signs; "very large" is four plus signs, and on no strip with words. */
export const STRIP_LEVELS = ["none", "trace", "small", "moderate", "large", "very large"] as const;
export type StripLevel = (typeof STRIP_LEVELS)[number];

export const ketoneTest = z.enum(["blood", "urine words", "urine plus signs"]);
export type KetoneTest = z.infer<typeof ketoneTest>;

/** From this number on, up to where the next line begins. from: mmol/L of blood, or the place in STRIP_LEVELS (0 is "none"). says: null = call the clinic. */
export const ketoneLine = z.object({
  from: z.number().check(z.gte(0)),
  says: z.nullable(z.string().check(z.maxLength(300))),
  call: z.enum(["no", "clinic", "emergency"]),
});
export type KetoneLine = z.infer<typeof ketoneLine>;

export const ketoneRule = z.object({
  test: ketoneTest,
  /** At or above this glucose, in the card's unit; null: not for a reading alone. */
  from: z.nullable(z.number().check(z.gt(0))),
  /** When ill, at any reading. */
  whenIll: z.boolean(),
  lines: z.array(ketoneLine).check(z.minLength(1)),
});
export type KetoneRule = z.infer<typeof ketoneRule>;

/** The clinic's own sentences, one action each; when to call in its own words, null = call at once. */
export const sickDayRules = z.object({
  rules: z.array(z.string().check(z.minLength(1), z.maxLength(120))),
  callWhen: z.nullable(z.string().check(z.maxLength(300))),
});
