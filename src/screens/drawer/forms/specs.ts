// Short ways to write down what a form asks.
import type { Spec } from "#screens/drawer/parts/spec.ts";

export const number = (field: string): Spec => ({ kind: "number", field });
export const choice = (field: string, ...options: string[]): Spec => ({ kind: "choice", field, options });
/** Further fields where the draft has this answer. */
export const where = (is: boolean, ...specs: Spec[]): Spec[] => (is ? specs : []);
