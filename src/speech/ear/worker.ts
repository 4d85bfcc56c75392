// The ear works beside the page, so that no screen waits while it listens.
import { hashOf, shipped } from "#speech/shipped.ts";
import type { Hearing } from "./answers.ts";
import { type Ear, expectedBy, hear, openEar } from "./hear.ts";
import { lexiconOf } from "./lexicon.ts";
import { readManifest, readMember } from "./manifest.ts";
import type { FromEar, ToEar } from "./worker-shapes.ts";

async function open(folder: string): Promise<Ear> {
  const manifest = readManifest(await (await shipped("ear.json", folder)).json());
  const words = await (await shipped("words.tsv", folder)).text();
  const weights = await Promise.all(
    manifest.members.map(async (file) => readMember(file, await (await shipped(file.file, folder)).arrayBuffer(), hashOf)),
  );
  return openEar(manifest, weights, lexiconOf(words, manifest.phones));
}

let ear: Ear | null = null;
let hearing: Hearing = { offers: [] };

async function take(asked: ToEar): Promise<FromEar> {
  if ("folder" in asked) {
    ear = await open(asked.folder);
    return { ready: true };
  }
  if ("hearing" in asked) {
    hearing = asked.hearing;
    // Laid out now, while the question is still being spoken.
    if (ear !== null) expectedBy(ear, hearing);
    return { expects: true };
  }
  if (ear === null) throw new Error("the ear was not opened");
  return { id: asked.id, decision: hear(asked.samples, hearing, ear) };
}

addEventListener("message", (e: MessageEvent<ToEar>) => {
  take(e.data).then(
    (answer) => postMessage(answer),
    (error: unknown) => postMessage({ broken: error instanceof Error ? error.message : String(error) } satisfies FromEar),
  );
});
