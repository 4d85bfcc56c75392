// The outline of a bank card to hold a real one against. Until it fits, no millimetre on the page is a true one, so this
// page alone is laid out by the size of the window; only the outline follows the millimetre that is tried.
import { useLayoutEffect, useRef, useState } from "preact/hooks";
import { BigButton } from "./button.tsx";
import { nextFit, startFit } from "./calibrate.ts";

export interface CalibrationProps {
  /** CSS pixels in one millimetre, as set now. */
  mmPx: number;
  /** Takes the millimetre that fitted; the caller hands it to applyLook. */
  onDone: (mmPx: number) => void;
  onBack: () => void;
  title: string;
  /** What to do, in one or two sentences. */
  todo: string;
  /** Text alternative of the outline. */
  outlineLabel: string;
  backLabel: string;
  narrowerLabel: string;
  widerLabel: string;
  doneLabel: string;
}

export function Calibration(props: CalibrationProps) {
  const [fit, setFit] = useState(() => startFit(props.mmPx));
  const card = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => card.current?.style.setProperty("--try", `${fit.mmPx}px`), [fit]);
  return (
    <main class="calibration">
      <div>
        <h1>{props.title}</h1>
        <p>{props.todo}</p>
      </div>
      <div class="calibration-card" ref={card} role="img" aria-label={props.outlineLabel} />
      <div class="calibration-actions">
        <BigButton role="bar" label={props.backLabel} onPress={props.onBack} safe />
        <BigButton role="choice" label={props.narrowerLabel} onPress={() => setFit(nextFit(fit, "narrower"))} />
        <BigButton role="choice" label={props.widerLabel} onPress={() => setFit(nextFit(fit, "wider"))} />
        <BigButton role="main" label={props.doneLabel} onPress={() => props.onDone(fit.mmPx)} />
      </div>
    </main>
  );
}
