import { Dice } from "./dice.ts";

/** What is asked when an utterance is spoken; each has its own offers (questions.ts). */
export type Asked =
  | "read back"
  | "needle"
  | "ate"
  | "insulin"
  | "place"
  | "went in"
  | "meal"
  | "last"
  | "mg/dL"
  | "mmol/L"
  | "units"
  | "grams";
export type Sort = "yes/no" | "commands" | "numbers";

export type Text = {
  sort: Sort;
  asked: Asked;
  /** The words, a comma for a breath. */
  words: string;
  /** What it means: the id of an offer, or the number's text. */
  means: string;
};

const DIGITS = "zero one two three four five six seven eight nine".split(" ");
const TEENS = "ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(" ");
const TENS = "twenty thirty forty fifty sixty seventy eighty ninety".split(" ");

const word = (all: readonly string[], n: number): string => all[n] ?? "";

/** 0 to 99 in words. */
export function small(n: number): string {
  if (n < 10) return word(DIGITS, n);
  if (n < 20) return word(TEENS, n - 10);
  return n % 10 === 0 ? word(TENS, n / 10 - 2) : `${word(TENS, Math.floor(n / 10) - 2)} ${word(DIGITS, n % 10)}`;
}

/** One digit after the other: "one, eight, zero"; "one three point six" in one breath, since a breath before a point may be a second thought. */
export const inDigits = (n: number): string =>
  [...String(n)].map((d) => (d === "." ? "point" : word(DIGITS, Number(d)))).join(Number.isInteger(n) ? ", " : " ");

/** A whole number in one of the ways it is said; never "oh" for zero. */
function whole(n: number, dice: Dice): string {
  if (n < 100) return dice.roll() < 0.85 || n < 10 ? small(n) : inDigits(n);
  const rest = n % 100;
  const hundreds = word(DIGITS, Math.floor(n / 100));
  const forms = [inDigits(n), inDigits(n).replaceAll(",", "")];
  forms.push(rest === 0 ? `${hundreds} hundred` : `${hundreds} hundred ${small(rest)}`);
  if (rest > 0) forms.push(`${hundreds} hundred and ${small(rest)}`);
  if (rest >= 10) forms.push(`${hundreds} ${small(rest)}`, `${hundreds} ${small(rest)}`);
  return dice.pick(forms);
}

/** A teen or a ten in one of three: 13 and 30 are what an ear mistakes most. */
function within(from: number, to: number, dice: Dice): number {
  const n = dice.whole(from, to);
  if (dice.roll() > 1 / 3) return n;
  const twin = Math.floor(n / 100) * 100 + dice.pick([13, 14, 15, 16, 17, 18, 19, 30, 40, 50, 60, 70, 80, 90]);
  return twin >= from && twin <= to ? twin : n;
}

function number(dice: Dice): Text {
  const asked = dice.pick(["mg/dL", "mg/dL", "mg/dL", "mmol/L", "mmol/L", "units", "units", "grams"] as const);
  const text = (words: string, means: string): Text => ({ sort: "numbers", asked, words, means });
  if (asked === "mg/dL") {
    const n = within(20, 600, dice);
    return text(whole(n, dice), `${n}`);
  }
  if (asked === "mmol/L") {
    const n = within(2, 30, dice);
    const tenth = dice.whole(0, 9);
    return text(`${small(n)} point ${word(DIGITS, tenth)}`, tenth === 0 ? `${n}` : `${n}.${tenth}`);
  }
  if (asked === "units") {
    const n = within(1, 60, dice);
    if (dice.roll() < 0.3) return text(`${small(n)} and a half${dice.roll() < 0.5 ? " units" : ""}`, `${n}.5`);
    return text(dice.roll() < 0.6 ? `${small(n)} ${n === 1 ? "unit" : "units"}` : small(n), `${n}`);
  }
  const n = within(5, 200, dice);
  return text(`${whole(n, dice)}${dice.roll() < 0.7 ? " grams" : ""}`, `${n}`);
}

const YES = ["yes", "yes", "yes", "yes", "yes it is", "that is right", "correct"];
const NO = ["no", "no", "no", "no", "no it is not", "that is wrong"];

/** What may be said at seven screens of the walk; the five constant things fit all of them. */
const COMMANDS: readonly { asked: Asked; said: readonly string[] }[] = [
  { asked: "needle", said: ["ready", "done", "both caps off"] },
  { asked: "ate", said: ["all of it", "half", "hardly any", "not kept down"] },
  { asked: "insulin", said: ["it looks right", "it has clumps", "it is frozen", "it is too hot"] },
  { asked: "place", said: ["use it", "use this place", "it is sore", "a lump is there", "i cannot reach", "another place"] },
  { asked: "went in", said: ["it went in", "it did not go in", "i am not sure", "not sure"] },
  { asked: "meal", said: ["breakfast", "lunch", "dinner", "snack", "i feel low"] },
  { asked: "last", said: ["i understand", "go on", "finish", "all done", "that is all", "stop here"] },
];
const ALWAYS = ["help", "help me", "again", "say it again", "repeat", "quiet", "be quiet", "back", "go back", "something is wrong"];

export function yesNo(dice: Dice): Text {
  const yes = dice.roll() < 0.5;
  return { sort: "yes/no", asked: "read back", words: dice.pick(yes ? YES : NO), means: yes ? "yes" : "no" };
}

function command(dice: Dice): Text {
  const screen = dice.pick(COMMANDS);
  const words = dice.roll() < 0.4 ? dice.pick(ALWAYS) : dice.pick(screen.said);
  return { sort: "commands", asked: screen.asked, words, means: words };
}

/** What one voice says: a quarter yes and no, three tenths commands, the rest numbers. */
export function textsOf(voice: string, count: number): Text[] {
  const dice = new Dice(`texts of ${voice}`);
  return Array.from({ length: count }, (_, i) => {
    const share = (i + 0.5) / count;
    return share < 0.25 ? yesNo(dice) : share < 0.55 ? command(dice) : number(dice);
  });
}

/** How the tablet itself is told to speak, at any question. */
const VOICE = ["louder", "speak louder", "softer", "speak softer", "slower", "speak slower", "faster", "speak faster", "who speaks"];

/** Said beside the others, so that those stay the same. */
export function moreTextsOf(voice: string, count: number): Text[] {
  const dice = new Dice(`more texts of ${voice}`);
  return Array.from({ length: count }, () => {
    const words = dice.pick(VOICE);
    return { sort: "commands", asked: dice.pick(COMMANDS).asked, words, means: words };
  });
}

/** Sentences such as a radio or a television says: none of them an answer. */
export const BROADCAST: readonly string[] = [
  "and now the weather for the north, where rain will spread from the west this afternoon",
  "the minister told reporters that the talks would go on until the end of the week",
  "well I never thought I would see you here again after all those years",
  "traffic is moving slowly on the ring road after an accident near the bridge",
  "coming up after the break, three gardeners show us their favourite roses",
  "he was born in a village of nine hundred people and left school at fifteen",
  "the home side scored twice in the last ten minutes and won by four goals to three",
  "you can't tell her that, it would break her heart",
  "prices rose by two point five per cent last month, more than was expected",
  "and if you call now, you will receive a second pan entirely free",
  "the ferry leaves at seven thirty and takes about an hour and a quarter",
  "stir the onions until they are soft, then add the flour and the stock",
  "police are looking for a grey van that was seen near the station on Thursday",
  "no, I don't think he ever came back from the war",
  "yes of course, said the old woman, but you must be home before dark",
  "our next guest has walked across four deserts with a camel and a dog",
  "the museum is open from ten until six and closed on Mondays",
  "scientists have found the remains of a whale in the middle of the desert",
  "sixty years ago today the first letter was sent by this new line",
  "it is a quarter past eight and you are listening to the morning show",
  "what a save, he threw himself to the left and just got a hand to it",
  "her third novel is set in a lighthouse, and it is her best",
  "the council will vote on the new swimming pool next Tuesday",
  "mix the butter with eighty grams of sugar and beat it until it is pale",
  "I am so sorry, doctor, I should have told you that before",
  "a strong wind from the sea, with gusts of up to fifty miles an hour",
  "that was the slow movement, played by the orchestra of the city",
  "shares fell again in the far east before a late recovery",
  "you have one more chance, and the question is about rivers",
  "thank you for watching, and from all of us here, good night",
];
