import { describe, expect, it } from "vitest";
import type { Decision } from "#speech/ear/decide.ts";
import { BLOCK } from "#speech/ear/endpoint.ts";
import type { FromEar, ToEar } from "#speech/ear/worker-shapes.ts";
import { OwnEars, type Sound } from "#speech/ears-own.ts";
import type { Heard } from "#speech/ports.ts";
import { FakeTimers } from "./fake-timers.ts";

/** A microphone and a worker played by hand. */
function kitchen(state: Awaited<ReturnType<Sound["state"]>> = "allowed") {
  let listener: ((block: Float32Array) => void) | null = null;
  let answer: (a: FromEar) => void = () => {};
  const posted: ToEar[] = [];
  let opened = 0;
  const sound: Sound = {
    state: async () => state,
    open: async (onBlock) => {
      opened++;
      listener = onBlock;
      return state === "allowed" ? "open" : "refused";
    },
    pause: () => {
      listener = null;
    },
  };
  const timers = new FakeTimers();
  const ears = new OwnEars(sound, timers);
  ears.open(
    {
      post: (message) => void posted.push(message),
      onAnswer: (l) => {
        answer = l;
      },
    },
    "ear/",
  );
  const play = (ms: number, loud: boolean) => {
    for (let t = 0; t < ms; t += 30)
      listener?.(Float32Array.from({ length: BLOCK }, (_, i) => (loud ? 0.3 : 0.0005) * Math.sin(i * 0.9 + (i % 7))));
  };
  const utterance = () => {
    play(3000, false);
    play(600, true);
    play(600, false);
  };
  const asked = (): number[] => posted.flatMap((m) => ("id" in m ? [m.id] : []));
  let told = 0;
  /** The worker makes the same of every sound that it was given and will be given now. */
  const tellAll = async (decision: Decision) => {
    await settled();
    while (told < asked().length) {
      answer({ id: asked()[told++] ?? -1, decision });
      await settled();
    }
  };
  return { ears, timers, opens: () => opened, posted, play, utterance, asked, tellAll, tell: (a: FromEar) => answer(a) };
}

type Kitchen = ReturnType<typeof kitchen>;
const settled = () => new Promise<void>((done) => setImmediate(done));

async function heardAs(decision: Decision): Promise<Heard[]> {
  const { ears, utterance, tell, tellAll } = kitchen();
  const heard: Heard[] = [];
  tell({ ready: true });
  ears.listen(["yes"], (h) => heard.push(h));
  await settled();
  utterance();
  await tellAll(decision);
  return heard;
}

describe("the ear that ships with the app", () => {
  it("hears nothing before its files are there, and never when they are torn", async () => {
    const { ears, tell } = kitchen();
    expect(await ears.available()).toBe("not on this device");
    tell({ ready: true });
    expect(await ears.available()).toBe("on the device");
    tell({ broken: "ear-a.bin is not the one that was made" });
    expect(await ears.available()).toBe("not on this device");
  });

  it.each([
    ["refused", "not allowed"],
    ["none", "not on this device"],
  ] as const)("says so where the microphone is %s", async (state, told) => {
    const { ears, tell } = kitchen(state);
    tell({ ready: true });
    expect(await ears.available()).toBe(told);
  });

  it("tells what was understood as one text without a doubt", async () => {
    expect(await heardAs({ kind: "understood", text: "yes" })).toEqual([{ text: "yes", alternatives: [] }]);
  });

  it("tells what must be asked again as a doubt, with all guesses", async () => {
    expect(await heardAs({ kind: "ask again", texts: ["fifteen", "fifty"] })).toEqual([
      { text: "fifteen", alternatives: ["fifty"], unsure: true },
    ]);
  });

  it("tells nobody what was turned away", async () => {
    expect(await heardAs({ kind: "turned away", why: "other speech" })).toEqual([]);
  });

  it("tells of other people's talk, and of a room too loud to be heard in, but not once it was paused", async () => {
    const { ears, utterance, play, tell, tellAll } = kitchen();
    const troubles: string[] = [];
    tell({ ready: true });
    ears.listen(
      ["yes"],
      () => {},
      undefined,
      (t) => troubles.push(t),
    );
    await settled();
    utterance();
    await tellAll({ kind: "turned away", why: "other speech" });
    expect(troubles).toEqual(["other talk"]);
    play(9000, true);
    expect(troubles).toEqual(["other talk", "too loud"]);
    utterance();
    ears.pause();
    await tellAll({ kind: "turned away", why: "other speech" });
    expect(troubles).toHaveLength(2);
  });

  it.each([
    ["with an error", async ({ tell }: Kitchen) => tell({ broken: "out of memory" })],
    ["without a word, while nobody speaks", async ({ timers }: Kitchen) => timers.advance(10_000)],
    [
      "without a word, while somebody tries again and again",
      async ({ timers, utterance }: Kitchen) => {
        for (let i = 0; i < 3; i++) {
          utterance();
          await timers.advance(4000);
        }
      },
    ],
  ])("tells that it hears no more when its worker dies %s", async (_, die) => {
    const k = kitchen();
    const troubles: string[] = [];
    k.tell({ ready: true });
    k.ears.listen(
      ["yes"],
      () => {},
      undefined,
      (t) => troubles.push(t),
    );
    await settled();
    await die(k);
    expect(troubles).toEqual(["deaf"]);
    expect(await k.ears.report()).toBe("broken");
  });

  it("lives as long as its worker answers, and again when it was only slow", async () => {
    const { ears, timers, asked, utterance, tell } = kitchen();
    const heard: Heard[] = [];
    const troubles: string[] = [];
    tell({ ready: true });
    const listen = () =>
      ears.listen(
        ["yes"],
        (h) => heard.push(h),
        undefined,
        (t) => troubles.push(t),
      );
    listen();
    tell({ expects: true });
    await timers.advance(60_000);
    await settled();
    utterance();
    await timers.advance(9000);
    expect([troubles, await ears.report()]).toEqual([[], "ready"]);
    await timers.advance(1000);
    expect([troubles, await ears.report()]).toEqual([["deaf"], "broken"]);
    tell({ id: asked()[0] ?? -1, decision: { kind: "understood", text: "yes" } });
    expect(await ears.report()).toBe("ready");
  });

  it("asks for no sound before it is to listen", async () => {
    const { ears, opens, play, asked, tell } = kitchen();
    tell({ ready: true });
    expect(await ears.available()).toBe("on the device");
    expect(opens()).toBe(0);
    play(3000, true);
    expect(asked()).toEqual([]);
  });

  it("passes nothing on that was still being worked out when it was paused", async () => {
    const { ears, utterance, asked, tell } = kitchen();
    const heard: Heard[] = [];
    tell({ ready: true });
    void ears.listen(["yes"], (h) => heard.push(h));
    await settled();
    utterance();
    expect(asked()).toHaveLength(1);
    ears.pause();
    tell({ id: asked()[0] ?? -1, decision: { kind: "understood", text: "yes" } });
    await settled();
    expect(heard).toEqual([]);
  });

  it("looks at a pause before it closes, and tells the answer as soon as it does, without a second look", async () => {
    const { ears, play, asked, tell } = kitchen();
    const heard: Heard[] = [];
    tell({ ready: true });
    ears.listen(["yes"], (h) => heard.push(h));
    await settled();
    play(3000, false);
    play(600, true);
    play(270, false);
    expect(asked()).toHaveLength(1);
    tell({ id: asked()[0] ?? -1, decision: { kind: "understood", text: "yes" } });
    await settled();
    expect(heard).toEqual([]);
    play(60, false);
    await settled();
    expect(heard.map((h) => h.text)).toEqual(["yes"]);
    expect(asked()).toHaveLength(1);
  });

  it("looks again at the whole of it where the first look left a doubt", async () => {
    const { ears, play, asked, tell } = kitchen();
    const heard: Heard[] = [];
    tell({ ready: true });
    ears.listen(["yes"], (h) => heard.push(h));
    await settled();
    play(3000, false);
    play(600, true);
    play(270, false);
    tell({ id: asked()[0] ?? -1, decision: { kind: "ask again", texts: ["six", "sick"] } });
    await settled();
    play(60, false);
    await settled();
    expect([heard, asked().length]).toEqual([[], 2]);
    tell({ id: asked()[1] ?? -1, decision: { kind: "understood", text: "six" } });
    await settled();
    expect(heard).toEqual([{ text: "six", alternatives: [] }]);
  });

  const number = { offers: [{ id: "n", number: true as const }], range: { low: 20, high: 600, step: 1 as const } };

  it("waits for the rest of a number that can go on, and tells the whole of it once", async () => {
    const { ears, play, asked, tell } = kitchen();
    const heard: Heard[] = [];
    tell({ ready: true });
    ears.listen([], (h) => heard.push(h), number);
    await settled();
    play(3000, false);
    play(600, true);
    play(330, false);
    tell({ id: asked()[0] ?? -1, decision: { kind: "understood", text: "one hundred" } });
    await settled();
    play(210, false);
    await settled();
    expect(heard).toEqual([]);
    play(500, true);
    play(330, false);
    expect(asked()).toHaveLength(2);
    tell({ id: asked()[1] ?? -1, decision: { kind: "understood", text: "one hundred twelve" } });
    await settled();
    play(60, false);
    await settled();
    expect(heard.map((h) => h.text)).toEqual(["one hundred twelve"]);
  });

  it("knows at the closing what a number is that could have gone on", async () => {
    const { ears, play, tell, tellAll } = kitchen();
    const heard: Heard[] = [];
    tell({ ready: true });
    ears.listen([], (h) => heard.push(h), number);
    await settled();
    play(3000, false);
    play(600, true);
    play(330, false);
    await tellAll({ kind: "understood", text: "one hundred" });
    play(300, false);
    await tellAll({ kind: "understood", text: "one hundred" });
    expect(heard).toEqual([]);
    play(120, false);
    await settled();
    expect(heard.map((h) => h.text)).toEqual(["one hundred"]);
  });

  it("takes no answer of an earlier pause for the whole", async () => {
    const { ears, play, asked, tell, tellAll } = kitchen();
    const heard: Heard[] = [];
    tell({ ready: true });
    ears.listen([], (h) => heard.push(h), number);
    await settled();
    play(3000, false);
    play(600, true);
    play(390, false);
    play(500, true);
    play(60, false);
    // The worker was slow: its answer to the first pause comes in the second.
    tell({ id: asked()[0] ?? -1, decision: { kind: "understood", text: "fifteen" } });
    await settled();
    play(450, false);
    play(300, true);
    play(1200, false);
    await settled();
    expect(heard).toEqual([]);
    await tellAll({ kind: "understood", text: "one hundred twelve" });
    expect(heard.map((h) => h.text)).toEqual(["one hundred twelve"]);
  });

  it("tells the worker what to expect before any sound", async () => {
    const { ears, posted } = kitchen();
    void ears.listen(["yes", "no"], () => {});
    await settled();
    expect(posted.at(-1)).toEqual({
      hearing: {
        offers: [
          { id: "yes", phrases: ["yes"] },
          { id: "no", phrases: ["no"] },
        ],
      },
    });
  });
});
