import { describe, expect, it } from "vitest";
import { firstOf, whenWanted } from "#app/ears.ts";
import type { EarsPort, Heard } from "#speech/ports.ts";

/** An ear that writes down what was asked of it. */
function ear(name: string, where: Awaited<ReturnType<EarsPort["available"]>> = "on the device") {
  const asked: string[] = [];
  let heard: (h: Heard) => void = () => {};
  const port: EarsPort = {
    name,
    available: async () => {
      asked.push("available");
      return where;
    },
    listen: (_vocabulary, onHeard) => {
      asked.push("listen");
      heard = onHeard;
      return Promise.resolve(true);
    },
    pause: () => void asked.push("pause"),
  };
  return { port, asked, say: (text: string) => heard({ text, alternatives: [] }) };
}

describe("the tablet's ears", () => {
  it("ask for nothing and fetch nothing before listening was chosen", async () => {
    const own = ear("own");
    let fetched = 0;
    const ears = whenWanted(own.port, () => fetched++);
    ears.screenStands();
    expect(await ears.available()).toBe("not allowed");
    void ears.listen(["yes"], () => {});
    ears.want(false);
    expect([own.asked, fetched]).toEqual([[], 0]);
  });

  it("are fetched once, when they are wanted and the first screen stands, whichever comes later", () => {
    for (const order of ["stands first", "wanted first"]) {
      let fetched = 0;
      const ears = whenWanted(ear("own").port, () => fetched++);
      if (order === "stands first") ears.screenStands();
      else ears.want(true);
      expect(fetched).toBe(0);
      ears.want(true);
      ears.screenStands();
      expect(fetched).toBe(1);
      ears.want(false);
      ears.want(true);
      expect(fetched).toBe(1);
    }
  });

  it("fall shut at once when listening is taken back", () => {
    const own = ear("own");
    const ears = whenWanted(own.port, () => {});
    ears.want(true);
    void ears.listen(["yes"], () => {});
    ears.want(false);
    expect(own.asked).toEqual(["listen", "pause"]);
  });

  it("are ours before the browser's, and the browser's where ours cannot hear", async () => {
    for (const [where, opened] of [
      ["on the device", "own"],
      ["not on this device", "browser"],
    ] as const) {
      const own = ear("own", where);
      const browser = ear("browser");
      const ears = firstOf([own.port, browser.port]);
      expect(await ears.available()).toBe("on the device");
      void ears.listen(["yes"], () => {});
      expect([own, browser].find((e) => e.asked.includes("listen"))).toBe(opened === "own" ? own : browser);
    }
  });
});
