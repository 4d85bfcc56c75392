import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

type Tokens = ReadonlyMap<string, string>;

const css = readFileSync("src/ui/tokens.css", "utf8");
const light = colours(block(":root {"));
const dark = colours(block(':root[data-theme="dark"] {'));

// Ink first, what it stands on second: every pair that meets on a screen.
const pairs = [
  ["ink", "paper"],
  ["ink", "card"],
  ["ink2", "paper"],
  ["ink2", "card"],
  ["line", "paper"],
  ["line", "card"],
  ["act", "paper"],
  ["act", "card"],
  ["on-act", "act"],
  ["stop", "paper"],
  ["stop", "card"],
  ["on-stop", "stop"],
  ["on-wait", "wait"],
] as const;

describe.each([
  ["light", light],
  ["dark", dark],
] as const)("the %s palette", (_name, tokens) => {
  it.each(pairs)("sets %s on %s with a contrast of at least 7 to 1", (ink, ground) => {
    expect(contrast(colour(tokens, ink), colour(tokens, ground))).toBeGreaterThanOrEqual(7);
  });

  it("names every colour that some pair judges, and no others", () => {
    expect([...tokens.keys()].sort()).toEqual([...new Set(pairs.flat())].sort());
  });

  it("keeps the pairs of reading and acting apart under a veil of daylight", () => {
    // Reflected light adds the same to both. 5 % of white is a bright kitchen; 5 to 1 is what is left to read by.
    expect(contrast(colour(tokens, "ink"), colour(tokens, "paper"), 0.05)).toBeGreaterThanOrEqual(5);
  });
});

describe("the contrast of two colours", () => {
  it("is 21 to 1 for black on white and 1 to 1 for a colour on itself (WCAG 2.2)", () => {
    expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 5);
    expect(contrast("#12386b", "#12386b")).toBe(1);
  });

  it("agrees with the worked values of the palette's own table", () => {
    expect(contrast(colour(light, "ink"), colour(light, "paper"))).toBeCloseTo(16.61, 1);
    expect(contrast(colour(dark, "act"), colour(dark, "card"))).toBeCloseTo(7.15, 1);
  });
});

describe("the sheets of the large parts", () => {
  const sheets = ["theme", "tokens", "button", "screen", "number-pad", "parts", "drawer", "paper"];
  const all = sheets.map((name) => readFileSync(`src/ui/${name}.css`, "utf8").replace(/\/\*[\s\S]*?\*\//g, "")).join("\n");

  it("move nothing, slant nothing and shout nothing", () => {
    expect(all).not.toMatch(
      /@keyframes|animation|transition|[^r]scroll-behavior|font-style:\s*(italic|oblique)|text-transform|text-decoration:\s*underline/,
    );
  });

  it("use no light letters", () => {
    const weights = [...all.matchAll(/font-weight:\s*(\d+);/g)].map((match) => Number(match[1]));
    expect(weights.length).toBeGreaterThan(0);
    expect(Math.min(...weights)).toBeGreaterThanOrEqual(600);
  });

  it("use only the colours of the palette", () => {
    const outside = all.replace(/:root[^{]*\{[^}]*--paper[^}]*\}/g, "");
    expect(outside).not.toMatch(/#[0-9a-f]{3,8}\b|rgb|hsl/i);
  });
});

function block(start: string): string {
  const from = css.indexOf(start);
  if (from < 0) throw new Error(`no block ${start}`);
  return css.slice(from, css.indexOf("}", from));
}

function colours(text: string): Tokens {
  return new Map([...text.matchAll(/--([a-z0-9-]+):\s*(#[0-9a-f]{6});/g)].map((match) => [match[1] ?? "", match[2] ?? ""]));
}

function colour(tokens: Tokens, name: string): string {
  const found = tokens.get(name);
  if (!found) throw new Error(`no colour ${name}`);
  return found;
}

/** WCAG 2.2, definition of contrast ratio. veil: light reflected by the glass, as a share of white. */
function contrast(one: string, other: string, veil = 0): number {
  const [dim = 0, bright = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (bright + veil + 0.05) / (dim + veil + 0.05);
}

function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => linear(Number.parseInt(hex.slice(at, at + 2), 16) / 255));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function linear(channel: number): number {
  return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
}
