// The ear works beside the page, so that no screen waits while it listens.
import type { Hearing } from "./answers.ts";
import { type Ear, expectedBy, hear, openEar } from "./hear.ts";
import { lexiconOf } from "./lexicon.ts";
import { readManifest, readMember } from "./manifest.ts";
import type { FromEar, ToEar } from "./worker-shapes.ts";

const hex = async (bytes: ArrayBuffer): Promise<string> =>
  [...new Uint8Array(await crypto.subtle.digest("SHA-256", bytes))].map((b) => b.toString(16).padStart(2, "0")).join("");

async function get(url: URL): Promise<Response> {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`a file of the ear was not found (${response.status})`);
  return response;
}

async function open(folder: string): Promise<Ear> {
  const manifest = readManifest(await (await get(new URL("ear.json", folder))).json());
  const words = await (await get(new URL("words.tsv", folder))).text();
  const weights = await Promise.all(
    manifest.members.map(async (file) => readMember(file, await (await get(new URL(file.file, folder))).arrayBuffer(), hex)),
  );
  return openEar(manifest, weights, lexiconOf(words, manifest.phones));
}

let ear: Ear | null = null;
let hearing: Hearing = { offers: [] };

async function take(asked: ToEar): Promise<FromEar | null> {
  if ("folder" in asked) {
    ear = await open(asked.folder);
    return { ready: true };
  }
  if ("hearing" in asked) {
    hearing = asked.hearing;
    // Laid out now, while the question is still being spoken.
    if (ear !== null) expectedBy(ear, hearing);
    return null;
  }
  if (ear === null) throw new Error("the ear was not opened");
  return { id: asked.id, decision: hear(asked.samples, hearing, ear) };
}

addEventListener("message", (e: MessageEvent<ToEar>) => {
  take(e.data).then(
    (answer) => answer && postMessage(answer),
    (error: unknown) => postMessage({ broken: error instanceof Error ? error.message : String(error) } satisfies FromEar),
  );
});
