import { execFile, execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import { mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { type Manner, PACKAGES, type Voice } from "./voices.ts";
import { RATE, readWav, resample, trimmed } from "./wav.ts";

const run = promisify(execFile);
const DIALS = { flite: "--setf", stretch: "duration_stretch" };

/** What is to be spoken, by whom and how. */
export type Line = { words: string; manner: Manner };

/** Names the packages that are missing and installs them where this account may; throws where it may not. */
export function needPackages(): void {
  const missing = PACKAGES.filter((p) => !existsSync(p.there)).map((p) => p.package);
  if (missing.length === 0) return;
  console.error(`Missing Debian packages: ${missing.join(" ")}. Installing them.`);
  try {
    execFileSync("apt-get", ["install", "-y", "--no-install-recommends", ...missing], { stdio: ["ignore", "ignore", "inherit"] });
  } catch {
    throw new Error(`The spoken corpus needs these Debian packages: apt-get install ${missing.join(" ")}`);
  }
}

/** Every line as 16 kHz sound without silence at its ends, in the same order. */
export async function speak(voice: Voice, lines: readonly Line[]): Promise<Float32Array[]> {
  const folder = await mkdtemp(join(tmpdir(), "tablebell-spoken-"));
  try {
    const files = lines.map((_, i) => join(folder, `${i}.wav`));
    if (voice.from === "festival") await festival(voice, lines, files, folder);
    else for (const [i, line] of lines.entries()) await one(voice, line, files[i] ?? "");
    const sounds: Float32Array[] = [];
    for (const [i, file] of files.entries()) {
      const { samples, rate } = readWav(await readFile(file));
      sounds.push(trimmed(resample(samples, rate * (lines[i]?.manner.size ?? 1), RATE)));
    }
    return sounds;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function one(voice: Voice, { words, manner }: Line, file: string): Promise<void> {
  if (voice.from === "flite")
    await run("flite", ["-voice", voice.called, DIALS.flite, `${DIALS.stretch}=${manner.stretch.toFixed(3)}`, "-t", words, "-o", file]);
  else await run("espeak-ng", ["-v", voice.called, "-s", String(Math.round(160 / manner.stretch)), "-w", file, words]);
}

/** Started once for all lines: starting takes longer than speaking. */
async function festival(voice: Voice, lines: readonly Line[], files: readonly string[], folder: string): Promise<void> {
  const script = join(folder, "lines.scm");
  const said = lines.map(({ words, manner }, i) => {
    return `(Parameter.set 'Duration_Stretch ${manner.stretch.toFixed(3)})\n(utt.save.wave (utt.synth (Utterance Text "${words}")) "${files[i]}" 'riff)`;
  });
  await writeFile(script, `(${voice.called})\n${said.join("\n")}\n`);
  await run("festival", ["--batch", script], { maxBuffer: 1 << 26 });
}

/** Keeps sounds in a file: how many, how long each, then 16-bit samples. */
export async function store(file: string, sounds: readonly Float32Array[]): Promise<void> {
  const head = Int32Array.of(sounds.length, ...sounds.map((s) => s.length));
  const body = sounds.map((s) => Int16Array.from(s, (v) => Math.max(-32768, Math.min(32767, Math.round(v * 32768)))));
  await mkdir(join(file, ".."), { recursive: true });
  await writeFile(file, Buffer.concat([head, ...body].map((a) => Buffer.from(a.buffer, a.byteOffset, a.byteLength))));
}

export async function fetch(file: string): Promise<Float32Array[] | null> {
  if (!existsSync(file)) return null;
  const data = await readFile(file);
  const count = data.readInt32LE(0);
  let at = 4 * (count + 1);
  return Array.from({ length: count }, (_, i) => {
    const length = data.readInt32LE(4 * (i + 1));
    const samples = new Float32Array(length);
    for (let s = 0; s < length; s++) samples[s] = data.readInt16LE(at + 2 * s) / 32768;
    at += 2 * length;
    return samples;
  });
}
