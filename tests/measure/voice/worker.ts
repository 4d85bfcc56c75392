import { parentPort, workerData } from "node:worker_threads";
import { corpus, type Size } from "./corpus.ts";
import { type Dialogue, dialogues } from "./dialogue.ts";
import { hash } from "./dice.ts";
import { Kitchen } from "./kitchen.ts";
import { Listener, ownEar } from "./own-ear.ts";
import { Packaged } from "./packaged.ts";
import { type Extent, type Foreign, foreign, type Own, own } from "./trials.ts";

export type Job = { size: Size; extent: Extent; packaged: boolean; part: number; parts: number };
export type Results = { own: Own[]; foreign: Foreign[]; dialogues: Dialogue[] };

async function work({ size, extent, packaged, part, parts }: Job): Promise<Results> {
  const spoken = await corpus(size);
  const kitchen = new Kitchen(spoken.broadcast.map((b) => b.sound));
  const listener = new Listener(await ownEar());
  const beside = packaged ? await Packaged.open() : null;
  const mine = (name: string): boolean => hash(`part ${name}`) % parts === part;
  return {
    own: [...own(spoken, kitchen, listener, beside, extent, mine)],
    foreign: [...foreign(spoken, kitchen, listener, extent, mine)],
    dialogues: extent.share === "final" ? [...dialogues(spoken, kitchen, listener, extent.small, mine)] : [],
  };
}

parentPort?.postMessage(await work(workerData as Job));
