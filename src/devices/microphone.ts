// The microphone as a stream of blocks: 480 samples at 16 kHz. Opened when somebody is to be heard, kept warm between turns, let go after a
// minute, so that the tablet does not show for hours that it listens. Sound stays in this page: it is neither stored nor sent.
import worklet from "./blocks-worklet.ts?worker&url";

export type MicrophoneState = "allowed" | "not asked" | "refused" | "none";

export interface Microphone {
  state(): Promise<MicrophoneState>;
  /** Blocks from now on, until paused. "refused" where there is no sound to be had; asking again later may help. */
  open(onBlock: (block: Float32Array) => void): Promise<"open" | "refused">;
  pause(): void;
}

const RATE = 16_000;
const LET_GO_MS = 60_000;

/** Where blocks are made. Kept for as long as the page: its worklet is fetched once, and never in a walk without a network. */
interface Cutter {
  context: AudioContext;
  blocks: AudioWorkletNode;
}

interface Line {
  cutter: Cutter;
  stream: MediaStream;
  source: MediaStreamAudioSourceNode;
}

async function cutterOf(onBlock: (block: Float32Array) => void): Promise<Cutter> {
  const context = new AudioContext({ sampleRate: RATE });
  try {
    await context.audioWorklet.addModule(worklet);
    const blocks = new AudioWorkletNode(context, "blocks");
    blocks.port.onmessage = (e: MessageEvent<Float32Array>) => onBlock(e.data);
    return { context, blocks };
  } catch (error) {
    void context.close().catch(() => {});
    throw error;
  }
}

/** Echo is cancelled and level evened by the browser; noise is left to the ear, which learned with it. */
async function connect(cut: () => Promise<Cutter>): Promise<Line> {
  const stream = await navigator.mediaDevices.getUserMedia({
    audio: { echoCancellation: true, noiseSuppression: false, autoGainControl: true, channelCount: 1 },
  });
  try {
    const cutter = await cut();
    const source = cutter.context.createMediaStreamSource(stream);
    source.connect(cutter.blocks);
    await cutter.context.resume();
    return { cutter, stream, source };
  } catch (error) {
    stop(stream);
    throw error;
  }
}

const stop = (stream: MediaStream): void => stream.getTracks().forEach((track) => void track.stop());

function letGo({ cutter, stream, source }: Line): void {
  stop(stream);
  source.disconnect();
  void cutter.context.suspend().catch(() => {});
}

export function microphone(): Microphone {
  let line: Promise<Line> | null = null;
  let cutter: Promise<Cutter> | null = null;
  let listener: ((block: Float32Array) => void) | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const cut = (): Promise<Cutter> => {
    cutter ??= cutterOf((block) => listener?.(block)).catch((error: unknown) => {
      cutter = null;
      throw error;
    });
    return cutter;
  };

  return {
    async state() {
      if (navigator.mediaDevices?.getUserMedia === undefined || typeof AudioWorkletNode === "undefined") return "none";
      try {
        const { state } = await navigator.permissions.query({ name: "microphone" });
        return state === "granted" ? "allowed" : state === "denied" ? "refused" : "not asked";
      } catch {
        return "not asked";
      }
    },
    async open(onBlock) {
      clearTimeout(timer);
      listener = onBlock;
      line ??= connect(cut);
      const mine = line;
      try {
        const { stream } = await mine;
        // A microphone that was pulled out or taken back ends its track.
        if (stream.getTracks().some((track) => track.readyState === "ended")) throw new Error("the microphone was taken away");
        return "open";
      } catch {
        if (line === mine) line = null;
        return "refused";
      }
    },
    pause() {
      listener = null;
      clearTimeout(timer);
      timer = setTimeout(() => {
        void line?.then(letGo, () => {});
        line = null;
      }, LET_GO_MS);
    },
  };
}
