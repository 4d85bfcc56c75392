// The synthesiser in WebAssembly: text in, sound out. Built by recipe/build.sh from free source; it reaches nothing outside itself.

/** 16-bit samples of one sentence. */
export interface Spoken {
  samples: Int16Array;
  sampleRate: number;
}

/** Says one text so many times as fast as the voice's own pace. Throws an Error with a plain reason when no sound came of it. */
export type Synth = (text: string, pace: number) => Spoken;

interface Doors {
  memory: WebAssembly.Memory;
  _initialize(): void;
  start(): number;
  text_at(): number;
  text_room(): number;
  say(stretch: number): number;
  samples_at(): number;
  sample_rate(): number;
}

const isDoors = (x: object): x is Doors =>
  ["memory", "_initialize", "start", "say", "samples_at", "sample_rate"].every((door) => door in x);

/** A file it asks for does not exist ("bad file descriptor" in WASI), and an exit ends the module. */
const BAD_FILE = 8;

/** Ready to speak; throws when the bytes are no such module or the voice will not start. */
export async function openSynth(bytes: BufferSource): Promise<Synth> {
  const module = await WebAssembly.compile(bytes);
  const outside: Record<string, Record<string, () => number>> = {};
  for (const { module: room, name } of WebAssembly.Module.imports(module)) {
    outside[room] ??= {};
    outside[room][name] = () => {
      if (name === "proc_exit") throw new Error("the voice gave up");
      return BAD_FILE;
    };
  }
  const doors = (await WebAssembly.instantiate(module, outside)).exports;
  if (!isDoors(doors)) throw new Error("this is not our voice");
  doors._initialize();
  if (doors.start() !== 1) throw new Error("the voice did not start");
  return (text, pace) => {
    const said = new TextEncoder().encode(`${text}\0`);
    if (said.length > doors.text_room()) throw new Error("the sentence is too long");
    new Uint8Array(doors.memory.buffer).set(said, doors.text_at());
    const length = doors.say(1 / pace);
    if (length <= 0) throw new Error("no sound came of it");
    return { samples: new Int16Array(doors.memory.buffer, doors.samples_at(), length).slice(), sampleRate: doors.sample_rate() };
  };
}
