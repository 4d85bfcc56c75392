import { describe, expect, it } from "vitest";
import { Overlays } from "#app/overlays.ts";

describe("screens laid over others", () => {
  it("go back to where they were opened, one by one", () => {
    const o = new Overlays();
    o.open("help");
    o.open("voice");
    o.close();
    expect(o.top.value).toBe("help");
    o.close();
    expect(o.top.value).toBeNull();
    o.close();
    expect(o.top.value).toBeNull();
  });

  it("do not go round: opened again, the lower one comes up, and one Back leaves it", () => {
    const o = new Overlays();
    for (const overlay of ["help", "wrong", "help", "help"] as const) o.open(overlay);
    o.close();
    expect(o.top.value).toBeNull();
  });

  it("go all at once when an answer was given", () => {
    const o = new Overlays();
    o.open("help");
    o.open("wrong");
    o.closeAll();
    o.open("voice");
    o.close();
    expect(o.top.value).toBeNull();
  });
});
