// The whole way of sound in a real browser, on the real clock: made speech goes into the microphone's path, through worklet, endpoint and nets, to an
// answer; and the tablet speaks with the voice it ships. No recogniser and no voice of the browser is there.
import { readFile } from "node:fs/promises";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, inject, it } from "vitest";
import { openSynth, type Synth } from "#speech/voice/synth.ts";
import { launch } from "../browser/launch.ts";

type Bench = typeof globalThis & { say(samples: number[]): Promise<void>; heardFromTablet: number };

let browser: Browser | undefined;
let synth: Synth | undefined;
let page: Page | undefined;

beforeAll(async () => {
  browser = await launch();
  synth = await openSynth(await readFile(new URL("../../public/voice/voice.wasm", import.meta.url)));
});
afterEach(() => page?.context().close());
afterAll(() => browser?.close());

/** Puts a line in place of the microphone, into which the test speaks, and counts the loud samples the tablet plays. */
function wire(): void {
  const bench = globalThis as Bench;
  const context = new AudioContext();
  const line = context.createMediaStreamDestination();
  bench.heardFromTablet = 0;
  bench.say = (samples) =>
    new Promise((done) => {
      const buffer = context.createBuffer(1, samples.length, 16_000);
      buffer.copyToChannel(
        Float32Array.from(samples, (s) => s / 32768),
        0,
      );
      const source = context.createBufferSource();
      source.buffer = buffer;
      source.connect(line);
      source.onended = () => done();
      source.start();
    });
  // A room is never digitally silent.
  const hiss = context.createBuffer(1, 48_000, 48_000);
  hiss.copyToChannel(
    Float32Array.from({ length: 48_000 }, () => (Math.random() - 0.5) * 0.002),
    0,
  );
  const room = context.createBufferSource();
  room.buffer = hiss;
  room.loop = true;
  room.connect(line);
  room.start();
  if (navigator.mediaDevices) navigator.mediaDevices.getUserMedia = async () => line.stream.clone();
  Object.defineProperty(window, "SpeechRecognition", { configurable: true, value: undefined });
  Object.defineProperty(window, "speechSynthesis", { configurable: true, value: undefined });
  const copy = AudioBuffer.prototype.copyToChannel;
  AudioBuffer.prototype.copyToChannel = function (source, channel, start) {
    // What the app plays has the voice's rate and comes in whole sentences.
    if (this.sampleRate === 16_000 && new Error().stack?.includes("/assets/")) bench.heardFromTablet += source.length;
    copy.call(this, source, channel, start);
  };
}

async function tablet(broken?: RegExp): Promise<Page> {
  const context = await browser?.newContext({
    viewport: { width: 1280, height: 800 },
    hasTouch: true,
    permissions: ["microphone"],
    serviceWorkers: "block",
    timezoneId: "America/New_York",
  });
  if (context === undefined) throw new Error("the browser was not started");
  await context.addInitScript("globalThis.__name ??= (f) => f;");
  await context.addInitScript(wire);
  const prefs = { chose: true, household: "demo", theme: "light", mm: 5.9, voice: "speaks and listens", rate: 190 };
  await context.addInitScript((kept) => localStorage.setItem("tablebell preferences", kept), JSON.stringify(prefs));
  if (broken) await context.route(broken, (route) => route.fulfill({ status: 200, body: "torn" }));
  page = await context.newPage();
  await page.goto(inject("baseUrl"));
  await page.getByRole("button", { name: "Start a meal" }).waitFor({ timeout: 60_000 });
  return page;
}

async function tap(on: Page, name: string): Promise<void> {
  const button = on.getByRole("button", { name, exact: true }).first();
  await button.waitFor({ timeout: 20_000 });
  // The buttons rest for a moment after a change of screen.
  await on.waitForTimeout(800);
  await button.tap();
}

const words = (on: Page): Promise<string> => on.locator("body").innerText();

/** Waits until the tablet listens, then says it at 150 words a minute; again up to three times, as a person would. Settles when the screen shows what is wanted. */
async function say(on: Page, text: string, wanted: string): Promise<void> {
  const sound = [...(synth?.(text, 0.8).samples ?? [])];
  for (let go = 0; go < 4; go++) {
    await on.getByText("I am listening.").first().waitFor({ timeout: 40_000 });
    await on.waitForTimeout(700);
    await on.evaluate((samples) => (globalThis as Bench).say(samples), sound);
    const arrived = await on
      .getByText(wanted)
      .first()
      .waitFor({ timeout: 4000 })
      .then(() => true)
      .catch(() => false);
    if (arrived) return;
  }
  throw new Error(`"${text}" did not bring "${wanted}":\n${await words(on)}`);
}

describe("a walk by sound", () => {
  // Sound runs on the real clock: a busy machine may tear it, so a torn run is run again.
  it("is answered through the microphone's path with the network off, and spoken by the voice it ships", { retry: 2 }, async () => {
    const on = await tablet();
    await tap(on, "Start a meal");
    await tap(on, "● Marta");
    await tap(on, "Lunch");
    // The worker's files are there by now; from here on every request fails.
    await on.waitForTimeout(3000);
    await on.context().setOffline(true);
    await say(on, "yes", "Wash your hands");
    await say(on, "start washing", "Dry");
    expect(await on.evaluate(() => (globalThis as Bench).heardFromTablet)).toBeGreaterThan(16_000);
  });

  it("goes on by touch where the ear's file is torn", async () => {
    const on = await tablet(/ear-a\.bin/);
    await tap(on, "Start a meal");
    await tap(on, "● Marta");
    await tap(on, "Lunch");
    await tap(on, "Yes");
    await on.getByText("Wash your hands").first().waitFor();
    expect(await words(on)).not.toContain("I am listening.");
  });

  it("goes on by sight and touch where the voice's file is torn", async () => {
    const on = await tablet(/voice\.wasm/);
    await tap(on, "Start a meal");
    await tap(on, "● Marta");
    await tap(on, "Lunch");
    await tap(on, "Yes");
    await on.getByText("Wash your hands").first().waitFor();
    expect(await on.evaluate(() => (globalThis as Bench).heardFromTablet)).toBe(0);
  });
});
