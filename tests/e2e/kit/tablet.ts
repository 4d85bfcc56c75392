// One tablet on the test bench: a fresh browser context with the app in it, its clock in our hand, and its log read back as the app would read it.
import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { factOf } from "#app/recorder.ts";
import type { Prefs } from "#devices/prefs.ts";
import type { Happened } from "#events/happened.ts";
import type { LogRow } from "#events/log-port.ts";
import { readRow } from "#log/read-row.ts";
import { fold } from "#walk/fold.ts";
import { emptyHouse, type HouseState } from "#walk/state.ts";
import { fakeSpeech, type Said, type SpeechGlobal } from "./fake-speech.ts";
import { layLog, smallLog } from "./small-log.ts";
import { type SoundWanted, wire } from "./sound-in-page.ts";

export const LANDSCAPE = { width: 1280, height: 800 };
export const PORTRAIT = { width: 800, height: 1280 };
/** A Wednesday shortly after noon: lunch time, hours after breakfast, far from bedtime. */
const NOON = "2026-03-04T12:40:00-05:00";
/** One sentence of the fake voice, ms of the page clock. */
export const SENTENCE_MS = 200;
/** The same control is deaf for 700 ms, all of them for 600 ms after a change of screen. */
const GUARDED_MS = 750;

export interface Wanted {
  voice?: Prefs["voice"];
  prefs?: Partial<Prefs>;
  viewport?: { width: number; height: number };
  at?: string;
  /** What is in the log at first: a short past, or nothing, which the app fills with ninety days by itself. */
  past?: "short" | "none";
  /** The only person of the house, instead of two. */
  only?: "marta" | "henk";
  /** Real sound instead of a voice and an ear made for tests: what the browser is to have of each. */
  sound?: SoundWanted;
  /** A file that never arrives whole: not there, cut in half, or with one byte of it changed. */
  broken?: { file: RegExp; how: "missing" | "torn" | "changed" };
  /** Lets the app keep itself on the tablet; off unless a test is about that. */
  offline?: boolean;
  /** Runs in the page before anything else, the moved clock included: what it keeps of the page's own clock is real. */
  init?: () => void;
  options?: BrowserContextOptions;
}

/** A tablet whose owner chose the demo household and who speaks; the app is open on the kitchen screen. */
export async function openTablet(browser: Browser, baseUrl: string, wanted: Wanted = {}): Promise<Tablet> {
  const context = await browser.newContext({
    viewport: wanted.viewport ?? LANDSCAPE,
    hasTouch: true,
    timezoneId: "America/New_York",
    locale: "en-US",
    permissions: ["microphone"],
    serviceWorkers: wanted.offline ? "allow" : "block",
    ...wanted.options,
  });
  // Some builders wrap functions that are sent to the page in this helper.
  await context.addInitScript("globalThis.__name ??= (f) => f;");
  if (wanted.init) await context.addInitScript(wanted.init);
  await context.clock.install({ time: new Date(wanted.at ?? NOON) });
  const prefs = { chose: true, household: "demo", theme: "light", mm: 5.9, voice: wanted.voice ?? "silent", ...wanted.prefs };
  await context.addInitScript(
    (kept) => localStorage.getItem("tablebell preferences") ?? localStorage.setItem("tablebell preferences", kept),
    JSON.stringify(prefs),
  );
  if (wanted.sound) await context.addInitScript(wire, wanted.sound);
  else await context.addInitScript(fakeSpeech, { ms: SENTENCE_MS });
  if (wanted.broken) await breakFile(context, wanted.broken);
  const page = await context.newPage();
  if (wanted.past !== "none") await layLog(page, baseUrl, smallLog(Date.parse(wanted.at ?? NOON), wanted.only));
  const tablet = new Tablet(context, page, baseUrl);
  await tablet.open();
  return tablet;
}

function breakFile(context: BrowserContext, { file, how }: NonNullable<Wanted["broken"]>): Promise<unknown> {
  return context.route(file, async (route) => {
    if (how === "missing") return route.fulfill({ status: 404, body: "not here" });
    const response = await route.fetch();
    const body = await response.body();
    if (how === "torn") return route.fulfill({ status: 200, body: body.subarray(0, body.length / 2) });
    const middle = Math.floor(body.length / 2);
    body.writeUInt8((body.readUInt8(middle) + 1) % 256, middle);
    return route.fulfill({ response, body });
  });
}

export class Tablet {
  rows: LogRow[] = [];
  state: HouseState = emptyHouse;
  readonly complaints: string[] = [];

  constructor(
    readonly context: BrowserContext,
    public page: Page,
    readonly baseUrl: string,
  ) {
    this.watch();
  }

  /** Goes to the app and waits until it stands. */
  async open(): Promise<void> {
    await this.page.goto(this.baseUrl);
    await this.stands();
  }

  async reload(): Promise<void> {
    await this.page.reload();
    await this.stands();
  }

  /** Kills the window and opens the app in a new one. */
  async killAndOpen(): Promise<void> {
    await this.page.close({ runBeforeUnload: false });
    this.page = await this.context.newPage();
    this.watch();
    await this.open();
  }

  async stands(): Promise<void> {
    await this.page.locator("main").first().waitFor();
    await this.readOn();
  }

  /** Reads the rows that were added since, straight from the disk, and folds them. */
  async readOn(): Promise<LogRow[]> {
    const raws = await this.page.evaluate(async (after) => {
      const names = (await indexedDB.databases()).map(({ name }) => name ?? "");
      const name = names.find((n) => n.startsWith("tablebell-demo"));
      if (name === undefined) return [];
      const asked = (request: IDBRequest | IDBOpenDBRequest) =>
        new Promise<void>((resolve, reject) => {
          request.onsuccess = () => resolve();
          request.onerror = () => reject(request.error);
        });
      const opening = indexedDB.open(name);
      await asked(opening);
      const found = opening.result.transaction("rows").objectStore("rows").getAll(IDBKeyRange.lowerBound(after, true));
      await asked(found);
      opening.result.close();
      return found.result as { seq: number; row: unknown }[];
    }, this.rows.at(-1)?.seq ?? 0);
    const fresh = raws.map(({ seq, row }) => readRow(seq, row));
    for (const row of fresh) this.state = fold(this.state, factOf(row));
    this.rows.push(...fresh);
    return fresh;
  }

  /** Waits until something more was stored, and reads it. */
  async stored(what: string): Promise<LogRow[]> {
    for (let tries = 0; tries < 100; tries++) {
      const fresh = await this.readOn();
      if (fresh.length > 0) return fresh;
      await this.page.waitForTimeout(20);
    }
    throw new Error(`Nothing was stored after: ${what}\n${await this.words()}`);
  }

  /** Events since a sequence number. */
  eventsAfter(seq: number): Happened[] {
    return this.rows.flatMap((row) => (row.readable && row.seq > seq ? [row.event] : []));
  }

  get lastSeq(): number {
    return this.rows.at(-1)?.seq ?? 0;
  }

  /** Lets seconds go by at once; every timer that came due fires once, as after a tablet's nap. */
  async pass(seconds: number): Promise<void> {
    await this.page.clock.fastForward(seconds * 1000);
  }

  /** Lets time run by, every timer in its turn. */
  async run(ms: number): Promise<void> {
    await this.page.clock.runFor(ms);
  }

  /** Until the guards against trembling taps are over. */
  async settle(): Promise<void> {
    await this.page.clock.fastForward(GUARDED_MS);
  }

  /** What can be read on the glass. */
  async words(): Promise<string> {
    return (await this.page.locator("main").first().innerText()).replace(/\n+/g, "\n");
  }

  /** Every frequency that was sounded on this page, in order. */
  tones(): Promise<number[]> {
    return this.page.evaluate(() => (globalThis as SpeechGlobal).fakeSpeech.tones.map(({ hz }) => hz));
  }

  /** Every sentence that was given to the voice on this page, in order. */
  said(): Promise<Said[]> {
    return this.page.evaluate(() => (globalThis as SpeechGlobal).fakeSpeech.said);
  }

  async close(): Promise<void> {
    await this.context.close();
  }

  private watch(): void {
    this.page.on("pageerror", (error) => this.complaints.push(error.message));
  }
}
