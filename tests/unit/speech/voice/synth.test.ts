import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { beforeAll, describe, expect, it } from "vitest";
import { checkedVoice } from "#speech/voice/manifest.ts";
import { openSynth, type Synth } from "#speech/voice/synth.ts";

const folder = new URL("../../../../public/voice/", import.meta.url);
const bytesOf = async (file: string): Promise<ArrayBuffer> => Uint8Array.from(await readFile(new URL(file, folder))).buffer;
const hash = async (bytes: ArrayBuffer): Promise<string> => createHash("sha256").update(new Uint8Array(bytes)).digest("hex");
const manifest = async (): Promise<object> => JSON.parse(await readFile(new URL("voice.json", folder), "utf8"));

describe("the voice that ships with the app", () => {
  let synth: Synth;
  beforeAll(async () => {
    synth = await openSynth(await checkedVoice(await manifest(), bytesOf, hash));
  });

  const loudness = (samples: Int16Array): number => Math.sqrt(samples.reduce((sum, s) => sum + s * s, 0) / samples.length) / 32768;

  it("makes audible sound of a sentence, as long each time", () => {
    const once = synth("Turn the dial to fifteen units.", 1);
    expect(once.sampleRate).toBe(16_000);
    expect(once.samples.length / once.sampleRate).toBeGreaterThan(1.2);
    expect(loudness(once.samples)).toBeGreaterThan(0.02);
    expect(synth("Turn the dial to fifteen units.", 1).samples.length).toBe(once.samples.length);
  });

  it("speaks faster and slower as asked", () => {
    const length = (pace: number): number => synth("Wash your hands with soap.", pace).samples.length;
    expect(length(0.8) / length(1)).toBeCloseTo(1.25, 1);
    expect(length(1.25) / length(1)).toBeCloseTo(0.8, 1);
  });

  it("gives a reason instead of half a sentence when the text is too long", () => {
    expect(() => synth("word ".repeat(500), 1)).toThrow("too long");
    expect(synth("Good.", 1).samples.length).toBeGreaterThan(0);
  });

  it("never opens a torn file, another file, or one without a manifest", async () => {
    const told = await manifest();
    await expect(checkedVoice(told, async (f) => (await bytesOf(f)).slice(0, 1000), hash)).rejects.toThrow("1000 bytes");
    await expect(checkedVoice(told, bytesOf, async () => "00")).rejects.toThrow("not the one");
    await expect(checkedVoice({}, bytesOf, hash)).rejects.toThrow("manifest");
    await expect(openSynth(new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0]))).rejects.toThrow("not our voice");
  });
});
