import { beforeEach, describe, expect, it } from "vitest";
import { BrowserEars, type BrowserHearing, type RecognisedEvent, type Recogniser } from "#speech/ears-browser.ts";
import { FakeTimers } from "./fake-timers.ts";

/** Stands where the browser's global would: says where it runs, and keeps a record of every recogniser that was started. */
function fakeBrowser() {
  const timers = new FakeTimers();
  const world = {
    local: "available",
    remote: "available",
    microphone: "prompt" as "granted" | "denied" | "prompt" | "unknown",
    asked: [] as unknown[],
    installed: [] as unknown[],
    started: [] as Fake[],
    aborted: 0,
  };
  class Fake implements Recogniser {
    lang = "";
    continuous = false;
    interimResults = true;
    maxAlternatives = 1;
    processLocally = false;
    phrases: unknown[] = [];
    onresult: ((e: RecognisedEvent) => void) | null = null;
    onerror: ((e: { readonly error: string }) => void) | null = null;
    onend: (() => void) | null = null;
    static available(options: { langs: string[]; processLocally: boolean }): Promise<string> {
      world.asked.push(options);
      return Promise.resolve(options.processLocally ? world.local : world.remote);
    }
    static install(options: { langs: string[]; processLocally: boolean }): Promise<boolean> {
      world.installed.push(options);
      return Promise.resolve(true);
    }
    start(): void {
      world.started.push(this);
    }
    abort(): void {
      world.aborted++;
    }
    hear(isFinal: boolean, ...transcripts: string[]): void {
      this.onresult?.({
        resultIndex: 0,
        results: [
          Object.assign(
            transcripts.map((transcript) => ({ transcript })),
            { isFinal },
          ),
        ],
      });
    }
  }
  class Phrase {
    readonly phrase: string;
    readonly boost: number;
    constructor(phrase: string, boost: number) {
      this.phrase = phrase;
      this.boost = boost;
    }
  }
  const hearing: BrowserHearing = {
    SpeechRecognition: Fake,
    SpeechRecognitionPhrase: Phrase,
    microphone: () => Promise.resolve(world.microphone),
    timers,
  };
  return { world, hearing, timers, Fake };
}

let browser: ReturnType<typeof fakeBrowser>;
let ears: BrowserEars;
let heard: string[];
const listen = async (words: string[] = ["yes", "no"]): Promise<void> => {
  void ears.listen(words, (h) => heard.push([h.text, ...h.alternatives].join("/")));
  await browser.timers.advance(0);
};

beforeEach(() => {
  browser = fakeBrowser();
  ears = new BrowserEars(browser.hearing, "en-US");
  heard = [];
});

describe("a recogniser that runs on the device", () => {
  it("is asked for by name of the device, started to process locally, and told what to expect", async () => {
    await listen();
    expect(browser.world.asked).toEqual([{ langs: ["en-US"], processLocally: true }]);
    expect(browser.world.started).toHaveLength(1);
    expect(browser.world.started[0]).toMatchObject({ processLocally: true, lang: "en-US", interimResults: false });
    expect(browser.world.started[0]?.phrases).toMatchObject([{ phrase: "yes" }, { phrase: "no" }]);
  });

  it("passes on what it finally heard, the other guesses beside it", async () => {
    await listen();
    browser.world.started[0]?.hear(false, "ye");
    browser.world.started[0]?.hear(true, " yes ", "yet");
    expect(heard).toEqual(["yes/yet"]);
  });

  it("passes on nothing once paused, not even what was on its way", async () => {
    await listen();
    ears.pause();
    browser.world.started[0]?.hear(true, "yes");
    expect(heard).toEqual([]);
    expect(browser.world.aborted).toBe(1);
  });

  it("does not start at all when paused before it was ready", async () => {
    void ears.listen(["yes"], () => {});
    ears.pause();
    await browser.timers.advance(1000);
    expect(browser.world.started).toEqual([]);
  });

  it("opens again after it ended by itself, but not after a pause", async () => {
    await listen();
    browser.world.started[0]?.onend?.();
    await browser.timers.advance(300);
    expect(browser.world.started).toHaveLength(2);
    browser.world.started[1]?.onend?.();
    ears.pause();
    await browser.timers.advance(5000);
    expect(browser.world.started).toHaveLength(2);
  });
});

describe("a recogniser that would send sound away", () => {
  const neverStarts = async (why: string): Promise<void> => {
    await listen();
    await browser.timers.advance(5000);
    expect([why, browser.world.started]).toEqual([why, []]);
    expect(await ears.available()).toBe("not on this device");
  };

  it("is never started, whatever it answers short of being on the device", async () => {
    for (const answer of ["downloadable", "downloading", "unavailable", "", "yes"]) {
      browser.world.local = answer;
      await neverStarts(answer);
    }
    expect(browser.world.asked.every((o) => (o as { processLocally: boolean }).processLocally)).toBe(true);
  });

  it("is never started where it cannot say where it runs", async () => {
    class Mute extends browser.Fake {}
    Object.defineProperty(Mute, "available", { value: undefined });
    ears = new BrowserEars({ ...browser.hearing, SpeechRecognition: Mute }, "en-US");
    await neverStarts("no available()");
  });

  it("is never started where it knows nothing of processing locally", async () => {
    class Old extends browser.Fake {
      constructor() {
        super();
        Reflect.deleteProperty(this, "processLocally");
      }
    }
    ears = new BrowserEars({ ...browser.hearing, SpeechRecognition: Old }, "en-US");
    await neverStarts("no processLocally");
  });

  it("is never started where asking fails, or where there is none", async () => {
    class Broken extends browser.Fake {
      static override available(): Promise<string> {
        return Promise.reject(new Error("no"));
      }
    }
    ears = new BrowserEars({ ...browser.hearing, SpeechRecognition: Broken }, "en-US");
    await neverStarts("rejected");
    ears = new BrowserEars({ ...browser.hearing, SpeechRecognition: undefined }, "en-US");
    await neverStarts("none");
  });

  it("is not opened again when its language pack went away meanwhile", async () => {
    await listen();
    browser.world.local = "downloadable";
    browser.world.started[0]?.onend?.();
    await browser.timers.advance(1000);
    expect(browser.world.started).toHaveLength(1);
  });

  it("is never started again after a network error", async () => {
    await listen();
    browser.world.started[0]?.onerror?.({ error: "network" });
    await listen();
    expect(browser.world.started).toHaveLength(1);
    expect(await ears.available()).toBe("not on this device");
  });
});

describe("a microphone that is not allowed", () => {
  it("keeps the ear shut, and says so", async () => {
    browser.world.microphone = "denied";
    await listen();
    expect(browser.world.started).toEqual([]);
    expect(await ears.available()).toBe("not allowed");
  });

  it("is not asked for again and again, until it was granted", async () => {
    await listen();
    browser.world.started[0]?.onerror?.({ error: "not-allowed" });
    browser.world.started[0]?.onend?.();
    await browser.timers.advance(5000);
    await listen();
    expect(browser.world.started).toHaveLength(1);
    browser.world.microphone = "granted";
    await listen();
    expect(browser.world.started).toHaveLength(2);
  });

  it("does not mind an error that passes", async () => {
    await listen();
    browser.world.started[0]?.onerror?.({ error: "no-speech" });
    browser.world.started[0]?.onend?.();
    await browser.timers.advance(300);
    expect(browser.world.started).toHaveLength(2);
  });
});

describe("the browser's language", () => {
  it.each([
    ["available", "ready"],
    ["downloadable", "can be fetched"],
    ["downloading", "can be fetched"],
    ["unavailable", "not here"],
  ] as const)("that is %s is told as %s", async (local, told) => {
    browser.world.local = local;
    expect(await ears.language()).toBe(told);
    expect(browser.world.asked).toEqual([{ langs: ["en-US"], processLocally: true }]);
  });

  it("is fetched for this device only, and only when that is asked for", async () => {
    browser.world.local = "downloadable";
    await ears.available();
    await ears.language();
    await listen();
    expect(browser.world.installed).toEqual([]);
    expect(await ears.install()).toBe(true);
    expect(browser.world.installed).toEqual([{ langs: ["en-US"], processLocally: true }]);
  });

  it("is not there where the browser cannot say or fetch", async () => {
    const old = new BrowserEars({ ...browser.hearing, SpeechRecognition: undefined }, "en-US");
    expect([await old.language(), await old.install()]).toEqual(["not here", false]);
  });
});
