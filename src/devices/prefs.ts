// Preferences of this tablet: how it looks and sounds. Nothing that decides about a dose may ever be kept here.

export interface Prefs {
  /** null: nobody chose; follow the device. */
  theme: "light" | "dark" | null;
  /** How much larger than normal. */
  k: 1 | 1.4 | 2;
  /** CSS pixels per millimetre of this screen; null until somebody held a card to it. */
  mm: number | null;
  /** Who speaks: the app (and listens), the app alone, the screen reader of the tablet, nobody. */
  voice: "speaks and listens" | "speaks" | "screen reader" | "silent";
  /** One switch steps through the buttons. */
  oneSwitch: boolean;
  /** The voice was chosen before anything talked. */
  chose: boolean;
  /** Spoken words per minute. Comfortable at every age: 150 to 200 (AAC 1995, 11(3), 147-153); our default is a little slower. */
  rate: number;
  /** Steps of 6 dB, 5 the loudest. */
  volume: 1 | 2 | 3 | 4 | 5;
  /** Wrong tries at the PIN, so that a reload does not forget them: how many in a row, and the wall time of the last. */
  pinWrong: number;
  pinAt: number;
  /** null: nobody chose yet. */
  household: "demo" | "home" | null;
}

export const DEFAULT_PREFS: Readonly<Prefs> = {
  theme: null,
  k: 1,
  mm: null,
  voice: "speaks and listens",
  oneSwitch: false,
  chose: false,
  rate: 145,
  volume: 4,
  pinWrong: 0,
  pinAt: 0,
  household: null,
};

const KEY = "tablebell preferences";
type Shelf = Pick<Storage, "getItem" | "setItem">;
type Checks = { [Name in keyof Prefs]: (value: unknown) => value is Prefs[Name] };

const oneOf =
  <T>(...allowed: readonly T[]) =>
  (value: unknown): value is T =>
    allowed.some((one) => one === value);
const isNumber = (value: unknown, least: number, most: number): value is number =>
  typeof value === "number" && value >= least && value <= most;

const CHECKS: Checks = {
  theme: oneOf<Prefs["theme"]>("light", "dark", null),
  k: oneOf<Prefs["k"]>(1, 1.4, 2),
  // 2 to 20 holds every screen from a television to a telephone (own bounds, no source).
  mm: (value): value is number | null => value === null || isNumber(value, 2, 20),
  voice: oneOf<Prefs["voice"]>("speaks and listens", "speaks", "screen reader", "silent"),
  oneSwitch: oneOf<boolean>(true, false),
  chose: oneOf<boolean>(true, false),
  rate: (value): value is number => isNumber(value, 110, 190),
  volume: oneOf<Prefs["volume"]>(1, 2, 3, 4, 5),
  pinWrong: (value): value is number => isNumber(value, 0, 1000),
  pinAt: (value): value is number => isNumber(value, 0, Number.MAX_SAFE_INTEGER),
  household: oneOf<Prefs["household"]>("demo", "home", null),
};

/** What is kept, each field checked by itself; what is missing or makes no sense is the default. Never throws. */
export function readPrefs(shelf: Shelf | null = ofThisBrowser()): Prefs {
  return checked(keptIn(shelf));
}

/**
 * Keeps the changed fields and gives back all that now holds. A change that makes no sense is passed over. Never throws;
 * where nothing can be kept, the app can still go by the answer until it closes.
 */
export function changePrefs(changes: Partial<Prefs>, shelf: Shelf | null = ofThisBrowser()): Prefs {
  const before = readPrefs(shelf);
  const after = checked({ ...changes }, before);
  try {
    shelf?.setItem(KEY, JSON.stringify(after));
  } catch {
    // Full, or forbidden by the browser.
  }
  return after;
}

function checked(kept: Readonly<Record<string, unknown>>, otherwise: Readonly<Prefs> = DEFAULT_PREFS): Prefs {
  const take = <Name extends keyof Prefs>(name: Name): Prefs[Name] => {
    const value = kept[name];
    return CHECKS[name](value) ? value : otherwise[name];
  };
  return {
    theme: take("theme"),
    k: take("k"),
    mm: take("mm"),
    voice: take("voice"),
    oneSwitch: take("oneSwitch"),
    chose: take("chose"),
    rate: take("rate"),
    volume: take("volume"),
    pinWrong: take("pinWrong"),
    pinAt: take("pinAt"),
    household: take("household"),
  };
}

function keptIn(shelf: Shelf | null): Readonly<Record<string, unknown>> {
  try {
    const kept: unknown = JSON.parse(shelf?.getItem(KEY) ?? "{}");
    return typeof kept === "object" && kept !== null ? { ...kept } : {};
  } catch {
    return {};
  }
}

function ofThisBrowser(): Shelf | null {
  try {
    // Asking alone throws where the browser forbids site data.
    return globalThis.localStorage ?? null;
  } catch {
    return null;
  }
}
