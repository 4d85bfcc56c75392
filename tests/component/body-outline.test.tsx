import { render, screen } from "@testing-library/preact";
import { describe, expect, it } from "vitest";
import { BodyOutline, type BodyOutlineMark } from "#ui/body-outline.tsx";

const marks: BodyOutlineMark[] = [
  { xMm: 199, yMm: 154, label: "here", kind: "here" },
  { xMm: 250, yMm: 120, label: "navel", kind: "never", radiusMm: 51 },
  { xMm: 318, yMm: 120, label: "12 days", kind: "rest" },
  { xMm: 100, yMm: 120, label: "40 days", kind: "old" },
];
const draw = (region: "belly" | "thigh" | "arm" | "buttock" = "belly") =>
  render(
    <BodyOutline
      region={region}
      widthMm={500}
      heightMm={240}
      marks={marks}
      title="Left side of the belly"
      edges={{ left: "left", right: "right" }}
    />,
  );

describe("the body outline", () => {
  it("is one picture with its title in words", () => {
    draw();
    expect(screen.getByRole("img", { name: "Left side of the belly" })).toBeTruthy();
  });

  it("puts a word beside every mark and at both edges", () => {
    const { container } = draw();
    const words = [...container.querySelectorAll("text")].map((text) => text.textContent);
    expect(words.sort()).toEqual(["12 days", "40 days", "here", "left", "navel", "right"]);
  });

  it("tells the kinds apart by shape: ring and cross, hatching, dot", () => {
    const { container } = draw();
    expect(container.querySelectorAll(".outline-here circle, .outline-here path").length).toBe(2);
    const hatched = [...container.querySelectorAll(".outline-never circle")].map((circle) => circle.getAttribute("fill"));
    const id = container.querySelector("pattern")?.id ?? "none";
    expect(hatched).toContain(`url(#${id})`);
    expect(container.querySelectorAll(".outline-rest circle").length).toBe(1);
    expect(container.querySelectorAll(".outline-old circle").length).toBe(1);
  });

  it("draws the next spot on top of every other mark, at its place", () => {
    const { container } = draw();
    const drawn = [...container.querySelectorAll(".outline-mark")];
    expect(drawn.at(-1)?.getAttribute("class")).toContain("outline-here");
    const ring = drawn.at(-1)?.querySelector("circle");
    expect([ring?.getAttribute("cx"), ring?.getAttribute("cy")]).toEqual(["199", "154"]);
  });

  it("puts the days under their own dot", () => {
    const { container } = draw();
    for (const kind of ["rest", "old"]) {
      const [dot, text] = [container.querySelector(`.outline-${kind} circle`), container.querySelector(`.outline-${kind} text`)];
      expect([text?.getAttribute("text-anchor"), text?.getAttribute("x")]).toEqual(["middle", dot?.getAttribute("cx")]);
      expect(Number(text?.getAttribute("y"))).toBeGreaterThan(Number(dot?.getAttribute("cy")));
    }
  });

  it("keeps the word off the hatching of a small place, where it would hide it", () => {
    const { container } = render(
      <BodyOutline
        region="belly"
        widthMm={500}
        heightMm={240}
        title="Belly"
        marks={[{ xMm: 100, yMm: 90, label: "scar", kind: "never", radiusMm: 15 }]}
      />,
    );
    expect(Number(container.querySelector(".outline-never text")?.getAttribute("y"))).toBeGreaterThan(105);
  });

  it("carries no inline style, which the page rules forbid, and no colour of its own", () => {
    const { container } = draw();
    expect(container.innerHTML).not.toMatch(/style=|#[0-9a-f]{3,6}"|rgb\(|hsl\(/);
    expect(container.querySelector("style")).toBeNull();
  });

  it("gives two drawings on one page their own hatching", () => {
    const { container } = render(
      <div>
        <BodyOutline region="thigh" widthMm={200} heightMm={380} marks={marks} title="Left thigh" />
        <BodyOutline region="thigh" widthMm={200} heightMm={380} marks={marks} title="Right thigh" />
      </div>,
    );
    const ids = [...container.querySelectorAll("pattern")].map(({ id }) => id);
    expect(new Set(ids).size).toBe(2);
  });

  it("is widest at the height of the navel, so that a spot at the flank lies on the skin", () => {
    const path = draw().container.querySelector(".outline-skin")?.getAttribute("d") ?? "";
    const [x0 = 0, , x1 = 0] = [...path.matchAll(/-?[\d.]+/g)].map(Number);
    // The middle of the curve from the upper to the lower corner.
    expect(x0 * 0.5 + x1 * 0.5).toBeCloseTo(0);
    expect(x0).toBeGreaterThan(0);
  });

  it("has an outline of its own for each region", () => {
    const shapes = (["belly", "thigh", "arm", "buttock"] as const).map((region) =>
      draw(region).container.querySelector(".outline-skin")?.getAttribute("d"),
    );
    expect(new Set(shapes).size).toBe(4);
  });
});
