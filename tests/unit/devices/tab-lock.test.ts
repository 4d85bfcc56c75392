import { describe, expect, it } from "vitest";
import { holdTabLock, takeOver } from "#devices/tab-lock.ts";

type Holder = { lost: (error: Error) => void };
type Callback = (lock: Lock | null) => unknown;

/** Web Locks as far as this needs them: one holder a name, ifAvailable and steal. After the W3C text, simplified. */
class FakeLocks {
  readonly asked: LockOptions[] = [];
  readonly #holders = new Map<string, Holder>();

  request(name: string, ...rest: [Callback] | [LockOptions, Callback]): Promise<never> {
    const [how, callback] = rest.length === 2 ? rest : [{}, rest[0]];
    this.asked.push(how);
    const holder = this.#holders.get(name);
    if (holder !== undefined && !how.steal) return Promise.resolve(callback(null)) as Promise<never>;
    return new Promise((_resolve, reject) => {
      this.#holders.set(name, { lost: reject });
      holder?.lost(new DOMException("stolen", "AbortError"));
      callback({ name, mode: "exclusive" });
    });
  }
}
const nobody = () => undefined;
const settled = () => new Promise((resolve) => setTimeout(resolve, 0));

describe("the lock of one window", () => {
  it("is held by the first window and tells the second that it is elsewhere", async () => {
    const locks = new FakeLocks();
    expect(await holdTabLock("home", nobody, locks)).toBe("held");
    expect(await holdTabLock("home", nobody, locks)).toBe("elsewhere");
    expect(await holdTabLock("demo", nobody, locks)).toBe("held");
  });

  it("never waits for the other window", async () => {
    const locks = new FakeLocks();
    await holdTabLock("home", nobody, locks);
    expect(locks.asked).toEqual([{ ifAvailable: true }]);
  });

  it("can be taken over, and the first window hears of it once", async () => {
    const locks = new FakeLocks();
    let taken = 0;
    await holdTabLock("home", () => (taken += 1), locks);
    expect(await takeOver("home", nobody, locks)).toBe("held");
    await settled();
    expect(taken).toBe(1);
    expect(await holdTabLock("home", nobody, locks)).toBe("elsewhere");
  });

  it("says not supported where there are no locks or they are forbidden", async () => {
    expect(await holdTabLock("home")).toBe("not supported");
    const forbidding = { request: () => Promise.reject(new DOMException("no", "SecurityError")) };
    expect(await holdTabLock("home", nobody, forbidding)).toBe("not supported");
    const throwing = {
      request: (): Promise<never> => {
        throw new TypeError("no");
      },
    };
    expect(await takeOver("home", nobody, throwing)).toBe("not supported");
  });
});
