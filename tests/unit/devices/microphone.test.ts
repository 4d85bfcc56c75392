import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { microphone } from "#devices/microphone.ts";

/** A browser with a microphone, as far as this room uses it. */
function browser() {
  const found = {
    modules: 0,
    lost: false,
    tracks: [] as { readyState: string; stop(): unknown }[],
    contexts: [] as string[],
    blocks: null as null | Port,
  };
  class Context {
    at = found.contexts.push("suspended") - 1;
    audioWorklet = {
      addModule: async () => {
        if (found.lost) throw new Error("no network");
        found.modules++;
      },
    };
    createMediaStreamSource = () => ({ connect: () => {}, disconnect: () => {} });
    is(state: string): void {
      found.contexts[this.at] = state;
    }
    resume = async () => this.is("running");
    suspend = async () => this.is("suspended");
    close = async () => this.is("closed");
  }
  class Node {
    port: Port = { onmessage: null };
    constructor() {
      found.blocks = this.port;
    }
  }
  const getUserMedia = async () => {
    const track = { readyState: "live", stop: () => Object.assign(track, { readyState: "ended" }) };
    found.tracks.push(track);
    return { getTracks: () => [track] };
  };
  vi.stubGlobal("AudioContext", Context);
  vi.stubGlobal("AudioWorkletNode", Node);
  vi.stubGlobal("navigator", { mediaDevices: { getUserMedia }, permissions: { query: async () => ({ state: "granted" }) } });
  return found;
}
type Port = { onmessage: ((e: { data: Float32Array }) => void) | null };

beforeEach(() => void vi.useFakeTimers());
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe("the microphone", () => {
  it("is let go a minute after the last turn, and opened again without fetching anything", async () => {
    const b = browser();
    const m = microphone();
    expect(await m.open(() => {})).toBe("open");
    m.pause();
    await vi.advanceTimersByTimeAsync(59_000);
    expect([b.tracks.map((t) => t.readyState), b.contexts]).toEqual([["live"], ["running"]]);
    await vi.advanceTimersByTimeAsync(1000);
    expect([b.tracks.map((t) => t.readyState), b.contexts]).toEqual([["ended"], ["suspended"]]);
    b.lost = true;
    const heard: number[] = [];
    expect(await m.open((block) => heard.push(block.length))).toBe("open");
    b.blocks?.onmessage?.({ data: new Float32Array(480) });
    expect([b.tracks.map((t) => t.readyState), b.contexts, b.modules, heard]).toEqual([["ended", "live"], ["running"], 1, [480]]);
  });

  it("is refused where its first file does not come, holds no sound then, and may be asked again", async () => {
    const b = browser();
    const m = microphone();
    b.lost = true;
    expect(await m.open(() => {})).toBe("refused");
    expect([b.tracks.map((t) => t.readyState), b.contexts]).toEqual([["ended"], ["closed"]]);
    b.lost = false;
    expect(await m.open(() => {})).toBe("open");
  });
});
