// One window at a time. The lock is kindness: it tells the second window at once. What really stops two writers is the log.

export type TabLock = "held" | "elsewhere" | "not supported";

type Locks = Pick<LockManager, "request">;
/** A page that is not secure has no locks. */
const ofThisBrowser = (): Locks | undefined => globalThis.navigator?.locks;

/**
 * Takes the lock for the life of the page. It is freed when the page goes, however it goes.
 * onTaken is called when another window takes it over: this window must then stop writing.
 */
export function holdTabLock(name: string, onTaken: () => void = () => undefined, locks = ofThisBrowser()): Promise<TabLock> {
  return hold(name, { ifAvailable: true }, onTaken, locks);
}

/** Takes the lock away from whichever window has it. Only after somebody chose "Use here". */
export function takeOver(name: string, onTaken: () => void = () => undefined, locks = ofThisBrowser()): Promise<TabLock> {
  return hold(name, { steal: true }, onTaken, locks);
}

function hold(name: string, how: LockOptions, onTaken: () => void, locks: Locks | undefined): Promise<TabLock> {
  if (locks === undefined) return Promise.resolve("not supported");
  return new Promise((answer) => {
    let held = false;
    const lost = () => (held ? onTaken() : answer("not supported"));
    try {
      locks
        .request(name, how, (lock): Promise<never> | undefined => {
          if (lock === null) {
            answer("elsewhere");
            return undefined;
          }
          held = true;
          answer("held");
          return new Promise<never>(() => undefined);
        })
        .catch(lost);
    } catch {
      lost();
    }
  });
}
