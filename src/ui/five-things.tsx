// The five things that are always offered, in the same order and the same places (WCAG 3.2.6).
// Landscape: four at the top, Back at the bottom left. Portrait: three and two at the top.
import { BigButton } from "./button.tsx";
import { OctagonIcon, type Shape, ShapeIcon } from "./icons.tsx";

export interface Thing {
  label: string;
  onPress: () => void;
}

export interface FiveThingsProps {
  /** Names the row for screen readers. */
  name: string;
  help: Thing;
  again: Thing;
  /** Reads "Go on" while speech is paused: the caller changes the label. */
  quiet: Thing;
  back: Thing;
  wrong: Thing;
  /** Whose turn it is: a shape and a name, between the things. */
  who?: { shape: Shape; name: string } | undefined;
}

const mark = (
  <span class="help-mark" aria-hidden="true">
    ?
  </span>
);

export function FiveThings({ name, help, again, quiet, back, wrong, who }: FiveThingsProps) {
  return (
    <nav class="five" aria-label={name}>
      <div class="five-first">
        <BigButton role="bar" icon={mark} {...help} />
        <BigButton role="bar" safe {...again} />
        <BigButton role="bar" {...quiet} />
      </div>
      <div class="five-back">
        <BigButton role="bar" {...back} />
      </div>
      <div class="five-wrong">
        <BigButton role="bar" icon={<OctagonIcon />} twoLines {...wrong} />
      </div>
      {who ? (
        <p class="five-who">
          <ShapeIcon shape={who.shape} />
          <span class="five-name">{who.name}</span>
        </p>
      ) : null}
    </nav>
  );
}
