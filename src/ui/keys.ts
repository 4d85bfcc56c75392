// Arrow keys walk from button to button, Escape is Back. Letters do nothing (WCAG 2.1.4).
import { useContext, useLayoutEffect, useRef } from "preact/hooks";
import { GuardContext } from "./guard-context.tsx";

export type Way = "left" | "right" | "up" | "down";

export interface Box {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

/**
 * Place of the next box from one box: the nearest that lies that way; if none does, the next or previous in order,
 * so that an arrow always moves and reaches everything. Pure.
 */
export function nextPlace(boxes: readonly Box[], from: number, way: Way): number {
  const here = boxes[from];
  const forward = way === "right" || way === "down";
  if (here === undefined) return forward ? 0 : boxes.length - 1;
  let best = -1;
  let least = Number.POSITIVE_INFINITY;
  boxes.forEach((box, place) => {
    const distance = distanceThatWay(here, box, way);
    if (place !== from && distance < least) {
      best = place;
      least = distance;
    }
  });
  return best >= 0 ? best : (from + (forward ? 1 : -1) + boxes.length) % boxes.length;
}

/** Along the way, plus double what lies aside; without end if the box does not lie that way. */
function distanceThatWay(from: Box, to: Box, way: Way): number {
  const along = { left: from.left - to.right, right: to.left - from.right, up: from.top - to.bottom, down: to.top - from.bottom }[way];
  if (along < 0 || from.right === from.left) return Number.POSITIVE_INFINITY;
  const sideways =
    way === "up" || way === "down" ? apart(from.left, from.right, to.left, to.right) : apart(from.top, from.bottom, to.top, to.bottom);
  return along + 2 * sideways;
}

function apart(aLow: number, aHigh: number, bLow: number, bHigh: number): number {
  return Math.max(0, bLow - aHigh, aLow - bHigh);
}

const ways: Readonly<Record<string, Way>> = { ArrowLeft: "left", ArrowRight: "right", ArrowUp: "up", ArrowDown: "down" };

/** Listens on the whole page. Text fields keep their arrows. */
export function useKeys({ onBack }: { onBack: () => void }): void {
  const guard = useContext(GuardContext);
  const back = useRef(onBack);
  back.current = onBack;
  useLayoutEffect(() => {
    const pressed = (event: KeyboardEvent) => {
      if (event.repeat) return;
      if (event.key === "Escape") {
        event.preventDefault();
        if (guard.allow("key Escape")) back.current();
        return;
      }
      const way = ways[event.key];
      if (way === undefined || keepsArrows(event.target)) return;
      event.preventDefault();
      step(way);
    };
    window.addEventListener("keydown", pressed);
    return () => window.removeEventListener("keydown", pressed);
  }, [guard]);
}

function step(way: Way): void {
  const buttons = [...document.querySelectorAll<HTMLButtonElement>("button.button")];
  const from = buttons.findIndex((button) => button.matches(":focus"));
  const next =
    buttons[
      nextPlace(
        buttons.map((button) => button.getBoundingClientRect()),
        from,
        way,
      )
    ];
  next?.focus();
}

function keepsArrows(target: EventTarget | null): boolean {
  return target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement;
}
