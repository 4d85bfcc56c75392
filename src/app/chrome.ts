// What the constant things do, pressed or said: Help, Again, Quiet, Back, Something is wrong; and louder, softer, slower, faster.
import type { Signal } from "@preact/signals";
import type { Prefs } from "#devices/prefs.ts";
import type { ShownBack } from "#screens/shared/hear.ts";
import type { Turns } from "#speech/turns.ts";
import type { Overlay } from "./overlays.ts";
import type { ChromeAct } from "./spoken-offers.ts";
import { type VoiceAct, voiceChange } from "./voice-setting.ts";

/** The desk, as far as these acts need it. */
export interface ChromeDesk {
  readonly overlay: Signal<Overlay>;
  readonly quiet: Signal<boolean>;
  readonly prefs: Signal<Prefs>;
  readonly shownBack: ShownBack;
  readonly turns: Turns;
  open(overlay: Exclude<Overlay, null>): void;
  close(): void;
  back(): void;
  change(prefs: Partial<Prefs>): void;
  sayLabel(text: string): void;
}

export function doChrome(act: ChromeAct, desk: ChromeDesk): void {
  switch (act) {
    case "help":
      if (desk.overlay.value === "help") desk.close();
      else desk.open("help");
      break;
    case "wrong":
      desk.open("wrong");
      break;
    case "voice":
    case "helper":
      desk.open(act);
      break;
    case "again":
      desk.turns.again();
      break;
    case "quiet":
    case "go on":
      desk.quiet.value = !desk.quiet.value;
      desk.turns.quiet(desk.quiet.value);
      break;
    case "back":
      // A small screen goes back to where it was opened, however Back was given.
      if (desk.shownBack.press) desk.shownBack.press();
      else desk.back();
      break;
    default:
      setVoice(act, desk);
  }
}

/** Confirmed by the question, said again at the new setting. */
function setVoice(act: VoiceAct, desk: ChromeDesk): void {
  const next = voiceChange(act, desk.prefs.value);
  if ("end" in next) desk.sayLabel(next.end);
  else {
    desk.change(next.change);
    desk.turns.again("question");
  }
}
