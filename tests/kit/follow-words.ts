// Follows a place told in words, as a hand would: knows only the words and the body, none of the app's rules.
import type { BodyMeasures, Spot } from "#events/spot.ts";

const UP_TO_TWENTY =
  "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty".split(
    " ",
  );

function countOf(words: string): number {
  if (words === "half a") return 0.5;
  const half = / and a half$/.test(words) ? 0.5 : 0;
  const [tens = "", ones] = words.replace(/ and a half$/, "").split("-");
  const whole = UP_TO_TWENTY.indexOf(tens);
  if (whole < 0) throw new Error(`no count: "${words}"`);
  return whole + (ones === undefined ? 0 : UP_TO_TWENTY.indexOf(ones)) + half;
}

const START = /^(?:Find|From) your (?:(left|right) )?(navel|groin|knee|shoulder|elbow|hip bone)/;
const STEP = /((?:half a)|(?:[a-z-]+(?: and a half)?)) (fingers?|hands?) (left|right|up|down|outwards|towards the back)(?= and |\.|$)/g;
const REGION = { navel: "belly", groin: "thigh", knee: "thigh", shoulder: "arm", elbow: "arm", "hip bone": "buttock" } as const;

/** `said`: the sentences of one place. The side is null where the words name none. Throws where the words cannot be followed. */
export function follow(said: readonly string[], body: BodyMeasures): Omit<Spot, "side"> & { side: Spot["side"] | null } {
  const text = said.join(" ");
  const start = START.exec(text);
  const landmark = start?.[2] as keyof typeof REGION | undefined;
  if (landmark === undefined) throw new Error(`no landmark: "${text}"`);
  const region = REGION[landmark];
  let side = (start?.[1] as Spot["side"] | undefined) ?? null;
  let downMm = landmark === "knee" ? body.thighLengthMm : landmark === "elbow" ? body.armLengthMm : 0;
  let outMm = 0;
  const way = text.slice(start?.[0].length);
  const left = way.replace(STEP, "").replace(/\b(?:Go|go|Then go|and)\b/g, "");
  if (/[a-z]/i.test(left)) throw new Error(`not followed: "${left}" of "${text}"`);
  for (const [, count = "", measure = "", towards] of way.matchAll(STEP)) {
    const mm = countOf(count) * (measure.startsWith("finger") ? body.fingerMm : body.handMm);
    if (towards === "up") downMm -= mm;
    else if (towards === "down") downMm += mm;
    else outMm += mm;
    if (towards === "left" || towards === "right") side = towards;
  }
  return { region, side, outMm, downMm };
}
