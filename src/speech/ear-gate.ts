// The one door to the ear: open or shut, and nothing passes that was on its way when it shut.
import type { EarsPort, Heard, Hearing } from "./ports.ts";

export class EarGate {
  readonly #ears: EarsPort | null;
  readonly #onListening: (open: boolean) => void;
  #opening = 0;
  #open = false;

  constructor(ears: EarsPort | null, onListening: (open: boolean) => void) {
    this.#ears = ears;
    this.#onListening = onListening;
  }

  isOpen(): boolean {
    return this.#open;
  }

  /** Opens if the ear can hear on this device, and if nobody shut it meanwhile; true once open. */
  async open(vocabulary: readonly string[], onHeard: (h: Heard) => void, hearing?: Hearing): Promise<boolean> {
    const opening = ++this.#opening;
    if (this.#ears === null || (await this.#ears.available()) !== "on the device" || opening !== this.#opening) return false;
    this.#open = true;
    this.expect(vocabulary, onHeard, hearing);
    this.#onListening(true);
    return true;
  }

  /** Goes on listening, for other phrases. */
  expect(vocabulary: readonly string[], onHeard: (h: Heard) => void, hearing?: Hearing): void {
    const opening = this.#opening;
    const heard = (h: Heard): void => {
      if (this.#open && opening === this.#opening) onHeard(h);
    };
    this.#ears?.listen(vocabulary, heard, hearing);
  }

  shut(): void {
    this.#opening++;
    this.#ears?.pause();
    if (this.#open) this.#onListening(false);
    this.#open = false;
  }
}
