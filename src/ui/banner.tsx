// A line that stays on top of a screen for as long as it is true: speech is off, the tablet listens, a bell waits.
import type { ComponentChildren } from "preact";

export interface BannerProps {
  text: string;
  /** note: card with a side bar. wait: filled. stop: thick outline. */
  kind: "note" | "wait" | "stop";
  icon?: ComponentChildren;
}

export function Banner({ text, kind, icon }: BannerProps) {
  return (
    <p class={`banner banner-${kind}`}>
      {icon}
      <span>{text}</span>
    </p>
  );
}
