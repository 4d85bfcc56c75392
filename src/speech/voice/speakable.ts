// What stands on the screen -> what the voice is given: every figure in words, so that no engine has to guess how a number is said.
// The words are the caption's own words; only figures, clock times and unit signs are spelt out.
import { digitsOf, inWords, type SpokenLanguage } from "#words/numbers.ts";

const NUMBER = /^(0|[1-9]\d{0,5})(\.\d+)?$/;
/** Two groups of figures or more, or seven figures in one: a telephone number. */
const TELEPHONE = /\+?\d{7,}|\+?\d+(?:[ -]\d+)+/g;
/** A short number to call is read figure by figure: "nine, one, one", not "nine hundred eleven". */
const TO_CALL = /\b(call|emergency:?|number:?)( now)? (\d{2,6})\b/gi;

const oneByOne = (figures: string): string => [...figures.replace(/\D/g, "")].map((d) => digitsOf(d)[0]).join(", ");

function clockInWords(hour: string, minute: string): string {
  const h = inWords(String(Number(hour)), "en-US");
  if (minute === "00") return `${h} o'clock`;
  return minute.startsWith("0") ? `${h} oh ${inWords(minute.slice(1), "en-US")}` : `${h} ${inWords(minute, "en-US")}`;
}

/** The sentence in words alone; it holds no figure any more. */
export function speakable(text: string, lang: SpokenLanguage): string {
  return text
    .replace(/\bmg\/dL\b/g, "milligrams per deciliter")
    .replace(/\bmmol\/L\b/g, "millimoles per litre")
    .replace(/\b(\d{1,2}):(\d{2})\b/g, (_, hour: string, minute: string) => clockInWords(hour, minute))
    .replace(TO_CALL, (_, call: string, now: string | undefined, figures: string) => `${call}${now ?? ""} ${oneByOne(figures)}`)
    .replace(TELEPHONE, oneByOne)
    .replace(/\d+(?:\.\d+)?/g, (figure) => (NUMBER.test(figure) ? inWords(figure, lang) : oneByOne(figure)));
}
