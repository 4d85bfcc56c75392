import { describe, expect, it } from "vitest";
import { speakable } from "#speech/voice/speakable.ts";

describe("what the voice is given", () => {
  it.each([
    ["Turn the dial to 15 units.", "Turn the dial to fifteen units."],
    ["Your reading is 180 mg/dL.", "Your reading is one hundred eighty milligrams per deciliter."],
    ["5.5 mmol/L.", "five point five millimoles per litre."],
    ["0.5 units.", "zero point five units."],
    ["At 12:05 in the afternoon.", "At twelve oh five in the afternoon."],
    ["At 7:00 in the morning.", "At seven o'clock in the morning."],
    ["Call 911.", "Call nine, one, one."],
    ["Emergency: 112.", "Emergency: one, one, two."],
    ["Harbour Clinic: 555 0142.", "Harbour Clinic: five, five, five, zero, one, four, two."],
    ["Press 5 times.", "Press five times."],
    ["Batch 007.", "Batch zero, zero, seven."],
  ])("%s", (shown, said) => expect(speakable(shown, "en-US")).toBe(said));

  it("says British numbers with and", () => expect(speakable("112 grams.", "en-GB")).toBe("one hundred and twelve grams."));

  it("leaves no figure to the engine, for every dose and reading", () => {
    for (let n = 0; n <= 600; n++) expect(speakable(`Dial ${n} units, at ${n / 10}.`, "en-US")).not.toMatch(/\d/);
  });
});
