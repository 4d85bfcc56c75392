// Whether the browser may throw the log away when the disk runs full. Without persistence all data of the origin goes
// together, and one engine deletes it after 7 days without use; so this is asked and shown.

type Storing = Partial<Pick<StorageManager, "persisted" | "persist" | "estimate">>;
const ofThisBrowser = (): Storing | undefined => globalThis.navigator?.storage;

/** null: this browser cannot say. None of these ever rejects. */
export function persisted(storage = ofThisBrowser()): Promise<boolean | null> {
  return safely(async () => (await storage?.persisted?.()) ?? null);
}

/** Asks that the data be kept. Some browsers decide by themselves, one asks the person: call it from a button. */
export function askToPersist(storage = ofThisBrowser()): Promise<boolean | null> {
  return safely(async () => (await storage?.persist?.()) ?? null);
}

export interface Room {
  usedBytes: number;
  /** What the browser would allow in all, not what is free on the disk. */
  quotaBytes: number;
}

export function estimate(storage = ofThisBrowser()): Promise<Room | null> {
  return safely(async () => {
    const told = await storage?.estimate?.();
    return told?.usage === undefined || told.quota === undefined ? null : { usedBytes: told.usage, quotaBytes: told.quota };
  });
}

async function safely<T>(ask: () => Promise<T | null>): Promise<T | null> {
  try {
    return await ask();
  } catch {
    return null;
  }
}
