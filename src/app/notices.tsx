// Lines that stay on top for as long as they are true.
import { Banner } from "#ui/banner.tsx";
import { BigButton } from "#ui/button.tsx";
import { frontPerson } from "#walk/offers.ts";
import type { HouseState } from "#walk/state.ts";
import { FIXED } from "#words/en/fixed.ts";
import { takeUpdate, updateReady } from "./update.ts";

export interface NoticesProps {
  house: HouseState;
  appSpeaks: boolean;
  hasVoice: boolean;
}

/** On a walk only what matters for it is shown: the rest waits for the kitchen screen. */
export function Notices({ house, appSpeaks, hasVoice }: NoticesProps) {
  const resting = frontPerson(house) === null;
  return (
    <>
      {resting && appSpeaks && !hasVoice ? <Banner kind="note" text={FIXED.noVoice} /> : null}
      {resting && updateReady.value ? <BigButton role="bar" label={FIXED.update} onPress={takeUpdate} /> : null}
    </>
  );
}
