import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CODE_SIGNS, codeFrom, readCode } from "#keeping/recovery.ts";

const bytes = fc.array(fc.integer({ min: 0, max: 255 }), { minLength: CODE_SIGNS, maxLength: CODE_SIGNS });

describe("the printed code", () => {
  it("is four groups of four, without signs that are taken for one another", () => {
    fc.assert(fc.property(bytes, (some) => /^([A-HJ-NP-Z2-9]{4}-){3}[A-HJ-NP-Z2-9]{4}$/.test(codeFrom(some))));
    expect(codeFrom(Array.from({ length: 16 }, (_, i) => i))).toBe("ABCD-EFGH-JKLM-NPQR");
    expect(codeFrom(Array.from({ length: 16 }, (_, i) => 255 - i))).toBe("9876-5432-ZYXW-VUTS");
  });

  it("is read however it was typed", () => {
    fc.assert(
      fc.property(bytes, (some) => {
        const code = codeFrom(some);
        expect(readCode(code)).toBe(code);
        expect(readCode(` ${code.toLowerCase().replaceAll("-", " ")} `)).toBe(code);
        expect(readCode(code.replaceAll("-", ""))).toBe(code);
      }),
    );
  });

  it("is no code with a sign too few, too many or none of ours", () => {
    const bad = ["", "ABCD-EFGH-JKLM-NPQ", "ABCD-EFGH-JKLM-NPQRS", "ABCD-EFGH-JKLM-NPQ0", "ABCD-EFGH-JKLM-NPQI"];
    for (const typed of bad) expect(readCode(typed)).toBeNull();
  });
});
