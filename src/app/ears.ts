// The tablet's ears as one, and only for whom listening was chosen: before that nobody is asked for the microphone and nothing is fetched.
import type { EarsPort } from "#speech/ports.ts";

/** Several ears as one: the first that can hear on this device, asked anew at each opening. */
export function firstOf(ears: readonly EarsPort[]): EarsPort {
  let open: EarsPort | null = null;
  let able: EarsPort | null = null;
  return {
    name: "ears",
    async available() {
      const answers = await Promise.all(ears.map((ear) => ear.available()));
      const at = answers.indexOf("on the device");
      able = ears[at] ?? null;
      return able ? "on the device" : answers.includes("not allowed") ? "not allowed" : "not on this device";
    },
    listen(...what) {
      if (open !== able) open?.pause();
      open = able;
      return open?.listen(...what) ?? Promise.resolve(false);
    },
    pause: () => open?.pause(),
  };
}

export interface WantedEars extends EarsPort {
  /** Whether somebody chose to be heard; taken back, the ear falls shut at once. */
  want(on: boolean): void;
  /** The first screen stands: what is large may be fetched, if it is wanted. */
  screenStands(): void;
}

/** An ear that is there only while somebody wants to be heard. `fetch`: called once, when it is first wanted and the first screen stands. */
export function whenWanted(ear: EarsPort, fetch: () => void): WantedEars {
  let wanted = false;
  let stands = false;
  let fetched = false;
  const perhapsFetch = () => {
    if (!wanted || !stands || fetched) return;
    fetched = true;
    fetch();
  };
  return {
    name: ear.name,
    available: async () => (wanted ? ear.available() : "not allowed"),
    listen(...what) {
      return wanted ? ear.listen(...what) : Promise.resolve(false);
    },
    pause: () => ear.pause(),
    want(on) {
      if (wanted && !on) ear.pause();
      wanted = on;
      perhapsFetch();
    },
    screenStands() {
      stands = true;
      perhapsFetch();
    },
  };
}
