import { describe, expect, it } from "vitest";
import { keepScreenOn } from "#devices/screen-on.ts";

class FakeSentinel extends EventTarget {
  released = false;
  async release() {
    this.released = true;
    this.dispatchEvent(new Event("release"));
  }
}
class FakePage extends EventTarget {
  visibilityState: DocumentVisibilityState = "visible";
  turn(state: DocumentVisibilityState) {
    this.visibilityState = state;
    this.dispatchEvent(new Event("visibilitychange"));
  }
}
function bench(refuse: () => boolean = () => false) {
  const page = new FakePage();
  const sentinels: FakeSentinel[] = [];
  const wakeLock = {
    request: async () => {
      if (refuse()) throw new DOMException("no", "NotAllowedError");
      const sentinel = new FakeSentinel();
      sentinels.push(sentinel);
      return sentinel;
    },
  };
  const heard: string[] = [];
  return { page, sentinels, heard, parts: { wakeLock, page }, hear: (state: string) => heard.push(state) };
}
const settled = () => new Promise((resolve) => setTimeout(resolve, 0));

describe("keeping the screen on", () => {
  it("starts at once and says so", async () => {
    const { parts, heard, hear } = bench();
    const screen = keepScreenOn(hear, parts);
    await settled();
    expect(screen.state()).toBe("on");
    expect(heard).toEqual(["on"]);
  });

  it("asks again when the page comes back", async () => {
    const { page, parts, sentinels, heard, hear } = bench();
    const screen = keepScreenOn(hear, parts);
    await settled();
    page.turn("hidden");
    await sentinels[0]?.release();
    expect(screen.state()).toBe("off");
    page.turn("visible");
    await settled();
    expect(screen.state()).toBe("on");
    expect(heard).toEqual(["on", "off", "on"]);
    expect(sentinels).toHaveLength(2);
  });

  it("does not ask while hidden or while it is lit", async () => {
    const { page, parts, sentinels } = bench();
    page.visibilityState = "hidden";
    const screen = keepScreenOn(undefined, parts);
    await settled();
    expect(sentinels).toHaveLength(0);
    page.turn("visible");
    page.turn("visible");
    await settled();
    await screen.ask();
    expect(sentinels).toHaveLength(1);
  });

  it("shows a refusal as off, never throws, and takes a later yes", async () => {
    let refusing = true;
    const { parts, heard, hear } = bench(() => refusing);
    const screen = keepScreenOn(hear, parts);
    await settled();
    expect(screen.state()).toBe("off");
    refusing = false;
    expect(await screen.ask()).toBe("on");
    expect(heard).toEqual(["on"]);
  });

  it("says not supported where the browser has no wake lock", async () => {
    const { page } = bench();
    const screen = keepScreenOn(undefined, { wakeLock: undefined, page });
    expect(screen.state()).toBe("not supported");
    expect(await screen.ask()).toBe("not supported");
    screen.stop();
  });

  it("lets go when it is stopped, also of a lock that was still on its way", async () => {
    const first = bench();
    const screen = keepScreenOn(first.hear, first.parts);
    await settled();
    screen.stop();
    expect(first.sentinels[0]?.released).toBe(true);
    first.page.turn("visible");
    await settled();
    expect(first.sentinels).toHaveLength(1);
    expect(first.heard).toEqual(["on", "off"]);

    const second = bench();
    keepScreenOn(second.hear, second.parts).stop();
    await settled();
    expect(second.sentinels.every((sentinel) => sentinel.released)).toBe(true);
    expect(second.heard).toEqual([]);
  });
});
