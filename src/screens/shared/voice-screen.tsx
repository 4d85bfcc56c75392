// Who speaks: chosen before anything talks, changeable from Help. A page cannot tell whether a screen reader runs, so it asks.

import { ChoicesScreen } from "#screens/kitchen/choices-screen.tsx";
import { FIXED } from "#words/en/fixed.ts";
import type { Chrome } from "./bar.tsx";

export interface VoiceScreenProps {
  chrome: Chrome;
  speaking: number;
  focusHeading: boolean;
  onChoose(voice: "speaks and listens" | "speaks" | "screen reader" | "silent"): void;
  onBack(): void;
}

export function VoiceScreen({ onChoose, onBack, chrome, ...rest }: VoiceScreenProps) {
  return (
    <ChoicesScreen
      {...rest}
      chrome={{ ...chrome, onBack }}
      title={FIXED.voiceMode}
      buttons={[
        { label: FIXED.textOnly, press: () => onChoose("silent") },
        { label: FIXED.readerSpeaks, press: () => onChoose("screen reader") },
        { label: FIXED.appSpeaksOnly, press: () => onChoose("speaks") },
        { label: FIXED.appSpeaks, role: "main", press: () => onChoose("speaks and listens") },
      ]}
    />
  );
}
