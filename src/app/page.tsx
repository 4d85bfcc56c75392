// The page of an open household: the app, with the day book and the drawer behind it.
import { v7 as newId } from "uuid";
import { DEMO_PIN } from "#demo-data/household.ts";
import { chanceBytes } from "#devices/chance.ts";
import { MOST_PICTURE } from "#events/happened-house.ts";
import type { LogPort } from "#events/log-port.ts";
import { CODE_SIGNS, codeFrom } from "#keeping/recovery.ts";
import { localParts } from "#rules/time/local.ts";
import type { EarTrial } from "#screens/drawer/ports.ts";
import { App } from "./app.tsx";
import { cardHash } from "./card-hash.ts";
import type { Desk } from "./desk.ts";
import { emptyDemo, showDemo, startOwn } from "./home.ts";
import { later } from "./later.tsx";
import { Notices } from "./notices.tsx";
import type { Practice } from "./practice.ts";

const DayBook = later(async () => (await import("#screens/daybook/day-book-screen.tsx")).DayBookScreen);
const Drawer = later(async () => (await import("#screens/drawer/drawer-screen.tsx")).DrawerScreen);
const First = later(async () => (await import("#screens/first/first-screen.tsx")).FirstScreen);

export interface PageProps {
  desk: Desk;
  practice: Practice;
  log: LogPort;
  hasVoice(): boolean;
  hasTones(): boolean;
  /** The ears, for a keeper who tries them. */
  trial: EarTrial;
}

export function Page({ desk, practice, log, hasVoice, hasTones, trial }: PageProps) {
  const house = desk.state.value;
  const prefs = desk.prefs.value;
  const speaks = prefs.voice === "speaks" || prefs.voice === "speaks and listens";
  const demo = house.household?.kind === "demo";
  const drawer = (close: () => void) => (
    <Drawer
      house={house}
      now={desk.now.value}
      today={localParts(desk.now.value.wall, desk.now.value.offset).date}
      prefs={{ mm: prefs.mm, k: prefs.k, theme: prefs.theme }}
      onPrefs={(change) => desk.change(change)}
      keep={(facts) => desk.house.keep(facts)}
      hashCard={cardHash}
      hashPin={async (pin) => (await import("#devices/pin.ts")).hashPin(pin)}
      checkPin={async (pin, kept) => (await import("#devices/pin.ts")).checkPin(pin, kept)}
      tries={{ wrong: prefs.pinWrong, at: prefs.pinAt }}
      onTries={({ wrong, at }) => desk.change({ pinWrong: wrong, pinAt: at })}
      newId={() => newId()}
      smallPicture={async (file) => (await import("#devices/photo.ts")).smallPicture(file, MOST_PICTURE)}
      pictureIn={async (row) => {
        const [found] = await log.readAfter(row - 1, 1);
        return found?.readable && found.event.type === "card photographed" ? found.event.picture : null;
      }}
      newCode={() => codeFrom(chanceBytes(CODE_SIGNS))}
      ear={trial}
      onClose={close}
      rowsBetween={(from, to) => log.readBetween(from, to)}
      onPractise={() => {
        close();
        desk.open("practice");
      }}
      {...(demo
        ? { demoPin: DEMO_PIN, onStartOwn: () => void startOwn(() => log.close()), onEmptyDemo: () => void emptyDemo(() => log.close()) }
        : {})}
    />
  );
  if (house.household === null && desk.overlay.value !== "drawer") return <First onDemo={showDemo} onOwn={() => desk.open("drawer")} />;
  const practised = practice.desk.value;
  // Day book and drawer are not reached from a walk, and this one ends with it.
  if (practised)
    return (
      <App key="practice" desk={practised} hasTones={() => true} notices={null} dayBook={() => null} drawer={() => null} practise={null} />
    );
  return (
    <App
      key="house"
      desk={desk}
      hasTones={hasTones}
      notices={<Notices house={house} appSpeaks={speaks} hasVoice={hasVoice()} />}
      practise={(person) => void practice.begin(person)}
      dayBook={(close) => (
        <DayBook rowsOfDay={(from, to) => log.readBetween(from, to)} house={house} now={desk.now.value} onClose={close} />
      )}
      drawer={drawer}
    />
  );
}
