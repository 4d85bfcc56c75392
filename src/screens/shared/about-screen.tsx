// About the app: not a medical device, its version, and whose food tables it uses.
import { TurnedScreen } from "#screens/kitchen/choices-screen.tsx";
import { ABOUT_SHOWN, aboutSaid } from "#words/en/about.ts";
import { FIXED } from "#words/en/fixed.ts";
import type { Chrome } from "./bar.tsx";
import { useHearable } from "./hear.ts";

export interface AboutScreenProps {
  version: string;
  chrome: Chrome;
  speaking: number;
  focusHeading: boolean;
  onBack(): void;
}

export function AboutScreen({ version, chrome, onBack, speaking, focusHeading }: AboutScreenProps) {
  const said = aboutSaid(version);
  const buttons = [{ label: FIXED.ok, role: "main" as const, press: onBack }];
  useHearable({ title: FIXED.about, lines: said, buttons }, false);
  return (
    <TurnedScreen
      title={FIXED.about}
      lines={[...said, ...ABOUT_SHOWN]}
      chrome={{ ...chrome, onBack }}
      speaking={speaking}
      focusHeading={focusHeading}
      buttons={buttons}
    />
  );
}
