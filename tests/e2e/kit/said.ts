// What a sound says, found out from the sound: the packaged recogniser knows the sentence but for its number, and may hear any number under a hundred.
import { speakable } from "#speech/voice/speakable.ts";
import { Packaged } from "../../measure/voice/packaged.ts";

let recogniser: Promise<Packaged> | null = null;

/** Without a floor of noise this engine hears badly; the noise is the same each time. */
function withFloor(samples: Int16Array): Float32Array {
  let dice = 1;
  const noise = () => {
    dice = (dice * 48271) % 0x7fffffff;
    return (dice / 0x7fffffff - 0.5) * 0.004;
  };
  const padded = Float32Array.from({ length: samples.length + 9600 }, noise);
  for (const [at, sample] of samples.entries()) padded[at + 4800] = (padded[at + 4800] ?? 0) + sample / 32768;
  return padded;
}

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/-/g, " ")
    .replace(/[^a-z' ]/g, "")
    .trim();

/** The number words that were heard in the place of the caption's figure; null when the sound is nothing like it. Samples at 16 kHz. */
export async function numberHeard(samples: Int16Array, caption: string): Promise<string | null> {
  const [before = "", after = ""] = caption.split(/\d+/).map((part) => plain(speakable(part, "en-US")));
  recogniser ??= Packaged.open();
  const heard = (await recogniser).words(withFloor(samples), `${before} <under> ${after}`);
  return heard === null ? null : plain(heard.slice(before.length, heard.length - after.length));
}
