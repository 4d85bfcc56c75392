// One press, however it comes: finger, mouse, key, switch or screen reader.
// A press acts on lift, and only if it began on the same control (WCAG 2.5.2). A finger that trembles sideways while it
// is down still counts as long as it lifts on the control or within 4 mm of it: browsers drop such taps by themselves.
import { useContext, useId, useRef } from "preact/hooks";
import { GuardContext } from "./guard-context.tsx";
import type { PressKind } from "./guards.ts";

const slopMm = 4;

export interface PressHandlers {
  onPointerDown(event: PointerEvent): void;
  onPointerUp(event: PointerEvent): void;
  onPointerLeave(event: PointerEvent): void;
  onPointerCancel(event: PointerEvent): void;
  onClick(event: MouseEvent): void;
  onKeyDown(event: KeyboardEvent): void;
  onKeyUp(event: KeyboardEvent): void;
  onBlur(): void;
}

export function usePress(onPress: () => void, kind: PressKind = "act"): PressHandlers {
  const guard = useContext(GuardContext);
  const control = useId();
  const finger = useRef<number | null>(null);
  const key = useRef<string | null>(null);
  // True from a pointer going down until its own click: that click is an echo of a lift already judged.
  const echo = useRef(false);
  const act = () => {
    if (guard.allow(control, kind)) onPress();
  };
  return {
    onPointerDown(event) {
      echo.current = true;
      finger.current = event.button <= 0 && guard.leads(event.pointerId) ? event.pointerId : null;
      if (finger.current !== null) frame(event, true);
    },
    onPointerUp(event) {
      frame(event, false);
      const began = finger.current === event.pointerId;
      finger.current = null;
      if (began && liftedOn(event)) act();
    },
    onPointerLeave(event) {
      frame(event, false);
    },
    onPointerCancel(event) {
      frame(event, false);
      finger.current = null;
      echo.current = false;
    },
    onClick(event) {
      const isEcho = echo.current && event.detail > 0;
      echo.current = false;
      if (!isEcho) act();
    },
    onKeyDown(event) {
      if (!isPressKey(event)) return;
      // Stops the browser's own click, which comes on the way down and again on every repeat.
      event.preventDefault();
      if (!event.repeat) key.current = event.key;
    },
    onKeyUp(event) {
      if (!isPressKey(event)) return;
      event.preventDefault();
      const began = key.current === event.key;
      key.current = null;
      if (began) act();
    },
    onBlur() {
      key.current = null;
    },
  };
}

/** The frame of a button that is held down. */
function frame(event: PointerEvent, down: boolean): void {
  if (event.currentTarget instanceof HTMLElement) event.currentTarget.toggleAttribute("data-down", down);
}

function isPressKey(event: KeyboardEvent): boolean {
  return event.key === "Enter" || event.key === " ";
}

function liftedOn(event: PointerEvent): boolean {
  const control = event.currentTarget;
  if (!(control instanceof Element)) return false;
  const box = control.getBoundingClientRect();
  const slop = slopMm * mmPx(control);
  const { clientX: x, clientY: y } = event;
  return x >= box.left - slop && x <= box.right + slop && y >= box.top - slop && y <= box.bottom + slop;
}

function mmPx(element: Element): number {
  const px = Number.parseFloat(getComputedStyle(element).getPropertyValue("--mm"));
  return Number.isFinite(px) ? px : 5.9;
}
