import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { describe, expect, it } from "vitest";
import { readManifest, readMember } from "#speech/ear/manifest.ts";
import { melOf } from "#speech/ear/mel.ts";
import { netOf } from "#speech/ear/net.ts";
import golden from "./golden.json" with { type: "json" };

const folder = new URL("../../../../public/ear/", import.meta.url);
const bytesOf = async (file: string): Promise<ArrayBuffer> => Uint8Array.from(await readFile(new URL(file, folder))).buffer;
const hash = async (bytes: ArrayBuffer): Promise<string> => createHash("sha256").update(new Uint8Array(bytes)).digest("hex");
const manifest = readManifest(JSON.parse(await readFile(new URL("ear.json", folder), "utf8")));

// The golden vector was made by the training library (torch) from the same rounded weights: recipe/export.py.
describe("the net in TypeScript agrees with the library that trained it", () => {
  const samples = Float32Array.from(golden.samples, (s) => s / 32768);
  const features = melOf(manifest.mel)(samples);

  it("in the first three rows of features", () => {
    golden.features.forEach((row, r) => {
      row.forEach((value, i) => {
        expect(Math.abs((features.values[r * features.width + i] ?? 99) - value)).toBeLessThan(2e-3);
      });
    });
  });

  it("in every log probability", async () => {
    const [file] = manifest.members;
    if (file === undefined) throw new Error("no member");
    const scores = netOf(file, await readMember(file, await bytesOf(file.file), hash))(features);
    expect([scores.rows, scores.width]).toEqual([golden.logProbs.length, manifest.phones.length]);
    const worst = golden.logProbs.flat().reduce((w, value, i) => Math.max(w, Math.abs((scores.values[i] ?? 99) - value)), 0);
    expect(worst).toBeLessThan(2e-3);
  });
});

describe("a file that does not fit never hears", () => {
  it("says what is wrong with it", async () => {
    const [file] = manifest.members;
    if (file === undefined) throw new Error("no member");
    const bytes = await bytesOf(file.file);
    await expect(readMember(file, bytes.slice(4), hash)).rejects.toThrow("bytes");
    new Uint8Array(bytes)[1000] = (new Uint8Array(bytes)[1000] ?? 0) ^ 1;
    await expect(readMember(file, bytes, hash)).rejects.toThrow("not the one");
    expect(() => readManifest({ format: 2 })).toThrow("manifest");
  });
});
