import { AskedTwice, mistakenFor } from "#speech/asked-twice.ts";
import { type Clip, type Corpus, TAKES } from "./corpus.ts";
import { Dice, hash } from "./dice.ts";
import type { Condition, Kitchen } from "./kitchen.ts";
import { STEADY } from "./noises.ts";
import { type Answer, type Between, type Listener, only } from "./own-ear.ts";
import { HEARINGS } from "./questions.ts";
import type { Asked } from "./texts.ts";
import { nameOf } from "./trials.ts";

/** How a conversation about one number ended. */
export type Ended = "right" | "touch" | "wrong";
export type Dialogue = {
  clip: string;
  where: string;
  turns: number;
  ended: Ended;
  /** A wrong number was taken and it was the true one's sound-alike, 13 for 30. */
  swap: boolean;
  listener: "perfect" | "1 in 20";
};

const TURNS = 3;
/** A question, its answer, and the next. */
const TURN_MS = 8000;
/** How often the simulated person says yes to a number that only sounds like theirs. */
const TOO_KIND = 0.05;

/** What the ear makes of a sound. `name` tells one sound from all others. */
type HeardAs = (sound: Float32Array, name: string, asked: Asked, between: Between | null) => Pick<Answer, "taken" | "guesses" | "said">;

/**
 * One number asked for by voice, as the walk does it, with the real ear and its real decisions throughout, the yes and no as well:
 * the number; read back; yes takes it, no asks for the digits; of two that the ear could not tell apart it asks which, and is answered by digits;
 * turned away, the digits too. The same in doubt twice is read back (speech/asked-twice.ts, as in app/talk.ts). (The app asks for one digit at a time; here they come in one breath, which is harder.)
 * An answer to the read-back that is not understood is asked for once more, then the person presses. After three turns the number is touched in.
 */
export function converse(clip: Clip, where: Condition, kind: Dialogue["listener"], later: Corpus["later"], heardAs: HeardAs): Dialogue {
  const dice = new Dice(`conversation ${clip.name} ${nameOf(where)}`);
  const end = (turns: number, ended: Ended, taken?: string): Dialogue => ({
    clip: clip.name,
    where: nameOf(where),
    turns,
    ended,
    swap: taken !== undefined && isSwap(taken, clip.text.means),
    listener: kind,
  });
  let between: Between | null = null;
  const twice = new AskedTwice();
  let now = 0;
  for (let turn = 1; turn <= TURNS; turn++) {
    const sound = turn === 1 ? clip.sound : later.get(`digits ${turn - 1} of ${clip.name}`);
    if (sound === undefined) throw new Error(`${clip.name} was not recorded a second time.`);
    const { asked } = clip.text;
    const heard: ReturnType<HeardAs> = heardAs(sound, turn === 1 ? clip.name : `${clip.name}, turn ${turn}`, asked, between);
    now += TURN_MS;
    const { guesses } = heard;
    const taken: string | null = heard.taken ?? sameNumber(heard, asked, between, now, twice);
    const fits = taken !== null && !Number.isNaN(Number(taken)) && (between === null || between.includes(taken));
    if (!fits) {
      between = between === null ? whichOf(guesses, clip.text.means) : null;
      continue;
    }
    between = null;
    const agrees = taken === clip.text.means || (kind === "1 in 20" && dice.roll() < TOO_KIND);
    const answer = readBack(agrees ? "yes" : "no", turn, dice);
    if (answer === "touch") return end(turn, "touch");
    if (answer === "yes") return end(turn, taken === clip.text.means ? "right" : "wrong", taken === clip.text.means ? undefined : taken);
  }
  return end(TURNS, "touch");

  function readBack(word: "yes" | "no", turn: number, fall: Dice): "yes" | "no" | "touch" {
    for (let attempt = 1; attempt <= 2; attempt++) {
      const take = fall.whole(0, TAKES - 1);
      const sound = later.get(`${word} ${take} of ${clip.voice}`);
      if (sound === undefined) throw new Error(`${clip.voice} was not recorded saying ${word}.`);
      const { taken, guesses } = heardAs(sound, `${word} ${take} to ${clip.name}, turn ${turn}, attempt ${attempt}`, "read back", null);
      now += TURN_MS;
      if (taken === "yes" || taken === "no") return taken;
      // A no takes nothing in; a yes is never taken in doubt.
      if (guesses[0] === "no" && twice.same("read back", "no", now)) return "no";
    }
    return "touch";
  }
}

/** A number in doubt the second time, unless it has a sound-alike: about that one the app asks by digits, here the next turn does. */
function sameNumber(
  { guesses: [guess], said }: ReturnType<HeardAs>,
  asked: Asked,
  between: Between | null,
  now: number,
  twice: AskedTwice,
): string | null {
  const { range } = between === null ? HEARINGS[asked] : only(HEARINGS[asked], between);
  if (guess === undefined || Number.isNaN(Number(guess)) || !twice.same(asked, guess, now)) return null;
  return mistakenFor(said, guess, range) === null ? guess : null;
}

/** Asked which of two; whose number is neither says so, and gives the digits. */
function whichOf(guesses: readonly string[], meant: string): Between | null {
  const [one, two] = [...new Set(guesses)];
  return one !== undefined && two !== undefined && guesses.includes(meant) ? [one, two] : null;
}

/** 13 for 30, 115 for 150, 14.5 for 40.5: they differ in nothing but teen and ten. */
export function isSwap(a: string, b: string): boolean {
  const [x, y] = [Number(a), Number(b)].sort((p, q) => p - q);
  if (x === undefined || y === undefined) return false;
  const [teen, ten] = [Math.floor(x) % 100, Math.floor(y) % 100];
  return teen >= 13 && teen <= 19 && ten === (teen - 10) * 10 && y - x === ten - teen;
}

/** A number of the final third in two steady noises at 10 dB and by the radio, with both listeners. */
export function conversations(clip: Clip, corpus: Corpus, kitchen: Kitchen, listener: Listener): Dialogue[] {
  const first = hash(`noises for ${clip.name}`);
  const steady = [STEADY[first % 4], STEADY[(first + 1 + (Math.floor(first / 4) % 3)) % 4]].filter((n) => n !== undefined);
  return [...steady, "radio" as const].flatMap((noise) => {
    const where: Condition = { noise, dB: 10 };
    // The two listeners hear the same until a wrong number is read back.
    const known = new Map<string, ReturnType<HeardAs>>();
    const heardAs: HeardAs = (sound, name, asked, between) => {
      const key = `${name} ${between?.join(" or ") ?? ""}`;
      const heard = known.get(key) ?? listener.hear(kitchen.heard(sound, where, name), asked, between);
      known.set(key, heard);
      return heard;
    };
    return (["perfect", "1 in 20"] as const).map((kind) => converse(clip, where, kind, corpus.later, heardAs));
  });
}
