// The ear that ships with the app, behind the same port as the browser's: microphone, endpoint, and the nets in a worker.
import { CLOSING_MS, Endpoint } from "./ear/endpoint.ts";
import { closingAfter, usualClosing } from "./ear/patience.ts";
import type { FromEar, ToEar } from "./ear/worker-shapes.ts";
import type { EarsPort, Heard, Hearing, Timers } from "./ports.ts";
import type { Trouble } from "./room.ts";

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

/** So long without a word of the worker it is dead. A busy tablet takes half a second for an answer, a very busy test machine some seconds. */
const DEAD_AFTER_MS = 10_000;

interface Pause {
  last: Promise<FromEar> | null;
  /** An answer to which nothing can be added. */
  whole: FromEar | null;
}

export class OwnEars implements EarsPort {
  readonly name = "own";
  readonly #sound: Sound;
  readonly #timers: Timers;
  readonly #endpoint = new Endpoint();
  #worker: EarWorker | null = null;
  #works: "loading" | "ready" | "broken" = "loading";
  #refused = false;
  #turn = 0;
  #asked = 0;
  #hearing: Hearing = { offers: [] };
  /** The present silence, and what is known of what was said before it. */
  #pause: Pause | null = null;
  #onReady: () => void = () => {};
  #waiting = new Map<number, (answer: FromEar) => void>();
  /** Runs while an answer of the worker is due. */
  #stopWatch: (() => void) | null = null;
  #onTrouble: (t: Trouble) => void = () => {};

  constructor(sound: Sound, timers: Timers) {
    this.#sound = sound;
    this.#timers = timers;
  }

  /** Fetches the nets through the worker; until they are there, other ears listen. `folder`: the address of the manifest, with a slash at the end. */
  open(worker: EarWorker, folder: string, onReady: () => void = () => {}): void {
    this.#worker = worker;
    this.#onReady = onReady;
    worker.onAnswer((answer) => this.#answered(answer));
    worker.post({ folder });
  }

  async available(): Promise<"on the device" | "not on this device" | "not allowed"> {
    const how = await this.report();
    return how === "ready" ? "on the device" : how === "microphone refused" ? "not allowed" : "not on this device";
  }

  /** The same, with its reason. Asks nobody for the microphone. */
  async report(): Promise<"ready" | "coming" | "broken" | "no microphone" | "microphone refused"> {
    if (this.#works !== "ready") return this.#works === "broken" ? "broken" : "coming";
    const state = await this.#sound.state();
    if (state === "none") return "no microphone";
    return state === "refused" || (this.#refused && state !== "allowed") ? "microphone refused" : "ready";
  }

  /** Loudness of the room when it was last listened to, in decibels below full scale. */
  loudness(): number {
    return this.#endpoint.floor();
  }

  listen(
    vocabulary: readonly string[],
    onHeard: (h: Heard) => void,
    hearing?: Hearing,
    onTrouble: (t: Trouble) => void = () => {},
  ): Promise<boolean> {
    const turn = ++this.#turn;
    this.#hearing = hearing ?? { offers: vocabulary.map((phrase) => ({ id: phrase, phrases: [phrase] })) };
    this.#onTrouble = onTrouble;
    this.#post({ hearing: this.#hearing });
    this.#pause = null;
    this.#endpoint.reset();
    const { ms, looks } = usualClosing(this.#hearing);
    this.#endpoint.closeUsually(ms, looks);
    return this.#listen(turn, onHeard, onTrouble);
  }

  pause(): void {
    this.#turn++;
    this.#pause = null;
    this.#onTrouble = () => {};
    this.#endpoint.reset();
    this.#sound.pause();
  }

  async #listen(turn: number, onHeard: (h: Heard) => void, onTrouble: (t: Trouble) => void): Promise<boolean> {
    const opened = await this.#sound.open((block) => {
      if (turn !== this.#turn) return;
      const ended = this.#endpoint.take(block);
      if (ended?.kind === "paused") this.#lookAt(ended.samples);
      if (ended?.kind === "goes on") this.#pause = null;
      if (ended?.kind === "said") void this.#tell(turn, this.#understood(ended), onHeard, onTrouble);
      if (ended?.kind === "too loud") onTrouble("too loud");
    });
    if (opened === "refused") this.#refused = true;
    return opened === "open";
  }

  /** Understands what was said so far while the silence still runs, and tells the endpoint how much of it is enough. */
  #lookAt(samples: Float32Array): void {
    const pause: Pause = this.#pause ?? { last: null, whole: null };
    this.#pause = pause;
    pause.last = this.#ask(samples);
    void pause.last.then((answer) => {
      if (this.#pause !== pause || !("decision" in answer)) return;
      const ms = closingAfter(answer.decision, this.#hearing);
      this.#endpoint.closeAfter(ms);
      if (answer.decision.kind === "understood" && ms === CLOSING_MS) pause.whole ??= answer;
    });
  }

  /** What was looked at was all of it, unless the utterance was cut; but only the whole of it, with its weak end, is good enough for a doubt. */
  async #understood({ samples, cut }: { samples: Float32Array; cut: boolean }): Promise<FromEar> {
    const pause = this.#pause;
    this.#pause = null;
    if (cut || pause === null) return this.#ask(samples);
    const answer = pause.whole ?? (await pause.last);
    const doubtful = answer === null || ("decision" in answer && answer.decision.kind !== "understood");
    return doubtful ? this.#ask(samples) : answer;
  }

  async #ask(samples: Float32Array): Promise<FromEar> {
    const id = ++this.#asked;
    const answered = new Promise<FromEar>((resolve) => this.#waiting.set(id, resolve));
    this.#post({ id, samples });
    return answered;
  }

  /** What was turned away answers nothing: other talk in the kitchen must not make the tablet ask again. That there is such talk is told. */
  async #tell(turn: number, asked: Promise<FromEar>, onHeard: (h: Heard) => void, onTrouble: (t: Trouble) => void): Promise<void> {
    const answer = await asked;
    if (turn !== this.#turn || !("decision" in answer)) return;
    const { decision } = answer;
    if (decision.kind === "turned away" && decision.why === "other speech") onTrouble("other talk");
    if (decision.kind === "understood") onHeard({ text: decision.text, alternatives: [] });
    const [first, ...others] = decision.kind === "ask again" ? decision.texts : [];
    if (first !== undefined) onHeard({ text: first, alternatives: others, unsure: true });
  }

  /** Every message is answered; a tablet short of memory ends a worker without a word. While its files are fetched it may take its time. */
  #post(message: ToEar): void {
    this.#worker?.post(message);
    if (this.#works === "ready") this.#watch();
  }

  #watch(): void {
    this.#stopWatch ??= this.#timers.after(DEAD_AFTER_MS, () => this.#answered({ broken: "no answer" }));
  }

  #answered(answer: FromEar): void {
    this.#stopWatch?.();
    this.#stopWatch = null;
    if ("ready" in answer) {
      this.#works = "ready";
      this.#onReady();
    } else if ("broken" in answer) {
      this.#works = "broken";
      for (const resolve of this.#waiting.values()) resolve(answer);
      this.#waiting.clear();
      this.#onTrouble("deaf");
    } else if ("id" in answer) {
      // It was only slow.
      this.#works = "ready";
      this.#waiting.get(answer.id)?.(answer);
      this.#waiting.delete(answer.id);
      if (this.#waiting.size > 0) this.#watch();
    }
  }
}
