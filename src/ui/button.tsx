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
}

export function BigButton(props: BigButtonProps) {
  const { label, onPress, role, describedBy, pressed, safe } = props;
  const press = usePress(onPress);
  const icon = pressed ? <TickIcon /> : props.icon === undefined ? iconOf(role) : props.icon;
  return (
    <button
      type="button"
      class={`button button-${role}`}
      aria-describedby={describedBy}
      aria-pressed={pressed}
      data-safe={safe ? "yes" : undefined}
      {...press}
    >
      {icon}
      <span class="button-label">{label}</span>
    </button>
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
