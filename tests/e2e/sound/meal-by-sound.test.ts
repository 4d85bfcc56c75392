// A whole meal walk by sound alone: made speech goes into the microphone's path, through worklet, endpoint and nets, to an answer; the tablet speaks with
// the voice it ships and is heard by its own microphone. No recogniser and no voice of the browser is there, and nothing can be fetched.
import { describe, expect, it } from "vitest";
import { verifyChain } from "#log/chain.ts";
import { walkAloud } from "../kit/aloud.ts";
import { bench } from "../kit/bench.ts";
import { typesOf } from "../kit/meal.ts";
import { counts, played, workerIs } from "../kit/sound.ts";

const open = bench();

describe("a meal walk by sound", () => {
  // Sound runs on the real clock: a busy machine may tear it, so a torn run is run again.
  it("is walked from the kitchen to the end by spoken answers alone, with no touch and every request failing", {
    retry: 2,
    timeout: 400_000,
  }, async () => {
    const t = await open({ only: "marta", at: "2026-03-04T18:10:00-05:00", voice: "speaks and listens", prefs: { rate: 190 }, sound: {} });
    const from = t.lastSeq;
    await workerIs(t, "ear/", "ready");
    await workerIs(t, "voice/", "ready");
    await t.page.getByText("I am listening.").first().waitFor({ timeout: 60_000 });
    const asked: string[] = [];
    t.page.on("request", (request) => asked.push(request.url()));
    await t.context.route("**", (route) => route.abort());
    await t.context.setOffline(true);

    await walkAloud(t, (glass, said) => said > 10 && glass.includes("Start a meal"));

    await t.readOn();
    const events = t.eventsAfter(from);
    const chosen = events.find((event) => event.type === "spot chosen");
    expect(chosen).toBeDefined();
    expect(events.find((event) => event.type === "dose told")).toMatchObject({ told: { units: 6, by: "card" } });
    expect(events.find((event) => event.type === "injected")).toMatchObject({ units: 6, left: 0, certain: true, spot: chosen?.spot });
    expect(typesOf(events).slice(-3)).toEqual(["pen put away", "eating", "walk ended"]);
    expect(events.at(-1)).toEqual({ type: "walk ended", how: "whole walk" });
    expect(new Set(events.flatMap((event) => (event.type === "number given" ? [event.via] : [])))).toEqual(new Set(["voice"]));
    expect(verifyChain(t.rows)).toEqual({ ok: true, count: t.rows.length });

    const { touches, listeningOverSpeech } = await counts(t);
    expect(touches).toBe(0);
    // Never both at once: an open ear would hear the tablet's own yes and no.
    expect(listeningOverSpeech).toBe(0);
    expect((await played(t)).length).toBeGreaterThan(30);
    // The browser itself asks for an icon when a tone sounds.
    expect(asked.filter((url) => !/\/icon[\w-]*\.(svg|png)$/.test(url))).toEqual([]);
    expect(t.complaints).toEqual([]);
  });
});
