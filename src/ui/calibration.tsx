// The outline of a bank card to hold a real one against. Everything on the page grows and shrinks with it.
import { useState } from "preact/hooks";
import { BigButton } from "./button.tsx";
import { nextFit, startFit } from "./calibrate.ts";

export interface CalibrationProps {
  /** CSS pixels in one millimetre, as set now. */
  mmPx: number;
  /** Called at each step; the caller hands it to applyLook, which moves the outline. */
  onChange: (mmPx: number) => void;
  widerLabel: string;
  narrowerLabel: string;
  /** Text alternative of the outline. */
  outlineLabel: string;
}

export function Calibration({ mmPx, onChange, widerLabel, narrowerLabel, outlineLabel }: CalibrationProps) {
  const [fit, setFit] = useState(() => startFit(mmPx));
  const turn = (way: "wider" | "narrower") => {
    const next = nextFit(fit, way);
    setFit(next);
    onChange(next.mmPx);
  };
  return (
    <div class="calibration">
      <div class="calibration-card" role="img" aria-label={outlineLabel} />
      <div class="apart">
        <BigButton role="choice" label={narrowerLabel} onPress={() => turn("narrower")} />
        <BigButton role="choice" label={widerLabel} onPress={() => turn("wider")} />
      </div>
    </div>
  );
}
