// The tablet's two clocks and where it is. Same shape as the stamp of an event, told here once more because this room
// imports nothing of ours.

export interface Stamp {
  /** Wall clock, ms since 1970 UTC. May jump. */
  wall: number;
  /** Monotonic clock, ms since this start of the app. May stop while the tablet sleeps (w3c/hr-time issue 115). */
  mono: number;
  /** Names one start of the app: monotonic times compare only within one. */
  boot: string;
  /** IANA zone, and its offset in minutes east of UTC at that moment. */
  zone: string;
  offset: number;
}

export interface Clock {
  now(): Stamp;
}

export interface ClockSources {
  wall(): number;
  mono(): number;
  zone(): string | undefined;
  /** 64 random bits or more, as text. */
  random(): string;
}

const TABLET: ClockSources = {
  wall: () => Date.now(),
  mono: () => performance.now(),
  zone: () => new Intl.DateTimeFormat().resolvedOptions().timeZone,
  // getRandomValues, because randomUUID is missing where the page is not secure.
  random: () => Array.from(crypto.getRandomValues(new Uint8Array(8)), (byte) => byte.toString(16).padStart(2, "0")).join(""),
};

/** The clock of one start of the app. Zone and offset are asked anew each time: a tablet travels, and summer time comes. */
export function startClock(sources: ClockSources = TABLET): Clock {
  const boot = sources.random();
  return {
    now() {
      const wall = sources.wall();
      return { wall, mono: sources.mono(), boot, zone: sources.zone() || "UTC", offset: eastOfUtc(wall) };
    },
  };
}

/** Minutes east of UTC of the tablet's zone at an instant. */
export function eastOfUtc(wall: number): number {
  // getTimezoneOffset counts west of UTC, and gives -0 in London.
  return 0 - new Date(wall).getTimezoneOffset();
}
