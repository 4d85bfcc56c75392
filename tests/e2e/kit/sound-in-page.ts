// Real sound for the page, put in before the app starts: a line in place of the microphone, a loudspeaker that is overheard, and the browser's own voice
// as a test wants it. Runs inside the page and before the moved clock, so it may use nothing from outside itself, and its own time is real.

/** What the browser has. No recogniser of its own in any case: the ear is the one that ships with the app. */
export interface SoundWanted {
  /** The browser's voice: none, or one that starts each sentence and never ends it. */
  voice?: "none" | "hangs";
  /** A line into which the test speaks, or a microphone that is refused as soon as it is asked for; nobody knows before. */
  microphone?: "line" | "refused";
  /** The share of each made sentence that reaches the page. */
  share?: number;
  /** Records what comes out of the loudspeaker; costs a slow machine much. */
  record?: true;
}

/** A sound of made speech that the app started. */
export interface Played {
  samples: Float32Array;
  sampleRate: number;
  /** The sentence that was marked as being spoken, or that stood in the banner, when it started. */
  caption: string;
  /** Real ms since the page began. */
  from: number;
  /** Null while it sounds. */
  to: number | null;
  /** It was stopped before its end. */
  cut: boolean;
  /** What came out of the loudspeaker meanwhile, as the browser recorded it. */
  out: Promise<Blob> | null;
}

export interface SoundBench {
  played: Played[];
  /** Sentences that were given to the browser's own voice. */
  toBrowserVoice: { text: string; from: number; cancelled: boolean }[];
  tones: number;
  /** What became of the workers of ear and voice. */
  workers: { folder: string; is: "coming" | "ready" | "broken" }[];
  /** What the ear's nets made of each utterance. */
  heard: string[];
  /** How often the glass began to say that the tablet listens. */
  listenings: number;
  /** How often it said so while the tablet spoke. */
  listeningOverSpeech: number;
  /** Touches and keys. */
  touches: number;
  listening(): boolean;
  sounding(): boolean;
  now(): number;
  /** Speaks 16-bit samples at 16 kHz, in base64, into the microphone; resolves when it was said. */
  say(samples: string): Promise<void>;
  /** Samples in base64, 16 bits at 16 kHz: what the app gave to the loudspeaker, or what was recorded at it. */
  given(place: number): string;
  recorded(place: number): Promise<string>;
  /** Ends the worker whose files lie in this folder: without a word to anybody, as a tablet without memory does, or with an error. */
  kill(folder: string, how: "silently" | "with an error"): void;
}

/** The page's own global, with what `wire` put there. */
export type SoundGlobal = typeof globalThis & { sound: SoundBench };

/** For `addInitScript`. */
export function wire({ voice = "none", microphone = "line", share = 1, record }: SoundWanted): void {
  const LISTENING = "I am listening.";
  const now = performance.now.bind(performance);
  const later = setTimeout;
  const born = now();
  const own = new WeakSet<AudioNode>();
  const workers = new Map<string, Worker>();
  let line: { context: AudioContext; out: MediaStreamAudioDestinationNode } | null = null;

  const listening = () => [...document.querySelectorAll(".banner")].some((banner) => banner.textContent?.includes(LISTENING));
  const bench: SoundBench = {
    played: [],
    toBrowserVoice: [],
    tones: 0,
    workers: [],
    heard: [],
    listenings: 0,
    listeningOverSpeech: 0,
    touches: 0,
    listening,
    sounding: () => bench.played.some(({ to }) => to === null),
    now: () => now() - born,
    say: (samples) => speakInto(theLine(), samples),
    given: (place) => base64(bench.played[place]?.samples ?? new Float32Array()),
    recorded,
    kill(folder, how) {
      for (const [its, worker] of workers) {
        if (!its.endsWith(folder)) continue;
        worker.terminate();
        if (how === "with an error") worker.dispatchEvent(new ErrorEvent("error", { message: "the worker has died" }));
      }
    },
  };
  Object.assign(globalThis, { sound: bench });

  function base64(samples: Float32Array): string {
    const bytes = new Uint8Array(Int16Array.from(samples, (s) => Math.max(-32768, Math.min(32767, Math.round(s * 32768)))).buffer);
    let text = "";
    for (let at = 0; at < bytes.length; at += 8192) text += String.fromCharCode(...bytes.subarray(at, at + 8192));
    return btoa(text);
  }

  /** A room is never digitally silent. */
  function theLine() {
    if (line) return line;
    const context = new AudioContext();
    const out = context.createMediaStreamDestination();
    const hiss = context.createBuffer(1, 48_000, 48_000);
    hiss.copyToChannel(
      Float32Array.from({ length: 48_000 }, () => (Math.random() - 0.5) * 0.002),
      0,
    );
    const room = context.createBufferSource();
    own.add(room);
    room.buffer = hiss;
    room.loop = true;
    room.connect(out);
    room.start();
    line = { context, out };
    return line;
  }

  function speakInto({ context, out }: NonNullable<typeof line>, samples: string): Promise<void> {
    const bytes = Uint8Array.from(atob(samples), (c) => c.charCodeAt(0));
    const values = Float32Array.from(new Int16Array(bytes.buffer), (s) => s / 32768);
    const buffer = context.createBuffer(1, values.length, 16_000);
    buffer.copyToChannel(values, 0);
    const source = context.createBufferSource();
    own.add(source);
    source.buffer = buffer;
    source.connect(out);
    return new Promise((done) => {
      source.onended = () => done();
      source.start();
    });
  }

  /** What was recorded while a sound played, decoded to 16 kHz. */
  async function recorded(place: number): Promise<string> {
    const { out } = bench.played[place] ?? {};
    if (!out) throw new Error("nothing was recorded");
    const decoded = await new OfflineAudioContext(1, 16_000, 16_000).decodeAudioData(await (await out).arrayBuffer());
    return base64(decoded.getChannelData(0));
  }

  // The microphone, which hears the tablet too, as every microphone in a room does.
  if (navigator.mediaDevices)
    navigator.mediaDevices.getUserMedia = async () => {
      if (microphone === "refused") throw new DOMException("Permission denied", "NotAllowedError");
      return theLine().out.stream.clone();
    };
  if (microphone === "refused")
    navigator.permissions.query = async () => Object.assign(new EventTarget(), { state: "prompt" }) as PermissionStatus;
  Object.defineProperty(window, "SpeechRecognition", { configurable: true, value: undefined });

  // The loudspeaker.
  const taps = new WeakMap<BaseAudioContext, MediaStreamAudioDestinationNode>();
  const connect = AudioNode.prototype.connect as (this: AudioNode, to: AudioNode | AudioParam, ...rest: number[]) => AudioNode;
  Object.assign(AudioNode.prototype, {
    connect(this: AudioNode, to: AudioNode | AudioParam, ...rest: number[]) {
      if (to instanceof AudioDestinationNode && this.context instanceof AudioContext && this.context !== line?.context) {
        let tap = taps.get(this.context);
        if (!tap) {
          tap = this.context.createMediaStreamDestination();
          taps.set(this.context, tap);
          if (microphone === "line") {
            const room = theLine();
            const echo = room.context.createGain();
            echo.gain.value = 0.2;
            connect.call(room.context.createMediaStreamSource(tap.stream), echo);
            connect.call(echo, room.out);
          }
        }
        connect.call(this, tap);
      }
      return connect.call(this, to, ...rest);
    },
  });
  const sounds = new WeakMap<AudioNode, Played>();
  const { start, stop } = AudioBufferSourceNode.prototype;
  AudioBufferSourceNode.prototype.start = function (...times) {
    const { buffer } = this;
    if (own.has(this) || !buffer) return start.apply(this, times);
    const caption = document.querySelector("[data-current=yes]") ?? document.querySelector(".banner-note:not(:has(svg))");
    const entry: Played = {
      samples: buffer.getChannelData(0).slice(),
      sampleRate: buffer.sampleRate,
      caption: caption?.textContent ?? "",
      from: bench.now(),
      to: null,
      cut: false,
      out: null,
    };
    bench.played.push(entry);
    sounds.set(this, entry);
    if (listening()) bench.listeningOverSpeech++;
    const tap = taps.get(this.context);
    const recorder = record && tap && new MediaRecorder(tap.stream);
    entry.out = recorder ? new Promise((done) => recorder.addEventListener("dataavailable", ({ data }) => done(data))) : null;
    recorder?.start();
    this.addEventListener("ended", () => {
      entry.to = bench.now();
      later(() => recorder?.stop(), 100);
    });
    start.apply(this, times);
  };
  AudioBufferSourceNode.prototype.stop = function (when) {
    const entry = sounds.get(this);
    if (entry?.to === null) entry.cut = true;
    stop.call(this, when);
  };
  const { start: startTone } = OscillatorNode.prototype;
  OscillatorNode.prototype.start = function (when) {
    bench.tones++;
    startTone.call(this, when);
  };

  // What the glass says of listening.
  let was = false;
  new MutationObserver(() => {
    const is = listening();
    if (is && !was) bench.listenings++;
    if (is && bench.sounding()) bench.listeningOverSpeech++;
    was = is;
  }).observe(document, { childList: true, subtree: true, characterData: true });
  for (const kind of ["pointerdown", "keydown"]) addEventListener(kind, () => bench.touches++, true);

  // The workers of ear and voice.
  const { postMessage } = Worker.prototype;
  Worker.prototype.postMessage = function (message: object, ...rest: []) {
    if ("folder" in message) {
      const entry: SoundBench["workers"][number] = { folder: String(message.folder), is: "coming" };
      workers.set(entry.folder, this);
      bench.workers.push(entry);
      this.addEventListener("message", ({ data }) => {
        if ("ready" in data) entry.is = "ready";
        if ("broken" in data) entry.is = "broken";
        if ("decision" in data) bench.heard.push(JSON.stringify(data.decision));
      });
    }
    postMessage.call(this, message, ...rest);
  };

  if (share < 1) {
    const listen = Worker.prototype.addEventListener as (kind: string, listener: (e: MessageEvent) => void) => void;
    Object.assign(Worker.prototype, {
      addEventListener(this: Worker, kind: string, listener: (e: MessageEvent) => void) {
        listen.call(this, kind, (e: MessageEvent) => {
          const whole = kind === "message" && "samples" in e.data ? (e.data.samples as Int16Array) : null;
          const torn = whole && { ...e.data, samples: whole.slice(0, whole.length * share) };
          listener(torn ? new MessageEvent(kind, { data: torn }) : e);
        });
      },
    });
  }

  // The browser's own voice.
  if (voice === "none") {
    Object.defineProperty(window, "speechSynthesis", { configurable: true, value: undefined });
    return;
  }
  const engine = {
    pending: false,
    get speaking() {
      return bench.toBrowserVoice.some(({ cancelled }) => !cancelled);
    },
    getVoices: () => [{ lang: "en-US", localService: true, default: true, name: "test" }],
    speak(utterance: EventTarget & { text: string }) {
      bench.toBrowserVoice.push({ text: utterance.text, from: bench.now(), cancelled: false });
      later(() => utterance.dispatchEvent(new Event("start")), 20);
    },
    cancel() {
      for (const entry of bench.toBrowserVoice) entry.cancelled = true;
    },
  };
  Object.defineProperty(window, "speechSynthesis", { configurable: true, value: engine });
  Object.defineProperty(window, "SpeechSynthesisUtterance", {
    configurable: true,
    value: class extends EventTarget {
      constructor(readonly text: string) {
        super();
      }
    },
  });
}
