import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { canonical } from "#events/canonical.ts";

function fromBits(hex: string): number {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, BigInt(`0x${hex}`));
  return view.getFloat64(0);
}

describe("the canonical form", () => {
  it("is that of the example in RFC 8785, section 3.2.2", () => {
    const value: unknown = JSON.parse(String.raw`{
      "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
      "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
      "literals": [null, true, false]
    }`);
    expect(canonical(value)).toBe(
      String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
    );
  });

  it("sorts members as the example in RFC 8785, section 3.2.3", () => {
    const value = {
      "\u20ac": "Euro Sign",
      "\r": "Carriage Return",
      "\ufb33": "Hebrew Letter Dalet With Dagesh",
      "1": "One",
      "\ud83d\ude00": "Emoji: Grinning Face",
      "\u0080": "Control",
      "\u00f6": "Latin Small Letter O With Diaeresis",
    };
    expect([...canonical(value).matchAll(/":"([^"]+)"/g)].map((found) => found[1])).toEqual([
      "Carriage Return",
      "One",
      "Control",
      "Latin Small Letter O With Diaeresis",
      "Euro Sign",
      "Emoji: Grinning Face",
      "Hebrew Letter Dalet With Dagesh",
    ]);
  });

  it.each([
    ["0000000000000000", "0"],
    ["8000000000000000", "0"],
    ["0000000000000001", "5e-324"],
    ["8000000000000001", "-5e-324"],
    ["7fefffffffffffff", "1.7976931348623157e+308"],
    ["4340000000000000", "9007199254740992"],
    ["4430000000000000", "295147905179352830000"],
    ["44b52d02c7e14af5", "9.999999999999997e+22"],
    ["44b52d02c7e14af6", "1e+23"],
    ["444b1ae4d6e2ef4e", "999999999999999700000"],
    ["444b1ae4d6e2ef50", "1e+21"],
    ["3eb0c6f7a0b5ed8c", "9.999999999999997e-7"],
    ["3eb0c6f7a0b5ed8d", "0.000001"],
    ["41b3de4355555555", "333333333.3333333"],
    ["becbf647612f3696", "-0.0000033333333333333333"],
    ["43143ff3c1cb0959", "1424953923781206.2"],
  ])("writes the number %s of RFC 8785, appendix B, as %s", (bits, text) => {
    expect(canonical(fromBits(bits))).toBe(text);
  });

  it("refuses what JSON cannot carry", () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, undefined, 1n, new Date(0), new Map(), () => 1, [undefined]]) {
      expect(() => canonical(value)).toThrow(TypeError);
    }
  });

  it("leaves out a member that is undefined, as a file would", () => {
    expect(canonical({ b: undefined, a: 1 })).toBe('{"a":1}');
  });

  it("stays the same for any value through a file and back", () => {
    fc.assert(fc.property(fc.jsonValue(), (value) => canonical(JSON.parse(JSON.stringify(value))) === canonical(value)));
  });

  it("is JSON that says the same, names cut in the middle of a character included", () => {
    const text = fc.string({ unit: "binary" }).map((s) => `${s}\ud83d`);
    fc.assert(
      fc.property(text, (s) => {
        expect(JSON.parse(canonical({ s }))).toEqual({ s });
      }),
    );
  });
});
