import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { changePrefs, DEFAULT_PREFS, readPrefs } from "#devices/prefs.ts";

function shelf(start?: string) {
  const kept = new Map<string, string>(start === undefined ? [] : [["tablebell preferences", start]]);
  return { getItem: (key: string) => kept.get(key) ?? null, setItem: (key: string, value: string) => void kept.set(key, value) };
}
const broken = {
  getItem: (): string => {
    throw new DOMException("no", "SecurityError");
  },
  setItem: () => {
    throw new DOMException("full", "QuotaExceededError");
  },
};

describe("the preferences", () => {
  it("are the defaults at first", () => {
    expect(readPrefs(shelf())).toEqual(DEFAULT_PREFS);
    expect(readPrefs(null)).toEqual(DEFAULT_PREFS);
  });

  it("stay as they were changed, field by field", () => {
    const place = shelf();
    changePrefs({ theme: "dark", k: 1.4 }, place);
    expect(changePrefs({ mm: 5.57, household: "home" }, place)).toEqual(readPrefs(place));
    expect(readPrefs(place)).toEqual({ ...DEFAULT_PREFS, theme: "dark", k: 1.4, mm: 5.57, household: "home" });
  });

  it("pass over a change that makes no sense and keep what was there", () => {
    const place = shelf();
    changePrefs({ rate: 130 }, place);
    expect(changePrefs({ rate: 900, mm: Number.NaN, theme: "dark" }, place)).toEqual({ ...DEFAULT_PREFS, rate: 130, theme: "dark" });
  });

  it("lose one damaged field, not all", () => {
    const place = shelf('{"theme":"dark","k":3,"rate":"fast","volume":0,"voice":"shouts","mm":1000,"household":"work","other":1}');
    expect(readPrefs(place)).toEqual({ ...DEFAULT_PREFS, theme: "dark" });
  });

  it("never fail, whatever lies there", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        const read = readPrefs(shelf(text));
        expect(Object.keys(read)).toEqual(Object.keys(DEFAULT_PREFS));
        expect(read).toEqual(readPrefs(shelf(JSON.stringify(read))));
      }),
    );
  });

  it("hold without any place to keep them", () => {
    expect(readPrefs(broken)).toEqual(DEFAULT_PREFS);
    expect(changePrefs({ volume: 5 }, broken)).toEqual({ ...DEFAULT_PREFS, volume: 5 });
  });
});
