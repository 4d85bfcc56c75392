import { describe, expect, it } from "vitest";
import { TODAY } from "#words/en/due.ts";
import { FIXED, PAD_BUTTON } from "#words/en/fixed.ts";
import { HELPER } from "#words/en/helper.ts";
import { WATCH } from "#words/en/insulin-watch.ts";
import { PRACTICE } from "#words/en/practice.ts";
import { REMINDER } from "#words/en/reminders.ts";
import { bench } from "./kit/bench.ts";
import { finger, named } from "./kit/hands.ts";
import { answer, LUNCH, type Meal, openMeal, STOPS, type Stop, walkMeal } from "./kit/meal.ts";
import { screenFaults } from "./kit/screen-faults.ts";
import { LANDSCAPE, PORTRAIT, type Tablet } from "./kit/tablet.ts";

const open = bench();
const HENK: Meal = { person: "henk", meal: "lunch", reading: "6.4", plate: { grams: "40" } };

const press = (t: Tablet, name: string) => finger(t).press({ shown: name, said: [] });

/** A busy machine may be looked at a moment before it has laid its screen out: a fault is what lasts for a second and a half. */
async function lasting(t: Tablet, look: () => Promise<string[]>): Promise<string[]> {
  let faults = await look();
  for (let again = 0; again < 5 && faults.length > 0; again++) {
    await t.page.waitForTimeout(300);
    faults = await look();
  }
  return faults;
}

/** Screen by screen, what is wrong with it: an empty record is what is hoped for. */
class Faults {
  readonly found: Record<string, string[]> = {};

  async look(t: Tablet, screen: string): Promise<void> {
    const faults = await lasting(t, () => screenFaults(t));
    if (faults.length > 0) this.found[screen] = faults;
  }
}

/** Sentences of which a part stands on this page and a part on another: half of one can say the opposite. */
const cutSentences = (t: Tablet): Promise<string[]> =>
  t.page.evaluate(() => {
    const view = document.querySelector(".pager[data-fit=pages] .pager-view")?.getBoundingClientRect();
    if (!view) return [];
    return [...document.querySelectorAll(".pager .caption:not([data-off])")].flatMap((sentence) => {
      const letters = document.createRange();
      letters.selectNodeContents(sentence);
      const lines = [...letters.getClientRects()];
      const top = Math.min(...lines.map((line) => line.top));
      const bottom = Math.max(...lines.map((line) => line.bottom));
      return top < view.top - 4 || bottom > view.bottom + 4 ? [`"${sentence.textContent}" is cut between two pages`] : [];
    });
  });

/** The screen in every size of letters, in both themes and however the tablet lies; it is left in small letters, light and landscape. */
async function everyWay(t: Tablet, faults: Faults, screen: string): Promise<void> {
  const looks = [1, 1.4, 2].flatMap((size) => [[size, LANDSCAPE] as const, [size, PORTRAIT] as const]);
  for (const theme of ["dark", "light"]) {
    for (const [size, viewport] of looks.toReversed()) {
      await t.page.setViewportSize(viewport);
      await t.page.evaluate(
        ([k, shade]) => {
          const { dataset, style } = document.documentElement;
          Object.assign(dataset, { size: k, theme: shade });
          style.setProperty("--k", k);
        },
        [String(size), theme] as const,
      );
      const name = `${screen}, size ${size}, ${viewport === LANDSCAPE ? "landscape" : "portrait"}, ${theme}`;
      await faults.look(t, name);
      const cut = await lasting(t, () => cutSentences(t));
      if (cut.length > 0) faults.found[`${name}, pages`] = cut;
    }
  }
}

/** Answers until just before the next stop. */
const goOn = (t: Tablet, stop: Stop, meal: Meal = LUNCH) => walkMeal(t, finger(t), meal, STOPS[STOPS.indexOf(stop) + 1], stop);

describe("every screen of the person", () => {
  it("keeps the rules and the sizes around the walk", async () => {
    const t = await open();
    const faults = new Faults();
    await faults.look(t, "kitchen");
    await press(t, FIXED.help);
    await faults.look(t, "help");
    await press(t, FIXED.voiceMode);
    await faults.look(t, "who speaks");
    await press(t, FIXED.back);
    await press(t, FIXED.about);
    await faults.look(t, "about");
    await press(t, FIXED.back);
    await press(t, FIXED.close);
    await press(t, FIXED.wrong);
    await faults.look(t, "something is wrong");
    await press(t, FIXED.back);
    await press(t, FIXED.didI);
    await faults.look(t, "who");
    await press(t, "● Marta");
    await faults.look(t, "did I take it");
    await press(t, FIXED.later);
    await faults.look(t, "how many units");
    // Each Back leads to where the screen was opened: the answer, who it is, the kitchen.
    for (let backs = 0; backs < 3; backs++) await press(t, FIXED.back);
    await press(t, FIXED.meal);
    await press(t, "● Marta");
    await faults.look(t, "which meal");
    expect(faults.found).toEqual({});
  });

  it("keeps the rules and the sizes on every step of a meal walk", async () => {
    const t = await open();
    const faults = new Faults();
    await openMeal(t, finger(t), LUNCH);
    for (const stop of STOPS) {
      const seq = t.lastSeq;
      await faults.look(t, stop);
      if (stop === "reading" || stop === "dial") {
        await press(t, PAD_BUTTON[stop]);
        await faults.look(t, `${stop} pad`);
        await press(t, FIXED.ok);
        await t.stored("nothing typed");
        await faults.look(t, `${stop} pad, refused`);
        await press(t, FIXED.back);
      }
      await goOn(t, stop);
      // Not every stop asks: what was not answered was the same screen.
      if (t.lastSeq === seq && stop !== "hold") delete faults.found[stop];
    }
    expect(faults.found).toEqual({});
  });

  it("keeps the rules and the sizes on the plate, in a low and after a mishap", async () => {
    const t = await open();
    const faults = new Faults();
    await walkMeal(t, finger(t), HENK, "plate");
    await faults.look(t, "plate");
    await walkMeal(t, finger(t), HENK, "card", "plate");
    await faults.look(t, "card of a ratio");
    await walkMeal(t, finger(t), HENK, "window", "card");
    await press(t, FIXED.wrong);
    await faults.look(t, "what is wrong, at the needle");
    await press(t, FIXED.back);
    await walkMeal(t, finger(t), HENK, "eat", "window");
    await t.pass(16 * 60);
    await faults.look(t, "loud bell");
    await answer(t, finger(t), { do: "cannot eat" });
    await faults.look(t, "sugar");
    expect(faults.found).toEqual({});
  });

  it("keeps the rules and the sizes on an ill day, in the largest letters, however the tablet lies", async () => {
    const t = await open({ only: "marta", prefs: { k: 2 } });
    const faults = new Faults();
    // One way each in turn: all of them in both were looked at once, and take twice as long.
    let turned = false;
    const look = async (screen: string) => {
      turned = !turned;
      await t.page.setViewportSize(turned ? PORTRAIT : LANDSCAPE);
      await faults.look(t, screen);
      const cut = await cutSentences(t);
      if (cut.length > 0) faults.found[`${screen}, pages`] = cut;
    };
    const then = async (name: string, screen: string) => {
      await press(t, name);
      await t.stored(screen);
      await look(screen);
    };
    await then(FIXED.ill, "danger signs");
    await then("None of these", "the reading");
    await finger(t).number(PAD_BUTTON["reading when ill"], "320");
    await t.stored("320");
    await press(t, "Yes, 320");
    await t.stored("its digits");
    await finger(t).number(PAD_BUTTON["reading when ill"], "320");
    await t.stored("320 again");
    await look("the card's words for a high reading");
    await then("Go on", "the strip");
    await then("Moderate", "the strip, read back");
    await then("Yes, Moderate", "the card's words for these ketones");
    await then("Go on", "a sick-day rule");
    await then("It gets worse", "the call");
    expect(faults.found).toEqual({});
  });

  it("keeps the rules and the sizes on what is due, a reminder, and the page for the helper", async () => {
    const t = await open();
    const faults = new Faults();
    await press(t, TODAY.title);
    await faults.look(t, "is the clock right");
    await press(t, TODAY.right);
    await t.stored("the clock");
    await faults.look(t, "today");
    await press(t, FIXED.ok);
    // Marta's lunch ends at half past two.
    expect(await t.tones()).toEqual([]);
    await t.pass(111 * 60);
    await t.stored("the reminder");
    await t.run(2000);
    const rung = await t.tones();
    expect(new Set(rung.map((hz) => Math.round(hz)))).toContain(523);
    await t.run(10_000);
    expect(await t.tones()).toEqual(rung);
    await faults.look(t, "kitchen, reminded");
    await press(t, REMINDER.meal("lunch"));
    await press(t, "● Marta");
    await faults.look(t, "reminder");
    await press(t, "Eaten elsewhere");
    expect((await t.stored("the answer")).at(-1)).toMatchObject({ event: { type: "reminder answered", answer: "eaten elsewhere" } });
    await faults.look(t, "reminder answered");
    await press(t, FIXED.ok);
    await press(t, FIXED.low);
    await press(t, "■ Henk");
    await t.stored("a low");
    await t.pass(6 * 60);
    await t.stored("the call");
    await faults.look(t, "low, call raised");
    await press(t, HELPER.button);
    await faults.look(t, "for the helper");
    for (let line = 0; line < 6; line++) await press(t, HELPER.next);
    await faults.look(t, "for the helper, further down");
    await press(t, FIXED.back);
    await press(t, FIXED.wrong);
    await answer(t, finger(t), { do: "leave" });
    await faults.look(t, "kitchen, calling");
    await press(t, HELPER.button);
    expect(await t.words()).toContain("Henk needs help. The number to call: 911.");
    expect(faults.found).toEqual({});
  });
});

describe("insulin that is watched, and a meal that did not come whole", { timeout: 300_000 }, () => {
  it("keep the rules, the sizes and every sentence whole after too much insulin, in every look", async () => {
    const t = await open({ only: "marta" });
    const faults = new Faults();
    await press(t, TODAY.title);
    await press(t, TODAY.right);
    await t.stored("the clock");
    await press(t, FIXED.ok);
    await press(t, FIXED.wrong);
    await press(t, "Too much insulin");
    await t.stored("too much");
    await everyWay(t, faults, "what to do now");
    await press(t, "I understand");
    await t.stored("heard");
    await everyWay(t, faults, "kitchen, watched");
    // All of it at a glance: no page is to be turned to read what is to be done.
    expect(await t.page.locator(".pager").getAttribute("data-fit")).toBe("whole");
    await press(t, WATCH.button);
    await everyWay(t, faults, "keep watch");
    await press(t, "A doctor watches");
    await everyWay(t, faults, "is a doctor there");
    await press(t, WATCH.yesDoctor);
    await t.stored("a doctor");
    await everyWay(t, faults, "a doctor watches");
    expect(faults.found).toEqual({});
  });

  it("keep them in the kitchen while the tablet listens too, with what is to be done on the glass", async () => {
    const t = await open({ only: "marta", voice: "speaks and listens" });
    const faults = new Faults();
    await press(t, TODAY.title);
    await press(t, TODAY.right);
    await t.stored("the clock");
    await press(t, FIXED.ok);
    await press(t, FIXED.wrong);
    await press(t, "Too much insulin");
    await t.stored("too much");
    await press(t, "I understand");
    await t.stored("heard");
    await t.run(6000);
    expect(await t.words()).toContain(FIXED.listening);
    for (const [size, viewport] of [
      [2, LANDSCAPE],
      [1.4, PORTRAIT],
      [1, LANDSCAPE],
    ] as const) {
      await t.page.setViewportSize(viewport);
      await t.page.evaluate((k) => {
        document.documentElement.dataset.size = String(k);
        document.documentElement.style.setProperty("--k", String(k));
      }, size);
      await faults.look(t, `kitchen, watched, size ${size}`);
      expect(await t.page.locator(".pager").getAttribute("data-fit")).toBe("whole");
    }
    expect(faults.found).toEqual({});
  });

  it("keep them after half a meal, and tell the wait in minutes", async () => {
    const t = await open({ only: "marta" });
    const faults = new Faults();
    await press(t, TODAY.title);
    await press(t, TODAY.right);
    await t.stored("the clock");
    await press(t, FIXED.ok);
    await press(t, FIXED.meal);
    await answer(t, finger(t), { do: "open meal", person: "marta", meal: "lunch" });
    await walkMeal(t, finger(t), LUNCH, undefined, "clock");
    await t.pass(25 * 60);
    await t.settle();
    await everyWay(t, faults, "kitchen, how much was eaten");
    await press(t, FIXED.answerMeal);
    await press(t, "Half");
    await t.stored("half");
    await press(t, "I understand");
    await t.stored("the watch");
    await everyWay(t, faults, "keep watch");
    expect(await t.words()).toContain("minutes left");
    expect(await t.words()).not.toContain("seconds");
    expect(faults.found).toEqual({});
  });

  it("keep them when a low asks for day and time, and show its question beside no running wait", async () => {
    const t = await open({ only: "marta" });
    const faults = new Faults();
    await press(t, FIXED.meal);
    await answer(t, finger(t), { do: "open meal", person: "marta", meal: "lunch" });
    await walkMeal(t, finger(t), LUNCH, "eat", "clock");
    await answer(t, finger(t), { do: "cannot eat" });
    await press(t, "Glucose tablets: four of 4 grams");
    await t.stored("sugar");
    await everyWay(t, faults, "sit and wait");
    await t.reload();
    await finger(t).number(PAD_BUTTON["recheck after low"], "132");
    await t.stored("132");
    await press(t, "Yes, 132");
    await t.stored("a good reading");
    await everyWay(t, faults, "day and time");
    expect(await t.words()).toMatch(/Is that right\?\nNo\nYes$/);
    await press(t, "Yes");
    await t.stored("the clock");
    await everyWay(t, faults, "keep watch, no meal");
    expect(faults.found).toEqual({});
  });
});

const SHOWN: readonly [string, Stop][] = [
  ["the read-back", "read back"],
  ["the number pad", "dial"],
  ["the place", "place"],
  ["the bell", "eat"],
];

/** From the kitchen into practice, and on by these buttons. */
const practise = async (t: Tablet, ...buttons: string[]) => {
  for (const button of [FIXED.help, FIXED.practice, PRACTICE.start, ...buttons]) await press(t, button);
};
const TO_PLACE = [
  "Already washed",
  PAD_BUTTON.reading,
  "1",
  "3",
  "2",
  FIXED.ok,
  "Yes, 132",
  "No",
  "Yes",
  "Go on",
  "One rubber band",
  "Yes, it is",
].concat(["Both caps off", "Yes, a stream", PAD_BUTTON.dial, "4", FIXED.ok, "Yes, 4"]);

describe("practice, and the window that nobody sees", () => {
  it("keep the rules and the sizes in every size of letters, however the tablet lies", async () => {
    const t = await open({ only: "marta" });
    const faults = new Faults();
    const everyWay = async (screen: string) => {
      for (const size of [1, 1.4, 2]) {
        await t.page.evaluate((k) => {
          document.documentElement.dataset.size = String(k);
          document.documentElement.style.setProperty("--k", String(k));
        }, size);
        for (const [turned, viewport] of [
          ["landscape", LANDSCAPE],
          ["portrait", PORTRAIT],
        ] as const) {
          await t.page.setViewportSize(viewport);
          await faults.look(t, `${screen}, size ${size}, ${turned}`);
        }
      }
    };
    await practise(t);
    for (const button of TO_PLACE) {
      await press(t, button);
      if (button === PAD_BUTTON.reading) await everyWay("the pad");
    }
    await everyWay("the place");
    for (const button of ["Use this place", "No wipe", "It is down"]) await press(t, button);
    await t.pass(10.5);
    await press(t, "It is out");
    await everyWay("the window");
    await press(t, "I cannot see it");
    await everyWay("the button is felt");
    expect(faults.found).toEqual({});
  });
});

describe("the hardest screens", () => {
  it.each(SHOWN)("keep the rules and the sizes in every size, theme and orientation: %s", async (_name, stop) => {
    const t = await open();
    const faults = new Faults();
    await walkMeal(t, finger(t), LUNCH, stop);
    if (stop === "eat") await t.pass(16 * 60);
    const shows = async () => {
      if (stop === "dial") await press(t, PAD_BUTTON.dial);
    };
    for (const theme of [FIXED.light, FIXED.dark]) {
      for (const size of [1, 1.4, 2]) {
        for (const [turned, viewport] of [
          ["landscape", LANDSCAPE],
          ["portrait", PORTRAIT],
        ] as const) {
          await t.page.setViewportSize(viewport);
          await shows();
          await faults.look(t, `${theme}, size ${size}, ${turned}`);
          if (stop === "dial") await press(t, FIXED.back);
        }
        expect(await t.page.locator("html").getAttribute("data-size")).toBe(String(size));
        await press(t, FIXED.help);
        await press(t, FIXED.bigger);
        await press(t, FIXED.close);
      }
      await press(t, FIXED.help);
      await named(t, FIXED.dark).or(named(t, FIXED.light)).waitFor();
      await press(t, (await named(t, FIXED.dark).isVisible()) ? FIXED.dark : FIXED.light);
      await press(t, FIXED.close);
    }
    expect(faults.found).toEqual({});
  });
});
