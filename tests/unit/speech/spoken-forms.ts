// Every accepted way of saying every number, made apart from the parser (words by n2words), so that each can be checked against the other.
import { toCardinal as british } from "n2words/en-GB";
import { toCardinal as american } from "n2words/en-US";

const plain = (words: string): string => words.replaceAll("-", " ").replaceAll(",", "");
const DIGITS = "zero one two three four five six seven eight nine".split(" ");
const spell = (figures: string): string => [...figures].map((f) => DIGITS[Number(f)]).join(" ");

function wholeForms(n: number): string[] {
  return [plain(american(n)), plain(british(n))];
}

function shortForms(n: number): string[] {
  const forms: string[] = [];
  if (n >= 100 && n < 1000 && n % 100 >= 10) forms.push(plain(`${american(Math.floor(n / 100))} ${american(n % 100)}`));
  if (n >= 10 && n < 1000) forms.push(spell(String(n)));
  return forms;
}

/** spoken form -> the number's text. */
export function allSpokenForms(): Map<string, string> {
  const forms = new Map<string, string>();
  const add = (said: string, text: string): void => {
    const before = forms.get(said);
    if (before !== undefined && before !== text) throw new Error(`"${said}" would be both ${before} and ${text}`);
    forms.set(said, text);
  };
  for (let n = 0; n <= 1000; n++) {
    for (const said of [...wholeForms(n), ...shortForms(n), String(n)]) add(said, String(n));
    if (n === 1000) continue;
    for (const said of wholeForms(n)) {
      for (let tenth = 0; tenth <= 9; tenth++) add(`${said} point ${DIGITS[tenth]}`, tenth === 0 ? String(n) : `${n}.${tenth}`);
      if (n > 0) add(`${said} and a half`, `${n}.5`);
    }
    if (n >= 10 && n < 100)
      for (let tenth = 0; tenth <= 9; tenth++) add(`${spell(String(n))} point ${DIGITS[tenth]}`, tenth === 0 ? String(n) : `${n}.${tenth}`);
    for (let tenth = 0; tenth <= 9; tenth++) add(`${n}.${tenth}`, tenth === 0 ? String(n) : `${n}.${tenth}`);
  }
  return forms;
}
