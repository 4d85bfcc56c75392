import { describe, expect, it } from "vitest";
import type { Sent } from "#app/house.ts";
import type { LogPort } from "#events/log-port.ts";
import { verifyChain } from "#log/chain.ts";
import { memoryLog } from "#log/memory-log.ts";
import { houseOn, setUp, TestClock } from "../../kit/fresh-house.ts";

const open = { do: "open meal", person: "odile", meal: "breakfast" } as const;

describe("the loop from an intent to what is announced", () => {
  it("announces only what is stored already", async () => {
    const log = memoryLog();
    const clock = new TestClock();
    const storedWhenTold: boolean[] = [];
    const pending: Promise<void>[] = [];
    const house = await houseOn(log, clock, () => {
      const seq = house.state.lastSeq;
      pending.push(log.last().then((last) => void storedWhenTold.push(last.seq >= seq)));
    });
    await house.keep(setUp);
    await house.send(open);
    await Promise.all(pending);
    expect(storedWhenTold).toEqual([true, true]);
  });

  it("changes nothing and says so when the disk refuses", async () => {
    const log = memoryLog();
    const house = await houseOn(log, new TestClock());
    await house.keep(setUp);
    const before = house.state;
    const full: LogPort = log;
    full.append = async () => ({ ok: false, why: "not stored", detail: "disk full" });
    const sent = await house.send(open);
    expect(sent.notStored).toBe("disk full");
    expect(sent.events).toEqual([]);
    expect(house.state).toBe(before);
  });

  it("decides again when another window wrote first, and the chain stays whole", async () => {
    const log = memoryLog();
    const clock = new TestClock();
    const one = await houseOn(log, clock);
    await one.keep(setUp);
    const two = await houseOn(log, clock);
    const first = await one.send(open);
    const second = await two.send(open);
    expect(first.refusal).toBeNull();
    // The walk is open already by then: the second window is refused, not given a walk of its own.
    expect(second.refusal).toEqual({ no: "not offered here" });
    const rows = await log.readAfter(0, 1000);
    expect(verifyChain(rows)).toEqual({ ok: true, count: rows.length });
    expect(rows.filter((r) => r.readable && r.event.type === "walk opened")).toHaveLength(1);
  });

  it("carries out two quick presses one after the other", async () => {
    const house = await houseOn(memoryLog(), new TestClock());
    await house.keep(setUp);
    const both: Sent[] = await Promise.all([house.send(open), house.send(open)]);
    expect(both.map((s) => s.refusal)).toEqual([null, { no: "not offered here" }]);
  });

  it("starts again at the same step from a checkpoint and the rows after it", async () => {
    const log = memoryLog();
    const clock = new TestClock();
    const house = await houseOn(log, clock);
    await house.keep(setUp);
    await house.send(open);
    await house.send({ do: "answer taken", answer: "no" });
    await house.send({ do: "already washed" });
    for (let i = 0; i < 60; i++) {
      await house.send({ do: "give number", slot: "reading", text: "120", via: "touch", helper: null });
      await house.send({ do: "change number" });
    }
    expect(await log.loadCheckpoint()).not.toBeNull();
    const again = await houseOn(log, clock);
    expect(again.state).toEqual(house.state);
    const rows = await log.readAfter(0, 1000);
    expect(rows.length).toBe(house.state.lastSeq);
  });

  it("names the card in force on every row of the person", async () => {
    const log = memoryLog();
    const house = await houseOn(log, new TestClock());
    await house.keep(setUp);
    await house.send(open);
    const rows = await log.readAfter(0, 1000);
    const opened = rows.find((r) => r.readable && r.event.type === "walk opened");
    expect(opened?.readable ? opened.card : null).toBe("hash-of-odile");
  });
});
