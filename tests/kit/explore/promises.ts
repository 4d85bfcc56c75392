// The promises of design section 5 that lie in the pure rooms, each as a question to one turn. Judged by the tests' own account (ledger.ts), never by a guard.
import { afterPromises } from "./promises/after.ts";
import { clockPromises } from "./promises/clock.ts";
import { dosePromises } from "./promises/dose.ts";
import { needlePromises } from "./promises/needle.ts";
import { numberPromises } from "./promises/numbers.ts";
import type { PromiseCheck } from "./promises/shape.ts";

export const PROMISES: readonly PromiseCheck[] = [
  ...dosePromises,
  ...needlePromises,
  ...numberPromises,
  ...afterPromises,
  ...clockPromises,
].sort((a, b) => a.number - b.number);
