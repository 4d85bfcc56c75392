// An ill day and a very high reading. Sources: danger signs of sick-day leaflets (US CDC, ADA, hospital pages of the UK and Australia); never stop
// basal insulin, keep drinking (all of them); HI twice is very high and somebody is called (general practice); the card's spacing holds (design, promise 4).
import { describe, expect, it } from "vitest";
import type { DoseCard } from "#events/card.ts";
import type { Intent } from "#events/intent.ts";
import { GUARDS } from "#walk/guards.ts";
import { offers } from "#walk/offers.ts";
import { sceneKey } from "#walk/scene-key.ts";
import { dueNow } from "#words/en/kitchen.ts";
import { labelOf } from "#words/en/labels.ts";
import { sayWalk } from "#words/en/steps.ts";
import { ketoneCard, plusCard, stripCard } from "../../kit/cards.ts";
import { bring, led, me, odileAlone, odileAt, twice, walk } from "../../kit/explore/at-table.ts";
import { bandsCard, odileNight, odilePen, odile as person } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const MINUTE = 60;
const none: Intent = { do: "danger signs", any: false };
const any: Intent = { do: "danger signs", any: true };
const heard: Intent = { do: "heard ill advice" };
const agree: Intent = { do: "agree number" };
const HI: Intent = { do: "read word", word: "HI", via: "touch" };
const LO: Intent = { do: "read word", word: "LO", via: "touch" };
const lines = (t: Table) => sayWalk(t.state, t.now, GUARDS)?.lines ?? [];
const title = (t: Table) => sayWalk(t.state, t.now, GUARDS)?.title;
const doing = (t: Table) =>
  offers(t.state, t.now).flatMap((o) => (o.offer === "press" ? [o.intent.do] : [`number ${"slot" in o ? o.slot : ""}`]));
const ill = (card: Partial<DoseCard> = {}): Table => odileAlone(card).send({ do: "open mishap", person: "odile", mishap: "feeling ill" });
const reading = (t: Table, text: string): Table =>
  Number(text) > 250 || Number(text) < 80 ? twice(t, "reading when ill", text) : t.number("reading when ill", text);

const DOSE: readonly Intent["do"][] = [
  "heard dose",
  "meal is ready",
  "plate is complete",
  "usual meal",
  "button is down",
  "pick pen",
  "take spot",
];

describe("feeling ill", () => {
  it("asks about danger signs first, with the emergency number, and nothing stands before it", () => {
    for (const t of [
      ill(),
      odileAt("reading").send({ do: "report", mishap: "feeling ill" }),
      odileAt("eat").send({ do: "report", mishap: "feeling ill" }),
    ]) {
      expect(title(t)).toBe("Danger signs");
      expect(lines(t).join(" ")).toContain("911");
      expect(doing(t).slice(0, 2)).toEqual(["danger signs", "danger signs"]);
    }
  });

  it("calls the emergency number for any of them, and asks nothing more", () => {
    const t = ill();
    expect(led(t, any)).toEqual(["danger signs answered", "call raised"]);
    expect(lines(t)[0]).toBe("Call 911 now.");
    expect(doing(t)).not.toContain("heard ill advice");
    t.send({ do: "leave" });
    expect(dueNow(t.state, t.now)[0]).toContain("Odile may be in danger.");
    expect(doing(t)).not.toContain("set aside");
    t.send({ do: "turn to", person: "odile" }, { do: "finish ill" });
    expect(me(t).walk).toBeNull();
  });

  it("offers the danger signs at every later screen", () => {
    const t = reading(ill(ketoneCard).send(none), "180");
    for (const next of [null, { do: "no ketone strips" } as const, heard, heard]) {
      if (next) t.send(next);
      expect(doing(t)).toContain("danger signs");
    }
    expect(led(t, any)).toContain("call raised");
  });

  it("takes five minutes of silence at that question for a sign, and silence later for none", () => {
    const t = ill();
    t.pass(5 * MINUTE - 1);
    expect(led(t, { do: "pass time" })).toEqual([]);
    t.pass(1);
    expect(led(t, { do: "pass time" })).toEqual(["call raised"]);
    expect(led(t, { do: "pass time" })).toEqual([]);
    const later = ill().send(none);
    later.pass(60 * MINUTE);
    expect(led(later, { do: "pass time" })).toEqual([]);
    const left = ill().send({ do: "leave" });
    left.pass(60 * MINUTE);
    expect(led(left, { do: "pass time" })).toEqual([]);
  });

  it("says one rule a screen: long-acting insulin goes on first, then the card's words, then when to call", () => {
    const t = ill({
      ...ketoneCard,
      advice: { ...ketoneCard.advice, ill: "Eat toast." },
      ketones: stripCard.ketones ?? ketoneCard.ketones,
    }).send(none);
    reading(t, "180");
    const said: string[] = [];
    for (let i = 0; i < 5; i++) {
      said.push(lines(t)[0] ?? "");
      t.send(heard);
    }
    expect(said).toEqual([
      "Keep taking the long-acting insulin.",
      "Your card says: Eat toast.",
      "Drink a glass of water each hour.",
      "Measure every 4 hours.",
      "Do not exercise.",
    ]);
    expect(lines(t)).toContain("Your card says: Call if food comes up for 4 hours.");
    expect(lines(t).at(-1)).toBe("It gets worse? Call 911.");
    expect(led(t, { do: "finish ill" })).toEqual(["ill ended", "walk ended"]);
  });

  it("by a blank card says only what leaflets agree on, and that the clinic is called now", () => {
    const t = reading(ill().send(none), "180");
    expect(lines(t)[0]).toBe("Keep taking the long-acting insulin.");
    t.send(heard);
    expect(lines(t)).toEqual(["Drink water often.", "Measure again in 4 hours.", "Cannot eat, and not high? Sip something sweet."]);
    t.send(heard);
    expect(lines(t)).toEqual([
      "Your card has no words for ill days.",
      "Your card has no words on ketones.",
      "Inject no more than your card says.",
      "Call Harbour Clinic: 555 0142 now.",
      "It gets worse? Call 911.",
    ]);
  });

  it("by a blank card names nothing sweet at a high reading, and says to measure again after a low that began it", () => {
    const high = ill().send(none, HI, HI, heard, heard);
    expect(lines(high)).toEqual(["Drink water often.", "Measure again in 4 hours."]);
    const low = reading(ill().send(none), "60").send({ do: "took sugar", food: "glucose-tablets", grams: 16 });
    low.pass(15 * MINUTE);
    low.number("recheck after low", "96").send(heard);
    expect(lines(low)).toContain("Measure again in 4 hours.");
  });

  it("says to go on with long-acting insulin on every card, whatever else stands on it", () => {
    for (const card of [{}, ketoneCard, stripCard, plusCard]) {
      const t = ill(card).send(none, { do: "no meter" });
      for (let i = 0; i < 8 && !lines(t).includes("Keep taking the long-acting insulin."); i++)
        t.send(doing(t).includes("heard ill advice") ? heard : { do: "no ketone strips" });
      expect(lines(t)).toContain("Keep taking the long-acting insulin.");
    }
  });

  it("a low reading is treated as a low first, and the ill day goes on after it", () => {
    const t = reading(ill().send(none), "62");
    expect(t.step()).toBe("low");
    t.send({ do: "took sugar", food: "glucose-tablets", grams: 16 });
    t.pass(15 * MINUTE);
    t.number("recheck after low", "110");
    expect(title(t)).toBe("When you are ill: 1 of 2");
    expect(ill().send(none, LO).step()).toBe("low");
  });

  it("told again asks about danger signs again, and keeps what was measured", () => {
    const t = reading(ill(ketoneCard).send(none), "180").send({ do: "report", mishap: "feeling ill" });
    expect(title(t)).toBe("Danger signs");
    t.send(none);
    expect(title(t)).toBe("Test for ketones");
  });

  it("is a new screen at each question, and so is said", () => {
    const t = ill(ketoneCard);
    const keys = new Set([sceneKey(t.state, t.now)]);
    t.send(none);
    keys.add(sceneKey(t.state, t.now));
    reading(t, "180");
    keys.add(sceneKey(t.state, t.now));
    t.number("ketones", "0.7");
    keys.add(sceneKey(t.state, t.now));
    t.send(heard);
    keys.add(sceneKey(t.state, t.now));
    t.send(heard);
    keys.add(sceneKey(t.state, t.now));
    expect(keys.size).toBe(6);
  });

  it("can be left at any question, and is offered again where it stood", () => {
    const t = reading(ill(ketoneCard).send(none), "180").send({ do: "leave" });
    expect(dueNow(t.state, t.now).join(" ")).toContain("an ill day");
    expect(title(t.send({ do: "turn to", person: "odile" }))).toBe("Test for ketones");
  });

  it("survives a start of the app", () => {
    const t = reading(ill(ketoneCard).send(none), "180");
    t.restart();
    expect(title(t)).toBe("Test for ketones");
    t.number("ketones", "1.5");
    expect(lines(t)).toContain("Call Harbour Clinic: 555 0142 now.");
  });
});

describe("ketones", () => {
  it("are read back before they are used, by number and by the strip's own word", () => {
    const blood = reading(ill(ketoneCard).send(none), "180").send({
      do: "give number",
      slot: "ketones",
      text: "1.5",
      via: "voice",
      helper: null,
    });
    expect(blood.types()).not.toContain("ketones read");
    expect(lines(blood)).toContain("1.5 millimoles per litre.");
    blood.send(agree);
    expect(walk(blood).ill?.ketones).toBe(1.5);

    const strip = reading(ill(plusCard).send(none), "180").send({ do: "read strip", level: 3 });
    expect(strip.types()).not.toContain("ketones read");
    expect(lines(strip)).toEqual(["The strip shows: 2 plus.", "Right?"]);
    expect(labelOf(agree, strip.state).shown).toBe("Yes, 2 plus");
    strip.send({ do: "change number" });
    expect(walk(strip).ill?.ketones).toBeNull();
    strip.send({ do: "read strip", level: 2 }, agree);
    expect(walk(strip).ill?.ketones).toBe(2);
  });

  it("refuses a number without its point", () => {
    const t = reading(ill(ketoneCard).send(none), "180");
    expect(t.try({ do: "give number", slot: "ketones", text: "15", via: "touch", helper: null }).refusal).toMatchObject({
      no: "ketones",
      why: "too high",
    });
  });

  it.each([
    ["0.5", "Your card says: No ketones. Measure again in 4 hours.", null],
    ["0.6", "Your card says: Drink a glass of water each hour.", null],
    ["1.4", "Your card says: Drink a glass of water each hour.", null],
    ["1.5", "Your card says: This needs us today.", "Call Harbour Clinic: 555 0142 now."],
    ["2.9", "Your card says: This needs us today.", "Call Harbour Clinic: 555 0142 now."],
    ["3", "Your card says: call 911.", "Call 911 now."],
  ])("at %s say the card's own line and whom it calls", (text, says, call) => {
    const t = reading(ill(ketoneCard).send(none), "180").number("ketones", text);
    expect(lines(t)).toContain(says);
    if (call === null) expect(lines(t).join(" ")).not.toContain("Call");
    else expect(lines(t)).toContain(call);
  });

  it("whose line is the emergency number raise the call as a danger sign does, and leaving keeps it", () => {
    const t = reading(ill(ketoneCard).send(none), "180").send({
      do: "give number",
      slot: "ketones",
      text: "3",
      via: "touch",
      helper: null,
    });
    expect(led(t, agree)).toEqual(["ketones read", "call raised"]);
    expect(lines(t)[0]).toBe("Call 911 now.");
    expect(doing(t)).not.toContain("heard ill advice");
    t.send({ do: "leave" });
    expect(dueNow(t.state, t.now)[0]).toContain("Odile may be in danger.");
  });

  it("from 3 on raise the call where the card calls nobody, and show the emergency number whatever the line says", () => {
    const by = (call: "no" | "clinic", text: string, from = 0) =>
      reading(
        ill({ ...ketoneCard, ketones: { test: "blood", from: 250, whenIll: true, lines: [{ from, says: "Drink water.", call }] } }).send(
          none,
        ),
        "180",
      ).number("ketones", text);
    expect(walk(by("no", "2.9")).ill?.callRaised).toBe(false);
    expect(lines(by("no", "3"))).toEqual(expect.arrayContaining(["Call 911 now.", "Your card says: Drink water."]));
    expect(walk(by("no", "3", 6)).ill?.callRaised).toBe(true);
    const clinic = by("clinic", "3");
    expect(walk(clinic).ill?.callRaised).toBe(false);
    expect(lines(clinic)).toContain("Call Harbour Clinic: 555 0142 now.");
    expect(lines(clinic)).toContain("It gets worse, or no answer? Call 911.");
  });

  it("of a strip call the clinic now from moderate on, where the card has no words", () => {
    const silent: DoseCard = {
      ...plusCard,
      ketones: { test: "urine plus signs", from: null, whenIll: true, lines: [{ from: 0, says: null, call: "no" }] },
    };
    const at = (level: number) => reading(ill(silent).send(none), "180").send({ do: "read strip", level }, agree);
    for (const level of [3, 4, 5]) expect(lines(at(level))).toContain("Call Harbour Clinic: 555 0142 now.");
    expect(lines(at(2))).toContain("Call Harbour Clinic: 555 0142.");
  });

  it("below the card's first line, and without a strip, the clinic is called", () => {
    const below = reading(ill(plusCard).send(none), "180").send({ do: "read strip", level: 0 }, agree);
    expect(lines(below)).toContain("Call Harbour Clinic: 555 0142.");
    const without = reading(ill(ketoneCard).send(none), "180").send({ do: "no ketone strips" });
    expect(lines(without)).toContain("Call Harbour Clinic: 555 0142. Ask what to do.");
  });

  it("are asked for when the card says so: when ill at any reading, from a reading, or both", () => {
    const asked = (card: DoseCard, text: string) => title(reading(ill(card).send(none), text)) === "Test for ketones";
    expect([asked(ketoneCard, "120"), asked(plusCard, "120"), asked(stripCard, "120")]).toEqual([true, true, false]);
    expect([asked(stripCard, "239"), asked(stripCard, "240")]).toEqual([false, true]);
    expect(title(ill(ketoneCard).send(none, { do: "no meter" }))).toBe("Test for ketones");
    expect(title(ill(stripCard).send(none, { do: "no meter" }))).toBe("When you are ill: 1 of 2");
  });
});

describe("a high reading", () => {
  it("asks for ketones from the card's number on, in a meal walk, and goes on with the meal after the card's line", () => {
    const t = odileAt("reading", ketoneCard).number("reading", "250");
    expect(title(t)).toBe("Test for ketones");
    t.number("ketones", "0.2").send(heard);
    expect(t.step()).toBe("plate");
    expect(odileAt("reading", ketoneCard).number("reading", "249").step()).toBe("plate");
  });

  it("says the card's words for a high reading once, before the test", () => {
    const t = twice(odileAt("reading", ketoneCard), "reading", "320");
    expect(lines(t)).toContain("Your card says: Drink water. Call us if it stays this high for 4 hours.");
    t.send(heard).number("ketones", "0.2").send(heard);
    expect(t.step()).toBe("plate");
    expect(doing(t)).not.toContain("heard high advice");
  });

  it("asks for none where the card says nothing of them, and offers the ill day", () => {
    const t = twice(odileAt("reading"), "reading", "320");
    expect(t.step()).toBe("plate");
    expect(lines(t)).toContain("Do you feel ill? Press I feel ill.");
    expect(title(t.send({ do: "report", mishap: "feeling ill" }))).toBe("Danger signs");
  });

  it("from which somebody feels ill becomes an ill day, and keeps its ketones", () => {
    const t = odileAt("reading", ketoneCard).number("reading", "250").number("ketones", "0.2");
    t.send({ do: "report", mishap: "feeling ill" }, none);
    expect(title(t)).toBe("Ketones");
    t.send(heard);
    expect(title(t)).toBe("When you are ill: 1 of 4");
  });

  it("HI once is tested again; HI twice is called for and is never a number", () => {
    const t = odileAt("reading").send(HI);
    expect(t.step()).toBe("reading");
    t.send({ do: "change number" });
    expect(led(t, HI)).toContain("ill began");
    expect(lines(t)).toContain("Call Harbour Clinic: 555 0142 now.");
    t.send(heard, { do: "finish ill" });
    expect(t.step()).toBe("reading");
    expect(t.types()).not.toContain("dose told");

    const kitchen = ill().send(none, HI);
    expect(title(kitchen)).toBe("The meter shows HI");
    expect(doing(kitchen)).not.toContain("heard ill advice");
    kitchen.send(HI);
    expect(lines(kitchen)).toContain("HI again means very high.");
  });

  it("is forgotten as a first HI once a number came in between", () => {
    const t = ill().send(none, HI);
    reading(t, "200");
    expect(walk(t).his).toBe(0);
  });
});

describe("no dose comes of it", () => {
  it("tells none and leads to none, at any question", () => {
    const t = reading(ill(ketoneCard).send(none), "320");
    for (const intent of [
      null,
      heard,
      { do: "give number", slot: "ketones", text: "2", via: "touch", helper: null },
      agree,
      heard,
      heard,
    ] as const) {
      if (intent) t.send(intent);
      expect(doing(t).filter((d) => DOSE.some((dose) => dose === d))).toEqual([]);
      expect(t.types()).not.toContain("dose told");
    }
  });

  // Mistake 25: glucose is still high, and the correction is taken again.
  it("no second correction inside the card's spacing, although the reading is still high", () => {
    const t = odileAlone({
      ...bandsCard,
      ketones: ketoneCard.ketones ?? stripCard.ketones,
      windowMinutes: 60,
      spacingMinutes: 240,
      high: { value: 240, advice: "Drink water." },
    });
    const meal = (name: "breakfast" | "lunch") => {
      t.send({ do: "open meal", person: "odile", meal: name }, { do: "already washed" })
        .number("reading", "240")
        .send({ do: "heard high advice" });
      t.send({ do: "exercise", hard: false }, { do: "meal is ready" });
      return walk(t).told;
    };
    expect(meal("breakfast")).toMatchObject({ units: 10 });
    t.send({ do: "heard dose" });
    bring(t, "done", "10").send({ do: "finish" });
    t.pass(2 * 60 * MINUTE);
    t.send({ do: "open mishap", person: "odile", mishap: "feeling ill" }, none);
    t.number("reading when ill", "240");
    expect(lines(t)).toContain("Inject no more than your card says.");
    t.send(heard).number("ketones", "0.2").send(heard, heard, heard, { do: "finish ill" });
    expect(meal("breakfast")).toMatchObject({ units: 4, correction: 0 });
  });

  it("a dose that was told before somebody felt ill is asked for again with the new reading", () => {
    const t = odileAlone(bandsCard);
    bring(t, "reading").number("reading", "200").send({ do: "exercise", hard: false }, { do: "meal is ready" }, { do: "heard dose" });
    expect(walk(t).told).toMatchObject({ units: 8 });
    t.send({ do: "report", mishap: "feeling ill" }, none);
    t.number("reading when ill", "130").send(heard, heard, { do: "finish ill" });
    expect(t.step()).toBe("card");
    expect(walk(t).told).toMatchObject({ units: 4 });
    expect(walk(t).doseHeard).toBe(false);
  });

  it("background insulin goes on after it", () => {
    const t = new Table([
      {
        person,
        card: {
          ...ketoneCard,
          background: [
            {
              insulin: { id: "glargine-100", name: "insulin glargine", unitsPerMl: 100, kind: "long-acting" },
              units: ketoneCard.largestDose ?? (0 as never),
              at: "12:00",
              windowMinutes: 600,
            },
          ],
        },
        pens: [odilePen, odileNight],
      },
    ]);
    const open = offers(t.state, t.now).find((o) => o.offer === "press" && o.intent.do === "open background");
    if (open?.offer !== "press") throw new Error("no background walk on offer");
    t.send(open.intent);
    while (t.step() !== "wash" && t.step() !== "reading") t.send({ do: "answer taken", answer: "no" });
    if (t.step() === "wash") t.send({ do: "already washed" });
    t.number("reading", "250").number("ketones", "0.2").send(heard);
    expect(t.step()).toBe("card");
  });
});
