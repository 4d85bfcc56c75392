// The one door to the ear: open or shut, and nothing passes that was on its way when it shut. It stays shut where other people's talk would answer.
import type { EarsPort, Heard, Hearing } from "./ports.ts";
import { answerHeard, buttonsOnly, quietRoom, type Room, roomOnNextScreen, type Trouble, troubled } from "./room.ts";

export interface GateWith {
  ears: EarsPort | null;
  onListening(open: boolean): void;
  /** What is in the way on this screen; null again once it is not. */
  onRoom(trouble: Trouble | null): void;
}

export class EarGate {
  readonly #with: GateWith;
  readonly #tell: (trouble: Trouble) => void;
  #opening = 0;
  #open = false;
  /** It was open, and nobody was told yet that it is gone. */
  #heardHere = false;
  #room = quietRoom;

  /** `tell`: what is in the way is to be said, as far as anything may be said now. */
  constructor(parts: GateWith, tell: (trouble: Trouble) => void) {
    this.#with = parts;
    this.#tell = tell;
  }

  isOpen(): boolean {
    return this.#open;
  }

  nextScreen(): void {
    this.#setRoom(roomOnNextScreen(this.#room));
  }

  newWalk(): void {
    this.#setRoom(quietRoom);
  }

  /** What was heard was an answer. */
  answered(): void {
    this.#setRoom(answerHeard(this.#room));
  }

  /** Opens if the ear can hear on this device, and if nobody shut it meanwhile; true once open. */
  async open(vocabulary: readonly string[], onHeard: (h: Heard) => void, hearing?: Hearing): Promise<boolean> {
    const opening = ++this.#opening;
    const { ears } = this.#with;
    if (ears === null || buttonsOnly(this.#room)) return false;
    const there = (await ears.available()) === "on the device";
    if (opening !== this.#opening) return false;
    if (!there) {
      // It died while the tablet spoke.
      if (this.#heardHere) this.#troubled("deaf");
      return false;
    }
    this.#open = true;
    const hears = await this.expect(vocabulary, onHeard, hearing);
    if (opening !== this.#opening) return false;
    if (!hears) {
      this.shut();
      return false;
    }
    this.#heardHere = true;
    this.#with.onListening(true);
    return true;
  }

  /** Goes on listening, for other phrases. */
  expect(vocabulary: readonly string[], onHeard: (h: Heard) => void, hearing?: Hearing): Promise<boolean> {
    const opening = this.#opening;
    const stillOpen = (): boolean => this.#open && opening === this.#opening;
    const heard = (h: Heard): void => {
      if (stillOpen()) onHeard(h);
    };
    const trouble = (t: Trouble): void => {
      if (stillOpen()) this.#troubled(t);
    };
    return this.#with.ears?.listen(vocabulary, heard, hearing, trouble) ?? Promise.resolve(false);
  }

  shut(): void {
    this.#opening++;
    this.#with.ears?.pause();
    if (this.#open) this.#with.onListening(false);
    this.#open = false;
  }

  #troubled(trouble: Trouble): void {
    if (trouble === "deaf") this.#heardHere = false;
    const { room, say } = troubled(this.#room, trouble);
    this.#setRoom(room);
    if (buttonsOnly(room)) this.shut();
    if (say) this.#tell(trouble);
  }

  #setRoom(room: Room): void {
    if (room.shown !== this.#room.shown) this.#with.onRoom(room.shown);
    this.#room = room;
  }
}
