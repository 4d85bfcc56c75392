// An ear for tests: hears what the script says, and only while it is open.
import type { EarsPort, Heard, Hearing } from "./ports.ts";
import type { Trouble } from "./room.ts";

export class ScriptedEars implements EarsPort {
  readonly name = "scripted";
  /** The phrases last offered to the ear. */
  vocabulary: readonly string[] = [];
  /** How often it was opened. */
  opened = 0;
  #onHeard: ((h: Heard) => void) | null = null;
  #onTrouble: (t: Trouble) => void = () => {};
  readonly #where: "on the device" | "not on this device" | "not allowed";

  constructor(where: "on the device" | "not on this device" | "not allowed" = "on the device") {
    this.#where = where;
  }

  available(): Promise<"on the device" | "not on this device" | "not allowed"> {
    return Promise.resolve(this.#where);
  }

  listen(
    vocabulary: readonly string[],
    onHeard: (h: Heard) => void,
    _hearing?: Hearing,
    onTrouble: (t: Trouble) => void = () => {},
  ): Promise<boolean> {
    this.vocabulary = vocabulary;
    this.#onTrouble = onTrouble;
    this.opened++;
    this.#onHeard = onHeard;
    return Promise.resolve(true);
  }

  pause(): void {
    this.#onHeard = null;
  }

  listening(): boolean {
    return this.#onHeard !== null;
  }

  /** The room gets in the way. */
  trouble(t: Trouble): void {
    if (this.#onHeard !== null) this.#onTrouble(t);
  }

  /** Somebody says this; true if the ear was open and passed it on. */
  say(text: string, alternatives: string[] = []): boolean {
    return this.#pass({ text, alternatives });
  }

  /** Somebody says something like this; the ear would not swear to it. */
  mumble(text: string, alternatives: string[] = []): boolean {
    return this.#pass({ text, alternatives, unsure: true });
  }

  #pass(heard: Heard): boolean {
    if (this.#onHeard === null) return false;
    this.#onHeard(heard);
    return true;
  }
}
