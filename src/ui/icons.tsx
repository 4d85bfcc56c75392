// Our own simple drawings. They repeat a word beside them, so they are hidden from screen readers.
// The box is 24 units wide and at least 12 mm on screen, so a line of 2.8 units is 1.4 mm.
import type { ComponentChildren } from "preact";

function Icon({ children }: { children: ComponentChildren }) {
  return (
    <svg class="icon" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      {children}
    </svg>
  );
}

/** Go on: every button that acts. */
export function ArrowIcon() {
  return (
    <Icon>
      <path d="M3 12h17M13 5l7 7-7 7" />
    </Icon>
  );
}

/** Stop: eight sides, known by its shape in any light. */
export function OctagonIcon() {
  return (
    <Icon>
      <path d="M8 2.5h8L21.5 8v8L16 21.5H8L2.5 16V8z" />
      <path d="M12 7v6M12 17v.1" />
    </Icon>
  );
}

/** A wait. */
export function HourglassIcon() {
  return (
    <Icon>
      <path d="M5 2.5h14M5 21.5h14M7 3c0 5 5 6 5 9s-5 4-5 9M17 3c0 5-5 6-5 9s5 4 5 9" />
    </Icon>
  );
}

/** Done, or chosen. */
export function TickIcon() {
  return (
    <Icon>
      <path d="M3.5 12.5l6 6.5L20.5 5" />
    </Icon>
  );
}

/** The tablet is listening. */
export function EarIcon() {
  return (
    <Icon>
      <path d="M6.5 10a5.8 5.8 0 0 1 11.6 0c0 4.5-4.6 5-4.6 8.5a3 3 0 0 1-5.7 1.3" />
      <path d="M10 10.5a2.3 2.3 0 0 1 4.6 0c0 1.6-1.8 2-1.8 3.6" />
    </Icon>
  );
}

/** The meal bell. */
export function BellIcon() {
  return (
    <Icon>
      <path d="M3 18h18M5 18c0-7 3-11 7-11s7 4 7 11M12 7V4M9.5 3.5h5M10 21.5h4" />
    </Icon>
  );
}

export type Shape = "circle" | "square" | "triangle" | "star";

const OUTLINES: Readonly<Record<Shape, string>> = {
  circle: "M12 2.5a9.5 9.5 0 1 0 0 19a9.5 9.5 0 1 0 0-19z",
  square: "M3 3h18v18H3z",
  triangle: "M12 2.5L22 21H2z",
  star: "M12 2l2.9 6.6l7.1.7l-5.4 4.7l1.6 7L12 17.3L5.8 21l1.6-7L2 9.3l7.1-.7z",
};

/** The shape that a person has for their own. */
export function ShapeIcon({ shape }: { shape: Shape }) {
  return (
    <Icon>
      <path d={OUTLINES[shape]} fill="currentColor" />
    </Icon>
  );
}
