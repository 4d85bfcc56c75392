// How a number is put into words, and which numbers an ear takes for one another.
// A number travels as its text ("180", "5.5") so that no rounding can slip in between hearing it and saying it.

/** The two Englishes the tablet speaks: they differ in "one hundred (and) eighty". */
export type SpokenLanguage = "en-US" | "en-GB";

const ONES =
  "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(
    " ",
  );
const TENS = "- - twenty thirty forty fifty sixty seventy eighty ninety".split(" ");

const TEXT = /^(0|[1-9]\d{0,5})(?:\.(\d+))?$/;

/** Whole part and decimals, trailing zeros dropped: "5.0" is said as "five" (ISMP: a trailing zero is read as ten times too much). */
function split(text: string): { whole: number; decimals: string } {
  const found = TEXT.exec(text);
  if (!found) throw new RangeError(`not a number to say aloud: "${text}"`);
  return { whole: Number(found[1]), decimals: (found[2] ?? "").replace(/0+$/, "") };
}

function under100(n: number): string {
  if (n < 20) return ONES[n] ?? "";
  const tens = TENS[Math.floor(n / 10)] ?? "";
  return n % 10 === 0 ? tens : `${tens}-${ONES[n % 10]}`;
}

function wholeInWords(n: number, and: string): string {
  if (n < 100) return under100(n);
  if (n < 1000) {
    const hundreds = `${ONES[Math.floor(n / 100)]} hundred`;
    return n % 100 === 0 ? hundreds : `${hundreds} ${and}${under100(n % 100)}`;
  }
  const thousands = `${wholeInWords(Math.floor(n / 1000), and)} thousand`;
  const rest = n % 1000;
  if (rest === 0) return thousands;
  return `${thousands} ${rest < 100 ? and : ""}${wholeInWords(rest, and)}`;
}

/**
 * "180" -> "one hundred eighty" (en-US) or "one hundred and eighty" (en-GB); "0.5" -> "zero point five".
 * Takes 0 to 999999 with any decimals; decimals are said one by one. Throws RangeError for anything that is not such a number.
 */
export function inWords(text: string, lang: SpokenLanguage): string {
  const { whole, decimals } = split(text);
  const said = wholeInWords(whole, lang === "en-GB" ? "and " : "");
  return decimals === "" ? said : `${said} point ${[...decimals].map((d) => ONES[Number(d)]).join(" ")}`;
}

/** "180" -> ["one","eight","zero"]; "5.5" -> ["five","point","five"]. Throws RangeError as inWords does. */
export function digitsOf(text: string): string[] {
  const { whole, decimals } = split(text);
  const spell = (digits: string): string[] => [...digits].map((d) => ONES[Number(d)] ?? "");
  return decimals === "" ? spell(String(whole)) : [...spell(String(whole)), "point", ...spell(decimals)];
}

/**
 * The number an ear takes for this one, teen for ten: "15" <-> "50", "113" <-> "130", "215.5" <-> "250.5"; null where there is none.
 * Spoken doses of 15 heard as 50 are reported by medication-safety bodies; measured too, with synthetic voices in clean sound.
 */
export function soundAlike(text: string): string | null {
  const { whole, decimals } = split(text);
  const end = whole % 100;
  const partner = end >= 13 && end <= 19 ? (end - 10) * 10 : end >= 30 && end % 10 === 0 ? end / 10 + 10 : null;
  if (partner === null) return null;
  const other = String(whole - end + partner);
  return decimals === "" ? other : `${other}.${decimals}`;
}
