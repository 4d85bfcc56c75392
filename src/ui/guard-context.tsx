// Hands the one guard of the page to every control, and tells it about every finger on the glass.
import { type ComponentChildren, createContext } from "preact";
import { useEffect } from "preact/hooks";
import { type Guard, makeGuard } from "./guards.ts";

export const GuardContext = createContext<Guard>(makeGuard(() => performance.now()));

export interface GuardProviderProps {
  guard: Guard;
  children: ComponentChildren;
}

export function GuardProvider({ guard, children }: GuardProviderProps) {
  useEffect(() => watchFingers(window, guard), [guard]);
  return <GuardContext.Provider value={guard}>{children}</GuardContext.Provider>;
}

/** Listens before any control does, so that a palm on bare glass is known too. Returns the way to stop. */
export function watchFingers(target: Window, guard: Guard): () => void {
  const down = (event: PointerEvent) => guard.fingerDown(event.pointerId);
  const up = (event: PointerEvent) => guard.fingerUp(event.pointerId);
  const gone = () => guard.fingersGone();
  target.addEventListener("pointerdown", down, true);
  target.addEventListener("pointerup", up, true);
  target.addEventListener("pointercancel", up, true);
  target.addEventListener("blur", gone);
  return () => {
    target.removeEventListener("pointerdown", down, true);
    target.removeEventListener("pointerup", up, true);
    target.removeEventListener("pointercancel", up, true);
    target.removeEventListener("blur", gone);
  };
}
