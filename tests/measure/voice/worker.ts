import { corpus, type Size } from "./corpus.ts";
import { conversations, type Dialogue } from "./dialogue.ts";
import { hash } from "./dice.ts";
import { Kitchen } from "./kitchen.ts";
import { Listener, ownEar } from "./own-ear.ts";
import { Packaged } from "./packaged.ts";
import { type Extent, elsewhere, type Foreign, type Own, own, talkAndNoise, wanted } from "./trials.ts";

export type Job = { size: Size; extent: Extent; minutes: number; part: number; parts: number };
/** `left`: clips that were not heard because the time was up. */
export type Results = { own: Own[]; foreign: Foreign[]; dialogues: Dialogue[]; left: number };

async function work({ size, extent, minutes, part, parts }: Job): Promise<Results> {
  const until = performance.now() + minutes * 60_000;
  const spoken = await corpus(size);
  const kitchen = new Kitchen(spoken.broadcast.map((b) => b.sound));
  const listener = new Listener(await ownEar());
  const packaged = await Packaged.open();
  const mine = (name: string): boolean => hash(`part ${name}`) % parts === part;
  const found: Results = { own: [], foreign: [], dialogues: [], left: 0 };
  found.foreign.push(...talkAndNoise(spoken, kitchen, listener, extent, mine));
  // In an order of their own, so that a run cut short has heard of every voice and every question.
  const clips = spoken.clips
    .filter((c) => wanted(c.name, extent) && mine(c.name))
    .sort((a, b) => hash(`turn ${a.name}`) - hash(`turn ${b.name}`));
  for (const clip of clips) {
    if (performance.now() > until) {
      found.left++;
      continue;
    }
    found.own.push(...own(clip, kitchen, listener, packaged, extent));
    if (clip.trainedOn) continue;
    found.foreign.push(...elsewhere(clip, kitchen, listener));
    if (clip.text.sort === "numbers" && extent.share === "final") found.dialogues.push(...conversations(clip, spoken, kitchen, listener));
  }
  return found;
}

process.once("message", (job: Job) => {
  void work(job).then((results) => process.send?.(results, () => process.disconnect()));
});
