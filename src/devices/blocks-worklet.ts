// Runs in the browser's audio thread: hands the microphone's sound on in blocks of 30 ms.

declare class AudioWorkletProcessor {
  readonly port: MessagePort;
}
declare function registerProcessor(name: string, kind: new () => AudioWorkletProcessor): void;

const BLOCK = 480;

class Blocks extends AudioWorkletProcessor {
  #block = new Float32Array(BLOCK);
  #filled = 0;

  process(inputs: Float32Array[][]): boolean {
    for (const sample of inputs[0]?.[0] ?? []) {
      this.#block[this.#filled++] = sample;
      if (this.#filled < BLOCK) continue;
      this.port.postMessage(this.#block, [this.#block.buffer]);
      this.#block = new Float32Array(BLOCK);
      this.#filled = 0;
    }
    return true;
  }
}

registerProcessor("blocks", Blocks);
