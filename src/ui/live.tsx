// What a screen reader is told without moving the focus (WCAG 4.1.3). Both regions are on the page from the start;
// while the app itself speaks they stay empty, so that two voices never talk at once.
import { useEffect, useState } from "preact/hooks";

export interface LiveProps {
  /** app: we speak. reader: a screen reader speaks. text: nobody does. */
  voice: "app" | "reader" | "text";
  status: string;
  /** Only for what must not wait. */
  alert?: string;
}

const settleMs = 100;

export function Live({ voice, status, alert = "" }: LiveProps) {
  const spoken = voice === "reader";
  return (
    <>
      <div class="for-ears" role="status">
        {useSettled(spoken ? status : "")}
      </div>
      <div class="for-ears" role="alert">
        {useSettled(spoken ? alert : "")}
      </div>
    </>
  );
}

/** Empties the region first, then fills it: readers miss a text that is swapped for another. */
function useSettled(text: string): string {
  const [shown, show] = useState("");
  useEffect(() => {
    show("");
    if (text === "") return;
    const timer = setTimeout(() => show(text), settleMs);
    return () => clearTimeout(timer);
  }, [text]);
  return text === "" ? "" : shown;
}
