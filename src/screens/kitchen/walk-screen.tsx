// Any step of a walk, drawn from its words and its offers. It knows no step by name but the plate and the place.
import type { ComponentChildren } from "preact";
import { useEffect, useState } from "preact/hooks";
import type { Intent } from "#events/intent.ts";
import type { Stamp } from "#events/stamp.ts";
import type { NumberSlot } from "#events/told.ts";
import { Bar, type Chrome } from "#screens/shared/bar.tsx";
import { BigButton } from "#ui/button.tsx";
import { Countdown } from "#ui/countdown.tsx";
import { Screen } from "#ui/screen.tsx";
import { type Offer, waitLeft } from "#walk/context.ts";
import { frontPerson } from "#walk/offers.ts";
import { type HouseState, stepOf } from "#walk/state.ts";
import { FIXED, PAD_BUTTON } from "#words/en/fixed.ts";
import { HELPER } from "#words/en/helper.ts";
import { labelOf } from "#words/en/labels.ts";
import type { SayRefusal } from "#words/en/refusals.ts";
import type { Say } from "#words/say.ts";
import { allBrief, anyLong, ChoicesScreen } from "./choices-screen.tsx";
import { PadScreen } from "./pad-screen.tsx";
import { PlaceDrawing } from "./place-drawing.tsx";
import { PlateStep } from "./plate-step.tsx";

/** An open number pad and what was typed on it, for the screen of this key. */
export interface Typing {
  key: string;
  slot: NumberSlot;
  text: string;
}

export interface WalkScreenProps {
  house: HouseState;
  now: Stamp;
  say: Say;
  screenKey: string;
  offers: readonly Offer[];
  refusal: SayRefusal | null;
  /** Place of the sentence being spoken, or -1. */
  speaking: number;
  focusHeading: boolean;
  chrome: Chrome;
  banner: ComponentChildren;
  /** A food somebody named aloud while the plate is filled. */
  foodSaid: { text: string } | null;
  /** The number is to be pressed now, since it was not heard: its pad stands open. */
  padFor: NumberSlot | null;
  /** While something calls: the page for whoever comes. */
  onHelper: (() => void) | null;
  /** Kept by the page: Help over a half-typed number loses nothing. */
  typing: Typing | null;
  onTyping(next: Typing | null | ((now: Typing | null) => Typing | null)): void;
  onIntent(intent: Intent): void;
}

type Press = Extract<Offer, { offer: "press" }>;

const keyOf = (intent: Intent): string => JSON.stringify(intent);

export function WalkScreen(props: WalkScreenProps) {
  const { house, say, offers, refusal, onIntent, chrome } = props;
  const { screenKey, typing, onTyping } = props;
  const pad = typing?.key === screenKey ? typing.slot : null;
  const openPad = (slot: NumberSlot) => onTyping({ key: screenKey, slot, text: "" });
  const [others, openOthers] = useState(false);
  useEffect(() => {
    openOthers(false);
    // A number that was turned down is typed anew.
    if (typing && typing.key !== screenKey) onTyping(null);
  }, [screenKey]);
  useEffect(() => {
    if (props.padFor !== null && pad !== props.padFor) openPad(props.padFor);
  }, [props.padFor, screenKey]);
  const slots = offers.flatMap((o) => (o.offer === "number" ? [o.slot] : []));
  const asksClock = offers.some((o) => o.offer === "press" && o.intent.do === "agree clock");
  // Day and time stand in four lines: all but Yes and No waits for the next screen, or stands under "Something is wrong".
  const answers = offers.filter(
    (o): o is Press =>
      o.offer === "press" &&
      (o.role === "main" || o.role === "choice" || o.role === "no") &&
      (!asksClock || o.intent.do === "agree clock" || o.intent.do === "doubt clock"),
  );
  const wrongs = offers.filter(
    (o): o is Press => o.offer === "press" && o.role === "wrong" && o.intent.do !== "report" && o.intent.do !== "open low",
  );
  // With many answers it is one press away, under "Something is wrong".
  const shownWrongs = asksClock ? [] : answers.length > 3 ? wrongs.filter((o) => o.intent.do !== "danger signs") : wrongs;
  const stop = offers.filter((o): o is Press => o.offer === "press" && o.role === "stop");
  const me = frontPerson(house);
  const walk = me?.walk ?? null;

  if (pad !== null && slots.includes(pad)) {
    return (
      <PadScreen
        {...props}
        slot={pad}
        text={typing?.text ?? ""}
        onText={(change) => onTyping((was) => ({ key: screenKey, slot: pad, text: change(was?.text ?? "") }))}
        onClose={() => onTyping(null)}
      />
    );
  }
  if (offers.some((o) => o.offer === "foods") && me) {
    return <PlateStep {...props} me={me} onPad={openPad} />;
  }

  const shownStops = stop.filter((o) => o.intent.do !== "leave" || answers.length + slots.length === 0);
  const hasMain = answers.some((a) => a.role === "main");
  // At the window no answer stands out: nought has its own button, and is the usual one.
  const roleOf = (slot: NumberSlot) => (hasMain || slot === "left in window" ? "choice" : "main");
  const pads = slots.map((slot): Act => ({ key: slot, label: PAD_BUTTON[slot], role: roleOf(slot), press: () => openPad(slot) }));
  const all: Act[] = [
    ...[...shownStops, ...shownWrongs].map((o) => button(o, house, onIntent)),
    ...(hasMain ? pads : []),
    ...answers.filter((o) => o.role !== "main").map((o) => button(o, house, onIntent)),
    ...(hasMain ? [] : pads),
    ...answers.filter((o) => o.role === "main").map((o) => button(o, house, onIntent)),
  ];
  const helper: Act[] = props.onHelper ? [{ key: "helper", label: HELPER.button, role: "choice", press: props.onHelper }] : [];
  // What is asked now, or is to be called, comes before a wait that runs beside it.
  const left = walk?.wait && !asksClock && !say.big ? Math.ceil(waitLeft(walk, props.now, house.doubt === null) / 1000) : null;
  const { actions, rest } = split(helper, all, left !== null && left > SECONDS_TOLD);
  if (others && rest.length > 0) {
    const buttons = rest.map((b) => ({ label: b.label, press: b.press }));
    return (
      <ChoicesScreen
        title={say.title}
        speaking={-1}
        focusHeading={props.focusHeading}
        chrome={{ ...chrome, onBack: () => openOthers(false) }}
        buttons={buttons}
        banner={props.banner}
      />
    );
  }
  const more =
    rest.length > 0
      ? [
          {
            key: "others",
            label: walk?.offered && !walk.place ? FIXED.anotherPlace : FIXED.otherAnswers,
            role: "choice" as const,
            press: () => openOthers(true),
          },
        ]
      : [];
  const lines = refusal ? [refusal.got, refusal.wrong, refusal.todo] : say.lines;
  const sentences = lines.map((text, i) => ({ text, current: i === props.speaking }));
  return (
    <Screen
      title={refusal ? refusal.heading : say.title}
      screenKey={props.screenKey}
      bar={<Bar chrome={chrome} />}
      sentences={sentences}
      moreLabel={FIXED.readOn}
      focusHeading={props.focusHeading}
      banner={props.banner}
      side={sideOf(say, left, house, props.now, props.onHelper !== null)}
      hideTitle={refusal === null && (actions.length + more.length > 2 || say.lines.length > 2)}
      dense={anyLong(actions.map((b) => b.label))}
      brief={allBrief([...more, ...actions].map((b) => b.label))}
      actions={[...more, ...actions].map((b) => <BigButton key={b.key} label={b.label} role={b.role} onPress={b.press} />)}
    />
  );
}

function button(o: Press, house: HouseState, onIntent: (intent: Intent) => void): Act {
  const role = o.role === "main" ? "main" : o.role === "stop" || o.role === "wrong" ? "stop" : "choice";
  return { key: keyOf(o.intent), label: labelOf(o.intent, house).shown, role, press: () => onIntent(o.intent) };
}

/** A longer wait is told in minutes: seconds that run calm nobody, and their figures would cover the words. */
const SECONDS_TOLD = 99;

/** A drawing, a countdown or the one number of the screen, where there is one. */
function sideOf(say: Say, left: number | null, house: HouseState, now: Stamp, helped: boolean): ComponentChildren {
  const me = frontPerson(house);
  const walk = me?.walk;
  if (walk && me && stepOf(walk) === "place" && walk.offered)
    return <PlaceDrawing spot={walk.offered.spot} me={me} now={house.doubt === null ? now.wall : null} title={say.title} />;
  // Once it is over, the tone and the words say so: a big nought would be read as a number to act on.
  if (left !== null && left > SECONDS_TOLD)
    return (
      <p class="big-number" role="timer" aria-live="off">
        <span class="big-value">{Math.ceil(left / 60)}</span> <span class="big-unit">minutes {FIXED.left}</span>
      </p>
    );
  if (left !== null && left > 0) return <Countdown secondsLeft={left} words={`${left} seconds ${FIXED.left}`} />;
  // With the page for the helper there are three answers; the number stands in the words, and they need the room.
  if (!say.big || helped) return null;
  return (
    <p class="big-number">
      <span class="big-value">{say.big.value}</span> <span class="big-unit">{say.big.unit}</span>
    </p>
  );
}

interface Act {
  key: string;
  label: string;
  role: "main" | "choice" | "stop";
  press(): void;
}

/**
 * Four buttons fit, or two beside a long wait. Of more, the main one stays, or the first three, and the page for the helper before them;
 * the others are one press away. By voice all are heard.
 */
function split(first: readonly Act[], all: readonly Act[], waits: boolean): { actions: readonly Act[]; rest: readonly Act[] } {
  if (first.length + all.length <= (waits ? 2 : 4)) return { actions: [...first, ...all], rest: [] };
  const mains = all.filter((a) => a.role === "main");
  if (mains.length > 0) return { actions: [...first, ...mains], rest: all.filter((a) => a.role !== "main") };
  const room = 3 - first.length;
  return { actions: [...first, ...all.slice(0, room)], rest: all.slice(room) };
}
