// The one button of the person's screens. Shape, word and place carry the meaning; colour only repeats it.
import type { ComponentChildren } from "preact";
import { ArrowIcon, HourglassIcon, OctagonIcon, TickIcon } from "./icons.tsx";
import { usePress } from "./press.ts";

/**
 * main: filled, arrow: the one thing that goes on. choice: outlined card. stop: outlined, octagon.
 * bar: one of the five things always there. wait: filled, hourglass, its label names the time in words.
 */
export type ButtonRole = "main" | "choice" | "stop" | "bar" | "wait";

export interface BigButtonProps {
  label: string;
  onPress: () => void;
  role: ButtonRole;
  /** Replaces the drawing that belongs to the role; null for none. */
  icon?: ComponentChildren;
  /** Id of the element that says more. */
  describedBy?: string;
  /** For a button that stays chosen: adds a tick and says so to screen readers. */
  pressed?: boolean;
  /** Where one-switch scanning starts: the button that can do no harm. */
  safe?: boolean;
  /** Breaks the label at its middle, where room across is short. */
  twoLines?: boolean;
}

/** Longer labels take two lines at the largest size, or three: there their letters stop growing, for the sake of the words above. */
const LONG_LABEL = 10;

export function BigButton(props: BigButtonProps) {
  const { label, onPress, role, describedBy, pressed, safe, twoLines } = props;
  const press = usePress(onPress);
  const icon = pressed ? <TickIcon /> : props.icon === undefined ? iconOf(role) : props.icon;
  return (
    <button
      type="button"
      class={`button button-${role}${label.length > LONG_LABEL ? " button-long" : ""}`}
      aria-describedby={describedBy}
      aria-pressed={pressed}
      data-safe={safe ? "yes" : undefined}
      {...press}
    >
      {icon}
      <span class="button-label">{twoLines ? halves(label) : label}</span>
    </button>
  );
}

/** The label in two parts, split at the space nearest its middle; the space stays, for whoever hears the name. */
function halves(label: string): ComponentChildren {
  const middle = label.length / 2;
  const spaces = [...label.matchAll(/ /g)].map((space) => space.index);
  const nearest = spaces.toSorted((a, b) => Math.abs(a - middle) - Math.abs(b - middle))[0];
  if (nearest === undefined) return label;
  return (
    <>
      <span class="half">{label.slice(0, nearest)}</span> <span class="half">{label.slice(nearest + 1)}</span>
    </>
  );
}

function iconOf(role: ButtonRole): ComponentChildren {
  switch (role) {
    case "main":
      return <ArrowIcon />;
    case "stop":
      return <OctagonIcon />;
    case "wait":
      return <HourglassIcon />;
    case "choice":
    case "bar":
      return null;
  }
}
