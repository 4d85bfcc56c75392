// Every spoken sentence stands on the screen in the same words. The one being spoken has a bar at its side and
// heavier letters, so that it is found without colour.

import { wholeNumbers } from "./whole-numbers.tsx";

export interface Sentence {
  text: string;
  /** True while the voice is saying it. */
  current: boolean;
}

export interface CaptionsProps {
  sentences: readonly Sentence[];
}

export function Captions({ sentences }: CaptionsProps) {
  return (
    <div class="captions">
      {sentences.map((sentence, place) => (
        <p key={place} class="caption" data-current={sentence.current ? "yes" : undefined}>
          {wholeNumbers(sentence.text)}
        </p>
      ))}
    </div>
  );
}
