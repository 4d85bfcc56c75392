import { describe, expect, it } from "vitest";
import { spokenButtons, spokenOffers } from "#app/spoken-offers.ts";
import { type VoiceAct, voiceChange } from "#app/voice-setting.ts";
import { DEFAULT_PREFS, type Prefs } from "#devices/prefs.ts";
import { understand } from "#speech/understand.ts";
import { offers } from "#walk/offers.ts";
import { bram, bramPen, ratioCard } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

/** How often the act changes something from here, and the preferences afterwards. */
function toTheEnd(act: VoiceAct): { steps: number; prefs: Prefs; end: string } {
  let prefs: Prefs = DEFAULT_PREFS;
  for (let steps = 0; steps < 50; steps++) {
    const next = voiceChange(act, prefs);
    if ("end" in next) return { steps, prefs, end: next.end };
    prefs = { ...prefs, ...next.change };
  }
  throw new Error(`${act} has no end`);
}

describe("louder, softer, slower and faster", () => {
  it.each([
    ["louder", 5, 145, "This is the loudest."],
    ["softer", 1, 145, "This is the softest."],
    ["slower", 4, 110, "This is the slowest."],
    ["faster", 4, 190, "This is the fastest."],
  ] as const)("%s goes step by step to the end of the scale, and says where that is", (act, volume, rate, end) => {
    const went = toTheEnd(act);
    expect([went.prefs.volume, went.prefs.rate, went.end]).toEqual([volume, rate, end]);
    expect(went.steps).toBeGreaterThan(0);
  });

  it("undo one another", () => {
    const there = voiceChange("slower", { volume: 3, rate: 150 });
    expect(there).toEqual({ change: { rate: 140 } });
    expect(voiceChange("faster", { volume: 3, rate: 140 })).toEqual({ change: { rate: 150 } });
    expect(voiceChange("louder", { volume: 3, rate: 150 })).toEqual({ change: { volume: 4 } });
    expect(voiceChange("softer", { volume: 4, rate: 150 })).toEqual({ change: { volume: 3 } });
  });

  it("are heard at a step of a walk and on a small screen, each as itself", () => {
    const t = new Table([{ person: bram, card: ratioCard, pens: [bramPen] }]).send({ do: "open meal", person: "bram", meal: "breakfast" });
    for (const spoken of [
      spokenOffers(offers(t.state, t.now), t.state),
      spokenButtons({ buttons: [{ label: "Lunch", press: () => undefined }] }),
    ])
      for (const act of ["louder", "softer", "slower", "faster"]) {
        const got = understand({ text: act, alternatives: [] }, spoken.offers);
        expect(got.kind === "offer" && spoken.meant.get(got.id)).toEqual({ what: "chrome", act });
      }
  });

  it("are what the buttons of Help say, so that pressed and said are one", () => {
    const spoken = spokenButtons({ buttons: ["Louder", "Softer", "Slower", "Faster"].map((label) => ({ label, press: () => undefined })) });
    const got = understand({ text: "louder", alternatives: [] }, spoken.offers);
    expect(got.kind === "offer" && spoken.meant.get(got.id)?.what).toBe("button");
  });
});
