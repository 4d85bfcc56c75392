// The ear that ships with the app, behind the same port as the browser's: microphone, endpoint, and the nets in a worker.
import { Endpoint } from "./ear/endpoint.ts";
import type { FromEar, ToEar } from "./ear/worker-shapes.ts";
import type { EarsPort, Heard, Hearing } from "./ports.ts";

/** The microphone, as seen from here. */
export interface Sound {
  state(): Promise<"allowed" | "not asked" | "refused" | "none">;
  open(onBlock: (block: Float32Array) => void): Promise<"open" | "refused">;
  pause(): void;
}

/** The worker, as seen from here. An error of the worker itself is told as "broken". */
export interface EarWorker {
  post(message: ToEar): void;
  onAnswer(listener: (answer: FromEar) => void): void;
}

export class OwnEars implements EarsPort {
  readonly name = "own";
  readonly #sound: Sound;
  readonly #endpoint = new Endpoint();
  #worker: EarWorker | null = null;
  #works: "loading" | "ready" | "broken" = "loading";
  #refused = false;
  #turn = 0;
  #asked = 0;
  #onReady: () => void = () => {};
  #waiting = new Map<number, (answer: FromEar) => void>();

  constructor(sound: Sound) {
    this.#sound = sound;
  }

  /** Fetches the nets through the worker; until they are there, other ears listen. `folder`: the address of the manifest, with a slash at the end. */
  open(worker: EarWorker, folder: string, onReady: () => void = () => {}): void {
    this.#worker = worker;
    this.#onReady = onReady;
    worker.onAnswer((answer) => this.#answered(answer));
    worker.post({ folder });
  }

  async available(): Promise<"on the device" | "not on this device" | "not allowed"> {
    if (this.#works !== "ready") return "not on this device";
    const state = await this.#sound.state();
    if (state === "none") return "not on this device";
    return state === "refused" || (this.#refused && state !== "allowed") ? "not allowed" : "on the device";
  }

  listen(vocabulary: readonly string[], onHeard: (h: Heard) => void, hearing?: Hearing): void {
    const turn = ++this.#turn;
    this.#worker?.post({ hearing: hearing ?? { offers: vocabulary.map((phrase) => ({ id: phrase, phrases: [phrase] })) } });
    this.#endpoint.reset();
    void this.#listen(turn, onHeard);
  }

  pause(): void {
    this.#turn++;
    this.#endpoint.reset();
    this.#sound.pause();
  }

  async #listen(turn: number, onHeard: (h: Heard) => void): Promise<void> {
    const opened = await this.#sound.open((block) => {
      if (turn !== this.#turn) return;
      const ended = this.#endpoint.take(block);
      if (ended?.kind === "said") void this.#understand(turn, ended.samples, onHeard);
    });
    if (opened === "refused") this.#refused = true;
  }

  /** What was turned away is told to nobody: other talk in the kitchen must not make the tablet speak. */
  async #understand(turn: number, samples: Float32Array, onHeard: (h: Heard) => void): Promise<void> {
    const id = ++this.#asked;
    const answered = new Promise<FromEar>((resolve) => this.#waiting.set(id, resolve));
    this.#worker?.post({ id, samples });
    const answer = await answered;
    this.#waiting.delete(id);
    if (turn !== this.#turn || !("decision" in answer)) return;
    const { decision } = answer;
    if (decision.kind === "understood") onHeard({ text: decision.text, alternatives: [] });
    const [first, ...others] = decision.kind === "ask again" ? decision.texts : [];
    if (first !== undefined) onHeard({ text: first, alternatives: others, unsure: true });
  }

  #answered(answer: FromEar): void {
    if ("ready" in answer) {
      this.#works = "ready";
      this.#onReady();
    } else if ("broken" in answer) {
      this.#works = "broken";
      for (const resolve of this.#waiting.values()) resolve(answer);
    } else this.#waiting.get(answer.id)?.(answer);
  }
}
