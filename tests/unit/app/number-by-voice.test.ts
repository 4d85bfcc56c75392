import { describe, expect, it } from "vitest";
import { setUp } from "../../kit/fresh-house.ts";
import { tableByVoice } from "./table-by-voice.ts";

/** At the question for the reading. */
const atReading = () =>
  tableByVoice(setUp, [
    { do: "open meal", person: "odile", meal: "breakfast" },
    { do: "answer taken", answer: "no" },
    { do: "already washed" },
  ]);
type AtTable = Awaited<ReturnType<typeof atReading>>;

const readBack = (units: string, digits: string) => [`${units} milligrams per deciliter.`, digits, "Right?"];

describe("a number said aloud", () => {
  it("is read back, and asked for digit by digit after a no, and read back again", async () => {
    const t = await atReading();
    expect(await t.say("one hundred twelve")).toEqual(readBack("112", "One, one, two."));
    expect(await t.say("no")).toEqual(["Say the first digit."]);
    expect(await t.say("two")).toEqual(["Two.", "Next digit, or done?"]);
    expect(await t.say("one")).toEqual(["Two, one.", "Next digit, or done?"]);
    expect(t.walk()?.draft).toBeNull();
    expect(await t.say("two")).toEqual(readBack("212", "Two, one, two."));
    expect(t.walk()?.reading).toBeNull();
    await t.say("yes");
    expect(t.walk()?.draft?.first ?? String(t.walk()?.reading?.glucose?.value)).toBe("212");
  });

  it("ends on the pad where the digits did not help, and never before a number stood there to be agreed to", async () => {
    const t = await atReading();
    await t.say("one hundred twelve");
    await t.say("no");
    for (const digit of ["two", "one", "two"]) await t.say(digit);
    expect(await t.say("no")).toEqual(["Press the number, then OK."]);
    expect(t.desk.askedNumber.padFor()).toBe("reading");
    expect(t.walk()?.reading).toBeNull();
    // The ear stays open: nobody is locked out of saying it after all.
    expect(await t.say("one hundred thirty two")).toEqual(readBack("132", "One, three, two."));
  });

  it("may be short: done ends it", async () => {
    const t = await atReading();
    await t.say("one hundred twelve");
    await t.say("no");
    await t.say("four");
    await t.say("five");
    expect(await t.say("done")).toEqual(readBack("45", "Four, five."));
  });

  it("is whole by itself once nothing can follow", async () => {
    const t = await atReading();
    await t.say("one hundred twelve");
    await t.say("no");
    await t.say("nine");
    expect(await t.say("eight")).toEqual(readBack("98", "Nine, eight."));
  });

  it("is begun anew, or turned back to the whole, where somebody wants that", async () => {
    const t = await atReading();
    await t.say("one hundred twelve");
    await t.say("no");
    await t.say("nine");
    expect(await t.say("start over")).toEqual(["Say the first digit."]);
    t.desk.asked.value?.back();
    await t.settle();
    expect(t.desk.asked.value).toBeNull();
    expect(await t.say("one hundred eleven")).toEqual(readBack("111", "One, one, one."));
  });

  it("is not asked for digit by digit where it was pressed and turned down: no ear was wrong", async () => {
    const t = await atReading();
    await t.desk.send({ do: "give number", slot: "reading", text: "112", via: "touch", helper: null });
    await t.settle();
    await t.say("no");
    expect(t.desk.asked.value).toBeNull();
    expect(t.desk.askedNumber.padFor()).toBeNull();
  });
});

describe("a teen or a ten", () => {
  it("is asked for by its digits, whichever was heard, and taken once it is said so", async () => {
    for (const [heard, answer, units, digits] of [
      ["one hundred thirteen", "one one three", "113", "One, one, three."],
      ["one hundred thirty", "one one three", "113", "One, one, three."],
    ] as const) {
      const t = await atReading();
      const [asked] = await t.say(heard);
      expect(asked).toBe(heard.endsWith("teen") ? "One one three, or one three zero?" : "One three zero, or one one three?");
      expect(t.walk()?.draft).toBeNull();
      expect(await t.say(answer)).toEqual(readBack(units, digits));
    }
  });

  it("is not settled by the word that could not be told apart: then its digits are asked for", async () => {
    const t = await atReading();
    await t.say("one hundred thirteen");
    expect(await t.say("one hundred thirteen")).toEqual(["Say the first digit."]);
  });

  it("may be neither", async () => {
    for (const answer of ["neither", "no"]) {
      const t = await atReading();
      await t.say("one hundred thirteen");
      expect(await t.say(answer)).toEqual(["Say the first digit."]);
    }
  });

  it("is taken at once where it was said by its digits", async () => {
    const t = await atReading();
    expect(await t.say("one one three")).toEqual(readBack("113", "One, one, three."));
  });

  it("is not the question for any other number between the two", async () => {
    const t = await atReading();
    await t.say("one hundred thirteen");
    const said = await t.say("one hundred twenty");
    expect(said).not.toContain("Right?");
    expect(t.walk()?.draft).toBeNull();
  });
});

describe("an ear that would not swear to it", () => {
  it("has the number said once more, and at the second doubt its digits", async () => {
    const t = await atReading();
    expect(await t.mumble("one hundred twelve")).toEqual(["Say the number once more."]);
    expect(t.walk()?.draft).toBeNull();
    expect(await t.mumble("one hundred sixty two")).toEqual(["Say the first digit."]);
    expect(await t.mumble("five")).toEqual(["Say that digit once more."]);
    expect(t.desk.asked.value?.soFar).toBe("");
    expect(await t.mumble("nine")).toEqual(["Press the number, then OK."]);
  });

  it("asks which of its two guesses it was", async () => {
    const t = await atReading();
    expect(await t.mumble("one hundred twelve", "two hundred twelve")).toEqual(["One one two, or two one two?"]);
    expect(await t.say("two one two")).toEqual(readBack("212", "Two, one, two."));
  });

  it("takes one of its guesses said whole, where nothing sounds like it, and no third number", async () => {
    const t = await atReading();
    await t.mumble("one hundred twelve", "two hundred twelve");
    expect(await t.say("one hundred sixty two")).not.toContain("Right?");
    expect(await t.say("two hundred twelve")).toEqual(readBack("212", "Two, one, two."));
  });

  it("never has a number agreed to, whatever it mumbles", async () => {
    for (const yes of ["yes", "that is right"]) {
      const t = await atReading();
      for (let i = 0; i < 2; i++) await t.mumble("one hundred twelve");
      for (let i = 0; i < 6; i++) await t.mumble(yes).catch(() => []);
      expect([t.walk()?.draft?.text, t.walk()?.reading]).toEqual(["112", null]);
    }
  });
});

describe("the same answer twice in doubt", () => {
  it("is read back, and counts only once it is agreed to", async () => {
    const t = await atReading();
    await t.mumble("one hundred twelve");
    expect(await t.mumble("one one two")).toEqual(readBack("112", "One, one, two."));
    expect(t.walk()?.reading).toBeNull();
    await t.say("yes");
    expect(String(t.walk()?.reading?.glucose?.value ?? t.walk()?.draft?.first)).toBe("112");
  });

  it("is read back, too, where the second had another guess beside it", async () => {
    const t = await atReading();
    await t.mumble("one hundred twelve");
    expect(await t.mumble("one hundred twelve", "two hundred twelve")).toEqual(readBack("112", "One, one, two."));
  });

  it("counts where the second was the answer to which of two, and not where that was the other one", async () => {
    const t = await atReading();
    await t.mumble("one hundred twelve", "two hundred twelve");
    expect(await t.mumble("one one two", "two one two")).toEqual(readBack("112", "One, one, two."));
    expect(t.walk()?.reading).toBeNull();
    const other = await atReading();
    await other.mumble("one hundred twelve", "two hundred twelve");
    expect(await other.mumble("two one two", "one one two")).toEqual(["Say the first digit."]);
  });

  it("settles no teen and its ten at the question which of two either, unless it was spelled", async () => {
    const t = await atReading();
    await t.mumble("one fifteen", "one fifty");
    expect(await t.mumble("one fifteen", "one fifty")).toEqual(["Say the first digit."]);
    const spelled = await atReading();
    await spelled.mumble("one fifteen", "one fifty");
    expect(await spelled.mumble("one one five", "one five zero")).toEqual(readBack("115", "One, one, five."));
  });

  it("counts for a digit, whose number is read back", async () => {
    const t = await atReading();
    await t.say("one hundred twelve");
    await t.say("no");
    await t.mumble("nine");
    expect(await t.mumble("nine")).toEqual(["Nine.", "Next digit, or done?"]);
    await t.mumble("eight");
    expect(await t.mumble("eight")).toEqual(readBack("98", "Nine, eight."));
  });

  const BETWEEN: readonly [string, (t: AtTable) => unknown][] = [
    ["another number came between", (t) => t.mumble("one hundred sixty two")],
    ["somebody touched the glass between", (t) => t.desk.talk.forget()],
    ["the first was too long ago", (t) => t.later(31)],
    ["something else was answered between", (t) => t.say("louder")],
  ];
  it.each(BETWEEN)("is no second time where %s", async (_, between) => {
    const t = await atReading();
    await t.mumble("one hundred twelve");
    await between(t);
    await t.settle();
    await t.mumble("one hundred twelve").catch(() => []);
    expect(t.walk()?.draft).toBeNull();
  });

  it("never settles a teen and its ten", async () => {
    const t = await atReading();
    await t.mumble("one hundred thirteen");
    expect(await t.mumble("one hundred thirteen")).toEqual(["One one three, or one three zero?"]);
    expect(t.walk()?.draft).toBeNull();
    // By its digits it sounds like no other.
    const other = await atReading();
    await other.mumble("one one three");
    expect(await other.mumble("one one three")).toEqual(readBack("113", "One, one, three."));
  });

  it("takes a read-back number out, since a no takes nothing in", async () => {
    const t = await atReading();
    await t.say("one hundred twelve");
    await t.mumble("no");
    expect(t.walk()?.draft?.text).toBe("112");
    await t.mumble("change it");
    expect(t.walk()?.draft).toBeNull();
  });

  it("presses no button that is taken with nothing asked after it", async () => {
    const t = await tableByVoice(setUp, [{ do: "open meal", person: "odile", meal: "breakfast" }]);
    const before = t.desk.state.value;
    for (let i = 0; i < 2; i++) await t.mumble("no not yet");
    expect(t.desk.state.value).toBe(before);
  });

  it("opens help, which takes nothing", async () => {
    const t = await atReading();
    await t.mumble("help");
    expect(t.desk.overlay.value).toBeNull();
    await t.mumble("help me");
    expect(t.desk.overlay.value).toBe("help");
  });
});

const silent = async (t: AtTable) => {
  for (let i = 0; i < 6; i++) await t.settle();
};

describe("the small screens for a number", () => {
  it("ask again twice at most, and then wait by touch without limit", async () => {
    const t = await atReading();
    await t.say("one hundred twelve");
    await t.say("no");
    const from = t.voice.said.length;
    await silent(t);
    expect(
      t.voice
        .texts()
        .slice(from)
        .filter((text) => text === "Say the first digit."),
    ).toHaveLength(1);
    expect(t.desk.asked.value?.buttons.map((b) => b.label)).toEqual(["Number keys"]);
  });

  it("go with the step they were for", async () => {
    const t = await atReading();
    await t.say("one hundred twelve");
    await t.say("no");
    await t.desk.send({ do: "read word", word: "HI", via: "touch" });
    await t.settle();
    expect(t.desk.asked.value).toBeNull();
  });
});
