import { describe, expect, it } from "vitest";
import { ScriptedEars } from "#speech/ears-scripted.ts";
import { line, screen, table } from "./turns-table.ts";

describe("a screen that is presented", () => {
  it("is said sentence by sentence, each marked while it is said, with pauses between", async () => {
    const t = table({ byHand: true });
    t.turns.present(screen("wash"));
    await t.timers.advance(0);
    expect(t.voice.texts()).toEqual(["wash one."]);
    expect(t.marks.at(-1)).toBe("sentences 0");
    t.voice.finish();
    await t.timers.advance(999);
    expect(t.voice.said).toHaveLength(1);
    await t.timers.advance(1);
    expect(t.voice.texts()).toEqual(["wash one.", "wash two?"]);
    expect(t.marks.at(-1)).toBe("sentences 1");
    t.voice.finish();
    await t.timers.advance(0);
    expect(t.marks.at(-1)).toBeNull();
  });

  it("opens the ear 300 ms after the last sentence, for the phrases on offer", async () => {
    const t = table({ byHand: true });
    t.turns.present(screen("wash", { sentences: [line("Wash your hands.")] }));
    await t.timers.advance(5000);
    expect(t.ears.listening()).toBe(false);
    t.voice.finish();
    await t.timers.advance(299);
    expect(t.ears.listening()).toBe(false);
    await t.timers.advance(1);
    expect(t.ears.listening()).toBe(true);
    expect(t.ears.vocabulary).toEqual(["yes", "no"]);
    expect(t.listening).toEqual([true]);
  });

  it("goes on to the next sentence when one fails: it stands on the screen", async () => {
    const t = table({ byHand: true });
    t.turns.present(screen("wash"));
    t.voice.fail("no sound");
    await t.timers.advance(1000);
    expect(t.voice.texts()).toEqual(["wash one.", "wash two?"]);
  });

  it("is not said again when it is presented again, but a new vocabulary is heard at once", async () => {
    const t = table();
    t.turns.present(screen("wash"));
    await t.timers.advance(2000);
    t.turns.present(screen("wash", { vocabulary: ["done"] }));
    await t.timers.advance(0);
    expect(t.voice.said).toHaveLength(2);
    expect(t.ears.vocabulary).toEqual(["done"]);
    expect(t.ears.say("done")).toBe(true);
    expect(t.heard).toEqual(["done"]);
  });

  it("cuts off the one before", async () => {
    const t = table({ byHand: true });
    t.turns.present(screen("wash"));
    t.turns.present(screen("reading"));
    await t.timers.advance(5000);
    expect(t.voice.texts()).toEqual(["wash one.", "reading one."]);
    t.voice.finish();
    await t.timers.advance(1000);
    expect(t.voice.texts().at(-1)).toBe("reading two?");
  });

  it("falls silent and deaf when it is over", async () => {
    const t = table();
    t.turns.present(screen("wash"));
    await t.timers.advance(2000);
    t.turns.end();
    await t.timers.advance(60_000);
    expect(t.ears.listening()).toBe(false);
    expect(t.voice.said).toHaveLength(2);
  });
});

describe("a screen that is for hands only", () => {
  it("is said, and nothing is heard on it, however it is asked", async () => {
    const t = table();
    t.turns.present(screen("drawer", { deaf: true }));
    await t.timers.advance(5000);
    t.turns.touch();
    t.turns.again();
    t.turns.earCame();
    await t.timers.advance(60_000);
    expect([t.voice.said.length > 0, t.ears.opened]).toEqual([true, 0]);
    t.turns.present(screen("wash"));
    await t.timers.advance(5000);
    expect(t.ears.listening()).toBe(true);
  });
});

describe("an ear that comes late", () => {
  it("is opened when it has come, on the screen that waits for an answer", async () => {
    let there = false;
    const ears = new ScriptedEars();
    ears.available = async () => (there ? "on the device" : "not on this device");
    const t = table({ ears });
    t.turns.present(screen("wash"));
    await t.timers.advance(5000);
    expect(ears.listening()).toBe(false);
    there = true;
    t.turns.earCame();
    await t.timers.advance(300);
    expect(ears.listening()).toBe(true);
  });

  it("is not opened while the tablet speaks", async () => {
    const t = table({ byHand: true });
    t.turns.present(screen("wash"));
    t.turns.earCame();
    await t.timers.advance(5000);
    expect(t.ears.listening()).toBe(false);
  });
});

describe("what is heard", () => {
  it("is passed on once; the ear rests 700 ms after an answer, so that a 'yes, yes' is one answer", async () => {
    const t = table();
    t.turns.present(screen("reading"));
    await t.timers.advance(2000);
    expect(t.ears.say("yes")).toBe(true);
    expect(t.ears.say("yes")).toBe(false);
    expect(t.heard).toEqual(["yes"]);
    await t.timers.advance(700);
    expect(t.ears.say("no")).toBe(true);
  });

  it("leads to the next screen, which speaks with the ear shut", async () => {
    const t = table({ byHand: true });
    t.answers.onHeard = () => t.turns.present(screen("plate"));
    t.turns.present(screen("reading", { sentences: [] }));
    await t.timers.advance(300);
    t.ears.say("yes");
    await t.timers.advance(5000);
    expect(t.voice.speaking()).toBe(true);
    expect(t.ears.listening()).toBe(false);
  });

  it("is answered with the next rung at once when it was turned away", async () => {
    const t = table();
    t.answers.fit = "turned away";
    t.turns.present(screen("reading"));
    await t.timers.advance(2000);
    t.ears.say("lovely weather");
    await t.timers.advance(0);
    expect(t.voice.texts().at(-1)).toBe("reading short?");
  });
});

describe("the voice and the ear of the room", () => {
  it("touching stops speech at once, the rest is not said, and the ear opens", async () => {
    const t = table({ byHand: true });
    t.turns.present(screen("wash"));
    t.turns.touch();
    expect(t.voice.speaking()).toBe(false);
    expect(t.marks.at(-1)).toBeNull();
    await t.timers.advance(300);
    expect(t.ears.listening()).toBe(true);
    expect(t.voice.texts()).toEqual(["wash one."]);
  });

  it("says it all again on Again", async () => {
    const t = table();
    t.turns.present(screen("wash"));
    await t.timers.advance(2000);
    t.turns.again();
    await t.timers.advance(2000);
    expect(t.voice.texts()).toEqual(["wash one.", "wash two?", "wash one.", "wash two?"]);
    expect(t.ears.listening()).toBe(true);
  });

  it("says the question alone once more, in quiet too, as when it was made louder", async () => {
    const t = table();
    t.turns.present(screen("wash"));
    await t.timers.advance(2000);
    t.turns.quiet(true);
    t.turns.again("question");
    await t.timers.advance(2000);
    expect(t.voice.texts()).toEqual(["wash one.", "wash two?", "wash short?"]);
    expect(t.ears.listening()).toBe(true);
  });

  it("falls quiet on Quiet and goes on with the same sentence afterwards, also when a touch pressed it", async () => {
    const t = table({ byHand: true });
    t.turns.present(screen("wash"));
    t.voice.finish();
    await t.timers.advance(1000);
    t.turns.touch();
    t.turns.quiet(true);
    expect(t.voice.speaking()).toBe(false);
    await t.timers.advance(60_000);
    expect(t.ears.listening()).toBe(true);
    expect(t.voice.said).toHaveLength(2);
    t.turns.touch();
    t.turns.quiet(false);
    expect(t.ears.listening()).toBe(false);
    expect(t.voice.texts()).toEqual(["wash one.", "wash two?", "wash two?"]);
  });

  it("is quiet on later screens too, yet says again what is asked for again", async () => {
    const t = table();
    t.turns.quiet(true);
    t.turns.present(screen("wash"));
    await t.timers.advance(30_000);
    expect(t.voice.said).toEqual([]);
    t.turns.again();
    await t.timers.advance(2000);
    expect(t.voice.texts()).toEqual(["wash one.", "wash two?"]);
  });

  it("is silent while dialling: nothing is spoken, asked again or urgent, and the ear still hears the number", async () => {
    const t = table();
    t.turns.present(screen("dial", { silent: true }));
    t.turns.again();
    expect(t.turns.interrupt(line("Your reading is low."))).toBe(false);
    t.turns.quiet(true);
    t.turns.quiet(false);
    await t.timers.advance(120_000);
    expect(t.voice.said).toEqual([]);
    expect(t.ears.say("six")).toBe(true);
  });

  it("stops in the middle of a sentence when dialling begins, and goes on when it is over", async () => {
    const t = table({ byHand: true });
    t.turns.present(screen("dial"));
    t.turns.setSilent(true);
    expect(t.voice.speaking()).toBe(false);
    await t.timers.advance(60_000);
    expect(t.voice.said).toHaveLength(1);
    t.turns.setSilent(false);
    expect(t.voice.texts()).toEqual(["dial one.", "dial one."]);
    t.turns.present(screen("dial", { silent: true }));
    expect(t.voice.speaking()).toBe(false);
  });

  it("says an urgent sentence at once, then goes on with the sentence it cut off", async () => {
    const t = table({ byHand: true });
    t.turns.present(screen("wash"));
    expect(t.turns.interrupt(line("Ann: time to eat."))).toBe(true);
    expect(t.turns.interrupt(line("The dinner is ready."))).toBe(true);
    expect(t.voice.texts()).toEqual(["wash one.", "Ann: time to eat."]);
    expect(t.marks.at(-1)).toBe("urgent 0");
    t.voice.finish();
    await t.timers.advance(1000);
    t.voice.finish();
    await t.timers.advance(1000);
    expect(t.voice.texts()).toEqual(["wash one.", "Ann: time to eat.", "The dinner is ready.", "wash one."]);
  });

  it("says an urgent sentence through quiet, with the ear shut, and opens the ear again", async () => {
    const t = table({ byHand: true });
    t.turns.quiet(true);
    t.turns.present(screen("wash"));
    await t.timers.advance(300);
    expect(t.turns.interrupt(line("Your reading is low."))).toBe(true);
    expect([t.voice.speaking(), t.ears.listening()]).toEqual([true, false]);
    t.voice.finish();
    await t.timers.advance(2000);
    expect([t.voice.speaking(), t.ears.listening()]).toEqual([false, true]);
    expect(t.voice.said).toHaveLength(1);
  });
});

describe("a room that is in the way", () => {
  it("is told once on a screen, with the ear shut meanwhile, and then listened to again", async () => {
    const t = table({ byHand: true });
    t.turns.present(screen("wash", { sentences: [] }));
    await t.timers.advance(300);
    t.ears.trouble("too loud");
    expect([t.voice.texts(), t.ears.listening(), t.rooms]).toEqual([["Too loud."], false, ["too loud"]]);
    t.voice.finish();
    await t.timers.advance(1000);
    t.voice.finish();
    await t.timers.advance(300);
    expect(t.ears.listening()).toBe(true);
    t.ears.trouble("too loud");
    expect(t.voice.texts()).toEqual(["Too loud.", "Press."]);
    t.turns.present(screen("reading"));
    expect(t.rooms).toEqual(["too loud", null]);
  });

  it("is no more in the way once an answer was heard", async () => {
    const t = table();
    t.turns.present(screen("wash"));
    await t.timers.advance(2000);
    t.ears.trouble("too loud");
    await t.timers.advance(3000);
    t.ears.say("yes");
    expect(t.rooms).toEqual(["too loud", null]);
  });

  it("leaves the screen to the buttons where others talk on, until the next", async () => {
    const t = table();
    t.turns.present(screen("wash"));
    await t.timers.advance(2000);
    for (let i = 0; i < 3; i++) t.ears.trouble("other talk");
    await t.timers.advance(60_000);
    expect([t.voice.texts().at(-1), t.ears.listening()]).toEqual(["Others talk.", false]);
    t.turns.touch();
    await t.timers.advance(60_000);
    expect(t.ears.listening()).toBe(false);
    t.turns.present(screen("reading"));
    await t.timers.advance(3000);
    expect(t.ears.listening()).toBe(true);
  });

  it("is only shown in quiet and in text only", async () => {
    for (const how of ["quiet", "text only"] as const) {
      const t = table();
      if (how === "quiet") t.turns.quiet(true);
      else t.turns.setMode("text only");
      t.turns.present(screen("wash"));
      await t.timers.advance(2000);
      for (let i = 0; i < 3; i++) t.ears.trouble("other talk");
      expect([t.voice.texts(), t.rooms, t.ears.listening()]).toEqual([[], ["other talk"], false]);
    }
  });

  it("is told three times a walk at most, and again in the next walk", async () => {
    const t = table();
    const told = async (): Promise<void> => {
      for (let i = 0; i < 5; i++) {
        t.turns.present(screen(`s${i}`));
        await t.timers.advance(3000);
        t.ears.trouble("too loud");
        await t.timers.advance(3000);
      }
    };
    await told();
    expect(t.voice.texts().filter((text) => text === "Too loud.")).toHaveLength(3);
    t.turns.newWalk();
    await told();
    expect(t.voice.texts().filter((text) => text === "Too loud.")).toHaveLength(6);
  });
});

describe("the three ways of speaking", () => {
  it("never uses the voice or the ear beside a screen reader", async () => {
    const t = table();
    t.turns.setMode("screen reader");
    t.turns.present(screen("wash"));
    t.turns.again();
    t.turns.quiet(true);
    t.turns.quiet(false);
    expect(t.turns.interrupt(line("Low."))).toBe(false);
    await t.timers.advance(120_000);
    expect([t.voice.said.length, t.ears.opened]).toEqual([0, 0]);
  });

  it("speaks nothing in text only, yet hears", async () => {
    const t = table();
    t.turns.setMode("text only");
    t.turns.present(screen("wash"));
    await t.timers.advance(60_000);
    expect(t.voice.said).toEqual([]);
    expect(t.ears.listening()).toBe(true);
  });

  it("falls silent at once when another way is chosen, and says the screen when it is to speak again", async () => {
    const t = table({ byHand: true });
    t.turns.present(screen("wash"));
    t.turns.setMode("screen reader");
    expect(t.voice.speaking()).toBe(false);
    t.turns.setMode("app speaks");
    expect(t.voice.texts()).toEqual(["wash one.", "wash one."]);
  });

  it("works without an ear, and with one that may not hear", async () => {
    for (const ears of [null, new ScriptedEars("not on this device"), new ScriptedEars("not allowed")]) {
      const t = table({ ears });
      t.turns.present(screen("wash"));
      await t.timers.advance(120_000);
      expect(t.voice.said).toHaveLength(2);
      expect(t.listening).toEqual([]);
      expect(ears?.opened ?? 0).toBe(0);
    }
  });
});
