import { describe, expect, it } from "vitest";
import type { DoseCard } from "#events/card.ts";
import { units } from "#events/quantity.ts";
import { bring, odileAt, twice, walk } from "../../kit/explore/at-table.ts";
import type { Table } from "../../kit/table.ts";

/** The card is silent after hard exercise, and the clinic is on the telephone. */
function onThePhone(card: Partial<DoseCard> = {}): Table {
  const t = bring(odileAt("wash", { afterExercise: "ask", ...card }), "plate");
  return t.send({ do: "exercise", hard: true }, { do: "meal is ready" });
}

const give = (text: string, helper: string | null = "Nurse Adeyemi") =>
  ({ do: "give number", slot: "telephoned number", text, via: "touch", helper }) as const;
const offered = (t: Table) => t.try(give("4")).refusal?.no !== "not offered here";

describe("a dose given by telephone (promise 5)", () => {
  it("is used once its digits were read back and given a second time, and names the caller", () => {
    const t = twice(onThePhone(), "telephoned number", "4");
    expect(walk(t).told).toMatchObject({ units: 4, by: "Nurse Adeyemi", rows: [] });
    expect(t.types().filter((type) => type === "number given")).toHaveLength(3);
  });

  it("is not used when the second number differs", () => {
    const t = onThePhone().send(give("4"), { do: "agree number" });
    expect(t.try(give("14")).refusal).toEqual({ no: "two numbers differ", first: "4", second: "14" });
    expect(walk(t)).toMatchObject({ told: null, draft: null });
  });

  it("is used at the card's largest dose and refused above it, as a near miss", () => {
    expect(walk(twice(onThePhone({ largestDose: units(9) }), "telephoned number", "9")).told?.units).toBe(9);
    const t = onThePhone({ largestDose: units(9) }).send(give("10"), { do: "agree number" });
    expect(t.try(give("10")).refusal).toEqual({ no: "telephoned number", why: "above the largest dose", units: 10 });
    expect(t.types()).toContain("near miss");
    expect(walk(t)).toMatchObject({ told: null, draft: null });
  });

  it("is refused off the step that the card and its pen know", () => {
    const t = onThePhone().send(give("4.5"), { do: "agree number" });
    expect(t.try(give("4.5")).refusal).toEqual({ no: "units", why: "off the pen's step", text: "4.5" });
    expect(walk(t)).toMatchObject({ told: null, draft: null });
  });

  it("is not asked for where the card says never, nor by a person alone where it says with a helper", () => {
    expect(offered(onThePhone({ telephonedDose: "never" }))).toBe(false);
    const t = onThePhone({ telephonedDose: "with a helper only" });
    expect(offered(t)).toBe(false);
    t.send({ do: "name helper", name: "somebody else" });
    expect(offered(t)).toBe(true);
  });

  it("is not asked for by a card that is out of force", () => {
    expect(offered(onThePhone({ validUntil: "2026-06-04" }))).toBe(false);
    expect(offered(onThePhone({ validFrom: "2026-06-06" }))).toBe(false);
    expect(offered(onThePhone({ validUntil: "2026-06-05" }))).toBe(true);
  });

  it("is not asked for in a low", () => {
    const t = odileAt("reading");
    twice(t, "reading", "66");
    expect(t.step()).toBe("low");
    expect(offered(t)).toBe(false);
  });

  it("holds once for a walk: going back does not bring a second one", () => {
    const t = twice(onThePhone(), "telephoned number", "4").send({ do: "heard dose" }, { do: "back" });
    expect(t.step()).toBe("card");
    expect(walk(t).told).toBeNull();
    expect(offered(t)).toBe(false);
  });

  it("is dialled like any other: another number is not let through", () => {
    const t = twice(onThePhone(), "telephoned number", "4");
    bring(t, "dial").send({ do: "give number", slot: "dial", text: "6", via: "touch", helper: null });
    expect(t.try({ do: "agree number" }).refusal).toEqual({ no: "dial is not the card", dialled: 6, told: 4 });
    t.number("dial", "4");
    expect(t.step()).toBe("place");
  });
});
