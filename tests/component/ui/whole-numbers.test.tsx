// @vitest-environment jsdom
import { render } from "@testing-library/preact";
import { describe, expect, it } from "vitest";
import { Captions } from "#ui/captions.tsx";

const numbersIn = (text: string) => {
  const { container } = render(<Captions sentences={[{ text, current: false }]} />);
  expect(container.textContent).toBe(text);
  return [...container.querySelectorAll(".whole-number")].map((whole) =>
    whole.children.length === 0 ? whole.textContent : [...whole.children].map((group) => group.textContent),
  );
};

describe("a telephone number on the screen", () => {
  it.each([
    ["Linden Street Clinic: 555 0123.", ["555 0123"]],
    ["Call Dr. Low: +44 20 7946 0018.", ["+44 20 7946 0018"]],
    ["Call (555) 010-4477. Or 555-0100.", ["(555) 010-4477", "555-0100"]],
  ])("is one piece, in the groups in which it was typed: %s", (text, whole) => {
    expect(numbersIn(text)).toEqual(whole);
  });

  it("is put in groups where it was typed without any, and the words stay the same", () => {
    expect(numbersIn("Call 5550104477.")).toEqual([["555", "010", "4477"]]);
    expect(numbersIn("Call 5550123 now.")).toEqual([["555", "0123"]]);
  });

  it("leaves a count with its half on one line, in words as short as a line", () => {
    expect(numbersIn("From your right shoulder go five and a half fingers down.")).toEqual(["five and a half"]);
    expect(numbersIn("Go one and a half hands up and twelve and a half fingers outwards.")).toEqual([
      "one and a half",
      "twelve and a half",
    ]);
    expect(numbersIn("Go twenty-three and a half fingers down.")).toEqual([]);
    expect(numbersIn("Go half a hand down and two fingers outwards.")).toEqual([]);
  });

  it("is nothing else: not an amount, a date, a time, nor the emergency number", () => {
    for (const text of ["28.4 grams, 132, 1, 8, 0.", "It is 12:05 on 3 June 2026.", "Emergency: 911.", "Take 4.5 units at 12:40."])
      expect(numbersIn(text)).toEqual([]);
  });
});
