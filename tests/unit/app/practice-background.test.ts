import { describe, expect, it } from "vitest";
import { frontPerson } from "#walk/offers.ts";
import { PRACTICE } from "#words/en/practice.ts";
import { dose, nightCard } from "../../kit/background-walk.ts";
import { backgroundOnlyCard } from "../../kit/cards.ts";
import { byTheClock, practiceTable, TO_THE_NEEDLE_BY_THE_CLOCK } from "../../kit/practice-table.ts";

/** hours: after noon. */
const practising = async (card = backgroundOnlyCard, hours = 0) => {
  const t = await practiceTable(byTheClock(card));
  t.clock.pass(hours * 3600);
  const before = await t.stored();
  await t.practice.begin("odile");
  const walk = () => {
    const desk = t.practice.desk.value;
    return desk ? (frontPerson(desk.state.value)?.walk ?? null) : null;
  };
  const said = () => t.practice.desk.value?.say().lines ?? [];
  return { ...t, before, walk, said };
};

describe("practice of a card that has background insulin and no meal", () => {
  it("walks the background dose of that card to its end, and leaves the log and the pens as they were", async () => {
    const t = await practising();
    const house = t.real.state.value;
    expect(t.walk()).toMatchObject({ kind: "background", meal: null, background: { at: "21:30", insulinId: "glargine-100" } });
    // Nothing is asked about a dose that was really taken.
    expect(t.step()).toBe("wash");
    await t.answer(...TO_THE_NEEDLE_BY_THE_CLOCK.slice(0, 2));
    expect(t.walk()?.told).toMatchObject({ units: 14, by: "card", cardHash: "hash-of-odile" });
    expect(t.said()).not.toContain(PRACTICE.madeUp);
    await t.answer(...TO_THE_NEEDLE_BY_THE_CLOCK.slice(2), { do: "button is down" });
    await t.pass(10);
    await t.answer({ do: "wait is over" }, { do: "window is at zero" }, { do: "put away" });
    expect([t.step(), t.said()]).toEqual(["done", PRACTICE.done]);
    await t.answer({ do: "finish" });
    expect(t.practice.desk.value).toBeNull();
    expect(t.real.noted.value?.lines).toEqual(PRACTICE.over);
    expect(await t.stored()).toBe(t.before);
    expect(t.real.state.value).toBe(house);
  });

  it("says to inject nothing wherever the pen is in hand, and that any hour will do for practice", async () => {
    const t = await practising();
    for (const intent of TO_THE_NEEDLE_BY_THE_CLOCK) {
      await t.answer(intent);
      const step = t.step() ?? "";
      // It is noon, and the dose is for half past nine in the evening.
      if (step === "card") expect(t.said()[0]).toBe(PRACTICE.anyHour);
      if (["pen", "dial", "place", "skin", "inject"].includes(step) && !t.said().includes("Right?"))
        expect([step, t.said()[0]]).toEqual([step, PRACTICE.noInject]);
    }
    expect(t.step()).toBe("inject");
    await t.pass(8);
    expect(t.voice.texts()).toContain(PRACTICE.banner);
    expect(t.voice.texts()).toContain(PRACTICE.noInject);
  });

  it("says nothing of the hour when it is near", async () => {
    const t = await practising({ ...backgroundOnlyCard, background: [dose("13:00", 14)] });
    await t.answer(...TO_THE_NEEDLE_BY_THE_CLOCK.slice(0, 2));
    expect([t.step(), t.said()[0]]).toEqual(["card", "Long-acting, 1:00 in the afternoon: your card says 14 units."]);
  });

  it("takes of two doses the one whose hour is nearest, round midnight too", async () => {
    const hourOf = async (hours: number, ...at: `${number}:${number}`[]) =>
      (await practising({ ...backgroundOnlyCard, background: at.map((hour) => dose(hour, 10)) }, hours)).walk()?.background?.at;
    expect(await hourOf(0, "08:00", "21:30")).toBe("08:00");
    expect(await hourOf(0, "22:00", "15:00")).toBe("15:00");
    expect(await hourOf(11, "19:00", "01:00")).toBe("01:00");
  });

  it("ends at a low number, which may be a real one, and when it is left", async () => {
    const t = await practising();
    const give = { do: "give number", slot: "reading", text: "55", via: "touch", helper: null } as const;
    await t.answer({ do: "already washed" }, give, { do: "agree number" }, give);
    expect(t.practice.desk.value).toBeNull();
    expect(t.real.noted.value?.lines).toEqual(PRACTICE.low);
    await t.practice.begin("odile");
    await t.answer({ do: "leave" });
    expect(t.practice.desk.value).toBeNull();
    expect(await t.stored()).toBe(t.before);
  });
});

describe("practice of other cards", () => {
  it("walks a meal where the card has one, whatever stands beside it by the clock", async () => {
    const t = await practising(nightCard);
    expect(t.walk()).toMatchObject({ kind: "meal", meal: "lunch", background: null });
  });

  it("walks an invented meal where the card has neither a meal nor an insulin that is walked by the clock", async () => {
    const premixed = { id: "mix", name: "mixed insulin", unitsPerMl: 100, kind: "premixed" } as const;
    const t = await practising({ ...backgroundOnlyCard, background: [dose("08:00", 10, { insulin: premixed })] });
    expect(t.walk()).toMatchObject({ kind: "meal", background: null });
    await t.answer({ do: "already washed" });
    await t.answer({ do: "give number", slot: "reading", text: "120", via: "touch", helper: null }, { do: "agree number" });
    await t.answer({ do: "exercise", hard: false }, { do: "meal is ready" });
    expect([t.step(), t.said()[0]]).toEqual(["card", PRACTICE.madeUp]);
  });
});
