// One switch for everything: the buttons light up in turn and the switch takes the lit one. A pure state machine.
// Sources: RESNA 2006 and doi 10.1080/10400435.2007.10131865: step time is the mean reaction time divided by 0.65.
// The 2 s start, the 0.5 s hold against tremor and the rest after 3 rounds are our own starting values.

export interface ScanSettings {
  /** How long each button is lit: 1000 to 6000 ms. */
  stepMs: number;
  /** How long the switch must stay down to count: 300 to 600 ms. */
  holdMs: number;
  rounds: number;
}

export const usualScan: ScanSettings = { stepMs: 2000, holdMs: 500, rounds: 3 };

export type ScanState =
  /** Nothing lit: waits for the switch, without limit. */
  | { at: "resting"; count: number }
  | { at: "moving"; count: number; lit: number; round: number; sinceMs: number }
  /** The switch is down; the light stands still. */
  | { at: "held"; count: number; lit: number; round: number; sinceMs: number }
  /** Something was taken, or the rest was ended; waits for the switch to come up. */
  | { at: "lifting"; count: number };

export type ScanInput =
  | { kind: "time"; ms: number }
  | { kind: "down"; ms: number }
  | { kind: "up"; ms: number }
  /** Another set of buttons is on the screen. */
  | { kind: "buttons"; count: number; ms: number };

export interface ScanTurn {
  state: ScanState;
  /** Place of the button that was taken in this turn. */
  taken: number | null;
}

export function startScan(count: number, ms: number): ScanState {
  return count === 0 ? { at: "resting", count } : { at: "moving", count, lit: 0, round: 0, sinceMs: ms };
}

/** Place of the lit button, or null. */
export function litOf(state: ScanState): number | null {
  return state.at === "moving" || state.at === "held" ? state.lit : null;
}

export function turnScan(state: ScanState, input: ScanInput, settings: ScanSettings): ScanTurn {
  if (input.kind === "buttons") return { state: startScan(input.count, input.ms), taken: null };
  switch (state.at) {
    case "resting":
      return { state: input.kind === "down" ? { at: "lifting", count: state.count } : state, taken: null };
    case "lifting":
      return { state: input.kind === "up" ? startScan(state.count, input.ms) : state, taken: null };
    case "moving":
      if (input.kind === "down") return { state: { ...state, at: "held", sinceMs: input.ms }, taken: null };
      return { state: input.kind === "time" ? moveOn(state, input.ms, settings) : state, taken: null };
    case "held":
      return held(state, input, settings);
  }
}

function held(state: ScanState & { at: "held" }, input: ScanInput, settings: ScanSettings): ScanTurn {
  const longEnough = input.ms - state.sinceMs >= settings.holdMs;
  if (longEnough && input.kind === "time") return { state: { at: "lifting", count: state.count }, taken: state.lit };
  if (input.kind !== "up") return { state, taken: null };
  if (longEnough) return { state: startScan(state.count, input.ms), taken: state.lit };
  // Too short to be meant: the lit button gets its whole time again.
  return { state: { ...state, at: "moving", sinceMs: input.ms }, taken: null };
}

function moveOn(state: ScanState & { at: "moving" }, ms: number, settings: ScanSettings): ScanState {
  if (ms - state.sinceMs < settings.stepMs) return state;
  const last = state.lit + 1 >= state.count;
  if (last && state.round + 1 >= settings.rounds) return { at: "resting", count: state.count };
  return { ...state, lit: last ? 0 : state.lit + 1, round: last ? state.round + 1 : state.round, sinceMs: ms };
}

/** The safe button first, then the others in their own order. */
export function safeFirst<T>(buttons: readonly T[], isSafe: (button: T) => boolean): T[] {
  const first = buttons.find(isSafe);
  return first === undefined ? [...buttons] : [first, ...buttons.filter((button) => button !== first)];
}
