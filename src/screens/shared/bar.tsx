// The five constant things of every screen of the person.
import { FiveThings } from "#ui/five-things.tsx";
import type { Shape } from "#ui/icons.tsx";
import { FIXED } from "#words/en/fixed.ts";
import { useBack } from "./hear.ts";

export interface Chrome {
  quiet: boolean;
  /** Whose walk this is, where more than one person could be meant. */
  who?: { shape: Shape; name: string } | undefined;
  onHelp(): void;
  onAgain(): void;
  onQuiet(): void;
  onBack(): void;
  onWrong(): void;
}

export function Bar({ chrome }: { chrome: Chrome }) {
  useBack(chrome.onBack);
  return (
    <FiveThings
      name={FIXED.constant}
      who={chrome.who}
      help={{ label: FIXED.help, onPress: chrome.onHelp }}
      again={{ label: FIXED.again, onPress: chrome.onAgain }}
      quiet={{ label: chrome.quiet ? FIXED.goOn : FIXED.quiet, onPress: chrome.onQuiet }}
      back={{ label: FIXED.back, onPress: chrome.onBack }}
      wrong={{ label: FIXED.wrong, onPress: chrome.onWrong }}
    />
  );
}
