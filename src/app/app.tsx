// The page: one screen at a time, chosen from what is true now.
import type { ComponentChildren } from "preact";
import { useCallback, useContext, useEffect, useState } from "preact/hooks";
import { HelperScreen } from "#screens/kitchen/helper-screen.tsx";
import { KitchenScreen, type KitchenView } from "#screens/kitchen/kitchen-screen.tsx";
import type { Typing } from "#screens/kitchen/walk-screen.tsx";
import type { Chrome } from "#screens/shared/bar.tsx";
import { BackContext, type HearableScreen, HearContext } from "#screens/shared/hear.ts";
import { HelpScreen, WrongScreen } from "#screens/shared/overlay.tsx";
import { VoiceScreen } from "#screens/shared/voice-screen.tsx";
import { Banner } from "#ui/banner.tsx";
import { GuardContext, watchFingers } from "#ui/guard-context.tsx";
import { BellIcon, EarIcon } from "#ui/icons.tsx";
import { useKeys } from "#ui/keys.ts";
import { Live } from "#ui/live.tsx";
import { biggerThan } from "#ui/look.ts";
import { ScreenMark } from "#ui/screen-mark.tsx";
import { usualScan } from "#ui/switch-scan.ts";
import { useSwitchScan } from "#ui/use-switch-scan.ts";
import { whoCalls } from "#walk/helper-case.ts";
import { callers, frontPerson, offers } from "#walk/offers.ts";
import { sceneKey } from "#walk/scene-key.ts";
import { type HouseState, stepOf } from "#walk/state.ts";
import { FIXED, HELP, IN_THE_WAY } from "#words/en/fixed.ts";
import { numbersToCall, sayCaller } from "#words/en/kitchen.ts";
import { PRACTICE } from "#words/en/practice.ts";
import type { Desk } from "./desk.ts";
import { APP_VERSION } from "./version.ts";
import { youCanSay } from "./you-can-say.ts";

export interface AppProps {
  desk: Desk;
  hasTones(): boolean;
  /** Extra lines that stay on top: no voice, no saving, an update, the demo household. */
  notices: ComponentChildren;
  dayBook(close: () => void): ComponentChildren;
  drawer(close: () => void): ComponentChildren;
  /** Begins a walk for practice. null: this is one. */
  practise: ((person: string) => void) | null;
}

export function App(props: AppProps) {
  const { desk } = props;
  const register = useCallback((screen: HearableScreen | null) => desk.hearable(screen), [desk]);
  return (
    <HearContext.Provider value={register}>
      <BackContext.Provider value={desk.shownBack}>
        <ScreenMark.Provider value={props.practise ? null : PRACTICE.banner}>
          <Now {...props} />
        </ScreenMark.Provider>
      </BackContext.Provider>
    </HearContext.Provider>
  );
}

function Now({ desk, hasTones, notices, dayBook, drawer, practise }: AppProps) {
  const guard = useContext(GuardContext);
  useEffect(() => watchFingers(window, guard), [guard]);
  useEffect(() => {
    const touch = () => {
      desk.turns.touch();
      desk.talk.forget();
    };
    window.addEventListener("pointerdown", touch, true);
    window.addEventListener("keydown", touch, true);
    return () => {
      window.removeEventListener("pointerdown", touch, true);
      window.removeEventListener("keydown", touch, true);
    };
  }, [desk]);
  useKeys({ onBack: () => desk.chrome("back") });

  useSwitchScan({
    on: desk.prefs.value.oneSwitch,
    settings: usualScan,
    buttonsKey: `${sceneKey(desk.state.value, desk.now.value)} ${desk.overlay.value ?? ""} ${desk.refusal.value?.heading ?? ""}`,
    say: (text) => desk.sayLabel(text),
  });

  const house = desk.state.value;
  const now = desk.now.value;
  const prefs = desk.prefs.value;
  const overlay = desk.overlay.value;
  const walk = desk.walkPart.here.value;
  const me = frontPerson(house);
  const [views, setViews] = useState<readonly KitchenView[]>([]);
  const [typing, setTyping] = useState<Typing | null>(null);
  const inWalk = me !== null;
  useEffect(() => {
    if (inWalk) setViews([]);
  }, [inWalk]);
  const list = offers(house, now);
  const saying = desk.saying.value;
  const speaking = saying?.of === "sentences" ? saying.index : -1;
  const focusHeading = prefs.voice === "screen reader";
  const chrome: Chrome = {
    quiet: desk.quiet.value,
    who: me && Object.keys(house.people).length > 1 ? { shape: me.person.shape, name: me.person.name } : undefined,
    onHelp: () => desk.chrome("help"),
    onAgain: () => desk.chrome("again"),
    onQuiet: () => desk.chrome("quiet"),
    onBack: () => desk.back(),
    onWrong: () => desk.chrome("wrong"),
  };
  const others = callers(house, now);
  // A sentence that is no line of the screen is shown all the same: a reprompt, the count, a call.
  const shown = !saying || saying.of === "sentences" || (!practise && saying.sentence.text === PRACTICE.banner);
  const aside = !shown ? <Banner kind="note" text={saying.sentence.text} /> : null;
  const ear = desk.room.value ? IN_THE_WAY[desk.room.value][0] : desk.listening.value ? FIXED.listening : null;
  const bannerOf = (calling: typeof others) => (
    <>
      {notices}
      {calling.map((p) => (
        <Banner key={p.person.id} kind="wait" icon={<BellIcon />} text={sayCaller(house, p, now)} />
      ))}
      {tonesDue(house) && !hasTones() ? <Banner kind="wait" icon={<BellIcon />} text={FIXED.soundOff} /> : null}
      {desk.walkPart.needed.value ? <Banner kind="wait" text={FIXED.walkComes} /> : null}
      {aside}
      {ear && !aside ? <Banner kind="note" icon={<EarIcon />} text={ear} /> : null}
    </>
  );
  // Over a low that needs help stands nothing of lower rank (walk/alerts.ts); it still sounds, and is said, in its turn.
  const banner = bannerOf(me?.walk?.low?.callRaised ? others.filter((p) => p.walk?.low?.callRaised) : others);
  const close = () => desk.close();
  const common = {
    house,
    offers: list,
    chrome,
    speaking,
    focusHeading,
    onClose: close,
    onAnswered: () => desk.close("all"),
    onIntent: (intent: Parameters<Desk["send"]>[0]) => void desk.send(intent),
  };

  if (overlay === "day book") return <>{dayBook(close)}</>;
  if (overlay === "drawer") return <>{drawer(close)}</>;
  if (overlay === "voice")
    return (
      <VoiceScreen
        chrome={chrome}
        speaking={speaking}
        focusHeading={focusHeading}
        onChoose={(voice) => {
          desk.change({ voice, chose: true });
          close();
        }}
        onBack={close}
      />
    );
  if (overlay === "about" && walk)
    return <walk.AboutScreen chrome={chrome} speaking={speaking} focusHeading={focusHeading} version={APP_VERSION} onBack={close} />;
  const calling = whoCalls(house, now);
  const helped = calling ?? me ?? Object.values(house.people)[0];
  if (overlay === "helper" && helped)
    return (
      <HelperScreen house={house} me={helped} now={now} focusHeading={focusHeading} chrome={chrome} banner={notices} onClose={close} />
    );
  if (overlay === "practice" && walk && practise)
    return (
      <walk.PracticeScreen
        house={house}
        chrome={chrome}
        speaking={speaking}
        focusHeading={focusHeading}
        onBegin={(person) => {
          desk.close("all");
          practise(person);
        }}
        onBack={close}
      />
    );
  if (overlay === "wrong") return <WrongScreen {...common} numbers={numbersToCall(house)} />;
  if (overlay === "help") {
    return (
      <HelpScreen
        {...common}
        inWalk={inWalk}
        lines={me?.walk ? [...HELP[stepOf(me.walk)], ...youCanSay(list, house)] : [FIXED.kitchenHelp, FIXED.voiceHelp]}
        acts={{
          bigger: () => desk.change({ k: biggerThan(prefs.k) }),
          theme: () => desk.change({ theme: prefs.theme === "dark" ? "light" : "dark" }),
          dark: prefs.theme === "dark",
          louder: () => desk.chrome("louder"),
          softer: () => desk.chrome("softer"),
          faster: () => desk.chrome("faster"),
          slower: () => desk.chrome("slower"),
          voice: () => desk.open("voice"),
          oneSwitch: () => desk.change({ oneSwitch: !prefs.oneSwitch }),
          scanning: prefs.oneSwitch,
          drawer: () => desk.open("drawer"),
          dayBook: () => desk.open("day book"),
          about: () => desk.open("about"),
          practice: () => desk.open("practice"),
        }}
      />
    );
  }
  const say = desk.say();
  const asked = desk.asked.value;
  return (
    <>
      <Live
        voice={prefs.voice === "screen reader" ? "reader" : prefs.voice === "silent" ? "text" : "app"}
        status={(asked?.lines ?? say.lines).join(" ")}
        alert={desk.refusal.value?.heading ?? ""}
      />
      {walk && asked ? (
        <walk.NumberScreen asked={asked} chrome={chrome} speaking={speaking} focusHeading={focusHeading} banner={banner} />
      ) : me && walk ? (
        <walk.WalkScreen
          {...common}
          now={now}
          say={say}
          screenKey={sceneKey(house, now)}
          refusal={desk.refusal.value}
          banner={banner}
          foodSaid={desk.foodSaid.value}
          onHelper={calling ? () => desk.open("helper") : null}
          padFor={desk.askedNumber.padFor()}
          typing={typing}
          onTyping={setTyping}
        />
      ) : (
        <KitchenScreen
          {...common}
          now={now}
          banner={banner}
          restBanner={bannerOf([])}
          views={views}
          onViews={setViews}
          noted={desk.noted.value}
          onRead={() => {
            desk.noted.value = null;
          }}
          onDayBook={() => desk.open("day book")}
          onDrawer={() => desk.open("drawer")}
          onHelper={() => desk.open("helper")}
        />
      )}
    </>
  );
}

/** Does anybody wait for a tone: the end of a wait, the meal bell, the call for a low? */
const tonesDue = (house: HouseState): boolean =>
  Object.values(house.people).some(({ bell, walk }) => bell !== null || walk?.wait || walk?.low);
