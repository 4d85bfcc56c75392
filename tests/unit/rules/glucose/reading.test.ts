import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkReading } from "#rules/glucose/reading.ts";

const why = (text: string, unit: "mg/dL" | "mmol/L") => {
  const checked = checkReading(text, unit);
  return checked.ok === false ? checked.why : checked.ok;
};

describe("a typed reading", () => {
  it("is taken in its own unit", () => {
    expect(checkReading("142", "mg/dL")).toEqual({ ok: true, glucose: { value: 142, unit: "mg/dL" } });
    expect(checkReading("7.9", "mmol/L")).toEqual({ ok: true, glucose: { value: 7.9, unit: "mmol/L" } });
    expect(checkReading("8", "mmol/L")).toEqual({ ok: true, glucose: { value: 8, unit: "mmol/L" } });
  });

  it("may have a decimal comma and spaces around it", () => {
    expect(checkReading(" 7,9\u00a0", "mmol/L")).toEqual({ ok: true, glucose: { value: 7.9, unit: "mmol/L" } });
  });

  it("is refused as the other unit: 5.5 typed in mg/dL, 110 typed in mmol/L", () => {
    expect(why("5.5", "mg/dL")).toBe("fits only the other unit");
    expect(why("5", "mg/dL")).toBe("fits only the other unit");
    expect(why("110", "mmol/L")).toBe("fits only the other unit");
    // A meter in mg/dL shows no decimals, so this is mmol/L too.
    expect(why("25.5", "mg/dL")).toBe("fits only the other unit");
  });

  it("is asked for its unit from 20 to 33.3, where both units are possible", () => {
    for (const text of ["20", "27", "33"]) expect([why(text, "mg/dL"), why(text, "mmol/L")]).toEqual(["ask unit", "ask unit"]);
    expect(why("33.3", "mmol/L")).toBe("ask unit");
    expect([why("19", "mg/dL"), why("19.9", "mmol/L"), why("34", "mg/dL"), why("34", "mmol/L")]).toEqual([
      "fits only the other unit",
      true,
      true,
      "fits only the other unit",
    ]);
  });

  it("keeps the words of a meter as words, in any spelling (source: data sets with 0Hi and 0Lo)", () => {
    for (const text of ["HI", "hi", "0Hi", " Hi "]) expect(why(text, "mg/dL")).toBe("word HI");
    for (const text of ["LO", "lo", "0Lo", "Lo"]) expect(why(text, "mmol/L")).toBe("word LO");
  });

  it("is refused at the ends of what meters show: 20 to 600 mg/dL, 1.1 to 33.3 mmol/L", () => {
    expect(["600", "601", "1800", "100000000000000000000000"].map((t) => why(t, "mg/dL"))).toEqual([
      true,
      "too high",
      "too high",
      "too high",
    ]);
    expect(["1.1", "1.0", "1", "0.9", "33.4", "601", "1800"].map((t) => why(t, "mmol/L"))).toEqual([
      true,
      "too low",
      "too low",
      "too low",
      "too high",
      "too high",
      "too high",
    ]);
    expect(["1", "0.5"].map((t) => why(t, "mg/dL"))).toEqual(["too low", "too low"]);
    expect(["1.1", "2"].map((t) => why(t, "mg/dL"))).toEqual(["fits only the other unit", "fits only the other unit"]);
  });

  it("may have one decimal in mmol/L and none in mg/dL", () => {
    expect(["5.55", "10.00"].map((t) => why(t, "mmol/L"))).toEqual(["too many decimals", "too many decimals"]);
    expect(["180.5", "110.0", "5.55"].map((t) => why(t, "mg/dL"))).toEqual(["too many decimals", "too many decimals", "too many decimals"]);
  });

  it("is refused when it is empty, zero, or no number", () => {
    expect(["", "   "].map((t) => why(t, "mg/dL"))).toEqual(["empty", "empty"]);
    expect(["0", "0.0", "000"].map((t) => why(t, "mmol/L"))).toEqual(["zero", "zero", "zero"]);
    const none = ["-5", "+142", "1 42", "12a", "1e2", ".5", "5.", "1.2.3", "hello", "high", "NaN", "Infinity", "٥٥"];
    for (const text of none) expect(why(text, "mg/dL")).toBe("not a number");
  });

  it("never lets a number through that its unit cannot be, whatever was typed", () => {
    const typed = fc.oneof(fc.string(), fc.double().map(String), fc.stringMatching(/^\d{1,4}([.,]\d{1,2})?$/));
    fc.assert(
      fc.property(typed, fc.constantFrom("mg/dL" as const, "mmol/L" as const), (text, unit) => {
        const checked = checkReading(text, unit);
        if (checked.ok === false) return;
        const { value } = checked.glucose;
        expect(checked.glucose.unit).toBe(unit);
        expect(unit === "mg/dL" ? value >= 20 && value <= 600 && Number.isInteger(value) : value >= 1.1 && value <= 33.3).toBe(true);
        expect(checked.ok === "ask unit").toBe(value >= 20 && value <= 33.3);
      }),
    );
  });
});
