// What travels between the page and the voice's worker.

export interface Ask {
  id: number;
  text: string;
  pace: number;
}
export type Answer =
  | { id: number; samples: Int16Array<ArrayBuffer>; sampleRate: number }
  | { id: number; why: string }
  | { ready: true }
  | { broken: string };
