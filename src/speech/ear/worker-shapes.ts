// What travels between the page and the ear's worker.
import type { Hearing } from "./answers.ts";
import type { Decision } from "./decide.ts";

export type ToEar = { folder: string } | { hearing: Hearing } | { id: number; samples: Float32Array };
/** Every message is answered, so that a worker that died is noticed. */
export type FromEar = { ready: true } | { expects: true } | { broken: string } | { id: number; decision: Decision };
