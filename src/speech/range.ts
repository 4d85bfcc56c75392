// Which numbers answer a question, for the ear and for whoever asks again.

/** Numbers from low to high in steps. fractionsTo: above it whole numbers only; left out, the steps go all the way. */
export interface NumberRange {
  low: number;
  high: number;
  step: 1 | 0.5 | 0.1;
  fractionsTo?: number;
}

export const within = (value: number, { low, high, step, fractionsTo = high }: NumberRange): boolean =>
  value >= low &&
  value <= high &&
  (Number.isInteger(value) || value <= fractionsTo) &&
  Math.abs(value / step - Math.round(value / step)) < 1e-6;
