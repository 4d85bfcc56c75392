// What travels between the page and the voice's worker.

export interface Ask {
  id: number;
  text: string;
  pace: number;
}
export type Answer =
  /** `made`: how many samples the synthesiser made, so that a sound that lost some on its way is known. */
  | { id: number; samples: Int16Array<ArrayBuffer>; sampleRate: number; made: number }
  | { id: number; why: string }
  | { ready: true }
  | { broken: string };
