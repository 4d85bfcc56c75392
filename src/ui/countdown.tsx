// A wait in big figures. They change once a second and nothing else moves.

export interface CountdownProps {
  /** Seconds left; parts of a second count as a whole one, and nothing goes below 0. */
  secondsLeft: number;
  /** The same in words, for example "1 minute 5 seconds left". */
  words: string;
}

export function Countdown({ secondsLeft, words }: CountdownProps) {
  return (
    <div class="countdown" role="timer" aria-live="off">
      <span class="countdown-figures" aria-hidden="true">
        {figures(secondsLeft)}
      </span>
      <span class="countdown-words">{words}</span>
    </div>
  );
}

/** Up to 99 s as seconds; above that as minutes and two digits. */
export function figures(secondsLeft: number): string {
  const whole = Math.max(0, Math.ceil(secondsLeft));
  if (whole < 100) return String(whole);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
}
