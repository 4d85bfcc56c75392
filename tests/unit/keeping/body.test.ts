import { describe, expect, it } from "vitest";
import { MARK_PARTS, markPlace, measureByHands } from "#keeping/body.ts";
import type { Draft } from "#keeping/problem.ts";
import { fieldName } from "#words/en/drawer/fields.ts";
import { optionName } from "#words/en/drawer/options.ts";
import { odile } from "../../kit/people.ts";

const { body } = odile;
const lump: Draft = { "mark.kind": "lump", "mark.part": "left thigh", "mark.from": "knee up", "mark.along": "8", "mark.outwards": "2" };

describe("lengths in hands", () => {
  it("become millimeters of this person's own hand, and blanks stay as they are", () => {
    const set = measureByHands({ "hands.bellyWidthMm": "5", "hands.armLengthMm": "4,5" }, odile, "k1");
    const changed = { ...body, bellyWidthMm: 5 * body.handMm, armLengthMm: 4.5 * body.handMm };
    expect(set).toEqual({ ok: true, events: [{ type: "person changed", person: { ...odile, body: changed }, keeper: "k1" }] });
  });

  it("are counted in the hand that was measured with them", () => {
    const set = measureByHands({ "hands.handMm": "70", "hands.thighLengthMm": "5" }, odile, "k1");
    expect(set.ok && set.events[0]).toMatchObject({
      person: { body: { handMm: 70, thighLengthMm: 350, bellyWidthMm: body.bellyWidthMm } },
    });
  });

  it.each([
    ["hands.bellyWidthMm", "1", "too small"],
    ["hands.bellyWidthMm", "12", "too large"],
    ["hands.armLengthMm", "4.25", "too many decimals"],
    ["hands.armLengthMm", "four", "not a number"],
    ["hands.handMm", "300", "too large"],
  ])("that cannot be are turned away: %s of %s is %s", (field, text, why) => {
    const set = measureByHands({ [field]: text }, odile, "k1");
    expect(set).toMatchObject({ ok: false, problems: [{ field, got: text, why }] });
  });

  it("at both ends of what may be typed give a body that may be stored", () => {
    for (const handMm of ["50", "77", "130"])
      for (const ends of ["least", "most"]) {
        const draft: Record<string, string> = { "hands.handMm": handMm };
        for (const name of ["bellyWidthMm", "bellyHeightMm", "thighLengthMm", "armLengthMm"]) {
          const refused = measureByHands({ "hands.handMm": handMm, [`hands.${name}`]: ends === "least" ? "0" : "99" }, odile, "k1");
          const [problem] = refused.ok ? [] : refused.problems;
          draft[`hands.${name}`] = String(problem?.why === "too small" ? problem.least : problem?.why === "too large" ? problem.most : 0);
        }
        expect(measureByHands(draft, odile, "k1").ok, JSON.stringify(draft)).toBe(true);
      }
  });
});

describe("a place that a keeper marks", () => {
  it("lies where the fingers lead, with its kind and size", () => {
    const spot = { region: "thigh", side: "left", outMm: 2 * body.fingerMm, downMm: body.thighLengthMm - 8 * body.fingerMm };
    const marked = (draft: Draft) => markPlace(draft, "m1", body);
    expect(marked(lump)).toEqual({
      ok: true,
      events: [{ type: "no-go place marked", noGo: { id: "m1", spot, radiusMm: 15, kind: "lump" } }],
    });
    const large = marked({ ...lump, "mark.radiusMm": "40" });
    expect(large.ok && large.events[0]).toMatchObject({ noGo: { radiusMm: 40 } });
  });

  it("needs no landmark where its part has only one", () => {
    const { "mark.from": _, ...draft } = lump;
    expect(markPlace({ ...draft, "mark.part": "right buttock" }, "m1", body).ok).toBe(true);
    expect(markPlace(draft, "m1", body)).toMatchObject({ ok: false, problems: [{ field: "mark.from", why: "not chosen" }] });
  });

  it("is not stored with an answer missing, or with a landmark of another part", () => {
    for (const field of ["mark.kind", "mark.part", "mark.along", "mark.outwards"])
      expect(markPlace({ ...lump, [field]: "" }, "m1", body)).toMatchObject({ ok: false, problems: [{ field }] });
    expect(markPlace({ ...lump, "mark.from": "navel up" }, "m1", body)).toMatchObject({ ok: false, problems: [{ field: "mark.from" }] });
    expect(markPlace({ ...lump, "mark.along": "25" }, "m1", body)).toMatchObject({ ok: false, problems: [{ why: "too large", most: 24 }] });
  });

  it("has words for every answer", () => {
    expect(MARK_PARTS.map((part) => optionName("mark.part", part))).toContain("Back of the left upper arm");
    expect(optionName("mark.from", "knee up")).toBe("Up from the knee");
    expect(optionName("mark.kind", "other")).toBe("Another place to leave free");
    expect(fieldName("mark.from")).toBe("Counted from");
  });
});
