// The synthesiser works beside the page, so that the screen never waits for a sentence to be made.
import { hashOf, shipped } from "#speech/shipped.ts";
import { checkedVoice } from "./manifest.ts";
import { openSynth, type Synth } from "./synth.ts";
import type { Answer, Ask } from "./worker-shapes.ts";

const answer = (a: Answer): void => {
  postMessage(a, a && "samples" in a ? { transfer: [a.samples.buffer] } : {});
};

/** `folder`: where the manifest and the voice lie. */
async function open(folder: string): Promise<Synth> {
  const manifest: unknown = await (await shipped("voice.json", folder)).json();
  const bytes = await checkedVoice(manifest, async (file) => (await shipped(file, folder)).arrayBuffer(), hashOf);
  const synth = await openSynth(bytes);
  // The first sentence takes ten times as long as the next ones, so one is made that nobody hears.
  synth("Ready.", 1);
  return synth;
}

let synth: Promise<Synth> | null = null;

addEventListener("message", async (e: MessageEvent<Ask | { folder: string }>) => {
  const asked = e.data;
  if ("folder" in asked) {
    synth = open(asked.folder);
    await synth.then(
      () => answer({ ready: true }),
      (error: unknown) => answer({ broken: error instanceof Error ? error.message : String(error) }),
    );
    return;
  }
  try {
    if (synth === null) throw new Error("the voice was not opened");
    const { samples, sampleRate } = (await synth)(asked.text, asked.pace);
    answer({ id: asked.id, samples: new Int16Array(samples), sampleRate, made: samples.length });
  } catch (error) {
    answer({ id: asked.id, why: error instanceof Error ? error.message : String(error) });
  }
});
