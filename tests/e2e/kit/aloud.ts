// A person who walks a meal by voice alone: looks at the glass, waits until the tablet listens, answers, and says it otherwise when nothing happens.
import { FIXED } from "#words/en/fixed.ts";
import { counts, sayInto } from "./sound.ts";
import type { Tablet } from "./tablet.ts";

/** What is answered where these words stand: ways of saying it in turn, or seconds to wait. */
type Answer = { where: RegExp; say: readonly string[] } | { where: RegExp; wait: number };

const YES = ["yes", "yes it is", "that is right"];
const NO = ["no change it", "change it"];
const READING = ["one hundred thirty two", "one three two"];

/** Every screen of Marta's dinner, as she meets it, with the number last asked for before it where it matters. The first that fits counts. */
const DINNER: readonly Answer[] = [
  { where: /Which meal\?/, say: ["dinner"] },
  { where: /^reading.*Which number\?/, say: ["one three two"] },
  { where: /^dial.*Which number\?/, say: ["six"] },
  { where: /^reading.*Say the first digit/, say: ["one"] },
  { where: /^reading.*One\. /, say: ["three"] },
  { where: /^reading.*One, three\. /, say: ["two"] },
  { where: /^dial.*Say the first digit/, say: ["six"] },
  { where: /^(reading.*One, three, two\.|dial.*Six\.) .*, or done\?/i, say: ["done"] },
  { where: /132 milligrams.*Right\?|One, three, two\. Right\?/, say: YES },
  { where: /milligrams.*Right\?/, say: NO },
  { where: /^dial.*\b6 units\..*Right\?/, say: YES },
  { where: /^window.*\b0 units\..*Right\?/, say: YES },
  { where: /Right\?/, say: NO },
  { where: /Is that right\?/, say: YES },
  { where: /Wash your hands with soap/, say: ["start washing", "start"] },
  { where: /Wash for/, wait: 20 },
  { where: /Dry them well/, say: ["ready", "they are dry", "dry"] },
  { where: /Measure your glucose/, say: READING },
  { where: /Hard exercise/, say: ["no exercise", "no"] },
  { where: /Is the meal ready/, say: ["yes", "it is ready"] },
  { where: /your card says/, say: ["go on", "next", "i understand"] },
  { where: /Which mark/, say: ["one rubber band"] },
  { where: /Is the insulin clear/, say: ["yes it is", "it looks right", "yes"] },
  { where: /Both caps off/, say: ["ready", "done", "both caps off"] },
  { where: /Did a stream come/, say: ["yes a stream", "yes"] },
  { where: /Look at the dial again|Dial 6 units/, say: ["six units", "six"] },
  { where: /Is the skin well/, say: ["use this place", "use it", "yes"] },
  { where: /Clean the spot/, say: ["i wiped it", "wiped"] },
  { where: /Let it dry/, wait: 20 },
  { where: /The skin is dry/, say: ["ready", "go on"] },
  { where: /straight in/i, say: ["the button is down", "it is down", "down"] },
  { where: /Hold still/, wait: 0 },
  { where: /Take the needle out/, say: ["needle is out", "it is out", "ready"] },
  { where: /^window.*Which number\?/, say: ["zero"] },
  { where: /^window.*Say the first digit/, say: ["zero"] },
  { where: /^window.*Zero\. .*, or done\?/i, say: ["done"] },
  { where: /What does the window show/, say: ["zero", "zero units"] },
  { where: /Needle off/, say: ["it is put away", "put away", "done"] },
  { where: /Eat in \d/, wait: 330 },
  { where: /time to eat/, say: ["yes i am eating", "i am eating"] },
  { where: /I ask about the meal/, say: ["finish", "all done"] },
  { where: /Start a meal/, say: ["start a meal"] },
];

interface Glass {
  /** All that is asked, without what the tablet says of itself. */
  text: string;
  listens: boolean;
}

const look = (tablet: Tablet): Promise<Glass> =>
  tablet.page.evaluate(
    ({ listening }) => ({
      text: [...document.querySelectorAll(".caption, .screen-actions button, h1")]
        .map((e) => e.textContent)
        .join(" ")
        .replace(/\s+/g, " "),
      listens: (document.querySelector("main")?.textContent ?? "").includes(listening),
    }),
    { listening: FIXED.listening },
  );

async function until(tablet: Tablet, ms: number, holds: () => Promise<boolean>): Promise<boolean> {
  const end = Date.now() + ms;
  for (;;) {
    if (await holds()) return true;
    if (Date.now() > end) return false;
    await tablet.page.waitForTimeout(50);
  }
}

/**
 * One question answered aloud: waits until the tablet listens, says it, and when nothing moves says it otherwise, and more slowly, as people do.
 * Resolves to what was said; throws after six times.
 */
export async function answerAloud(tablet: Tablet, phrases: readonly string[], moved: () => Promise<boolean>): Promise<string[]> {
  const said: string[] = [];
  for (let go = 0; go < 6; go++) {
    await until(tablet, 40_000, async () => (await look(tablet)).listens || (await moved()));
    // A person begins a moment after the words are over.
    await tablet.page.waitForTimeout(300);
    if (await moved()) return said;
    const phrase = phrases[go % phrases.length] ?? "";
    said.push(phrase);
    await sayInto(tablet, phrase, go);
    if (await until(tablet, 2500, moved)) return said;
  }
  const { text, listens } = await look(tablet);
  throw new Error(
    `${listens ? "Not understood" : "Not listened to"}: ${said.join(", ")}. On: ${text}. ${JSON.stringify(await counts(tablet))}`,
  );
}

/** From where the tablet stands to the first screen on which `over` is true, of its words and how much was said before. Resolves to all that was said. */
export async function walkAloud(tablet: Tablet, over: (glass: string, said: number) => boolean): Promise<string[]> {
  const said: string[] = [];
  let number = "";
  const answerTo = (text: string) => DINNER.find(({ where }) => where.test(`${number}: ${text}`));
  for (let screens = 0; screens < 60; screens++) {
    const { text } = await look(tablet);
    if (over(text, said.length)) return said;
    if (/Measure your glucose/.test(text)) number = "reading";
    if (/Dial \d/.test(text)) number = "dial";
    if (/What does the window show/.test(text)) number = "window";
    const answer = answerTo(text);
    if (answer === undefined) throw new Error(`Nobody knows what to answer to: ${text}`);
    const moved = async () => answerTo((await look(tablet)).text) !== answer;
    if ("say" in answer) said.push(...(await answerAloud(tablet, answer.say, moved)));
    else {
      if (answer.wait > 0) await tablet.pass(answer.wait + 0.5);
      if (!(await until(tablet, 20_000, moved))) throw new Error(`The wait does not end: ${text}`);
    }
  }
  throw new Error(`The walk does not end: ${said.join(", ")}`);
}
