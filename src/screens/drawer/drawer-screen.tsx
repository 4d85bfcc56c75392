// The drawer: set-up behind a keeper's PIN. A new household makes its first keeper here; what was typed stays until it is closed.
import { useEffect, useState } from "preact/hooks";
import { draftOfHousehold } from "#keeping/household.ts";
import type { Draft } from "#keeping/problem.ts";
import { OwnQuestion } from "#screens/first/own-question.tsx";
import { useHearable } from "#screens/shared/hear.ts";
import { BigButton } from "#ui/button.tsx";
import type { NoticeProps } from "#ui/notice.tsx";
import { DRAWER } from "#words/en/drawer.ts";
import { BodyPage, HandsPage, MarkPage } from "./body-pages.tsx";
import { CardPages } from "./card-pages.tsx";
import { type CardWork, NEW_WORK } from "./card-work.ts";
import { EarPage } from "./ear-page.tsx";
import { Gate } from "./gate.tsx";
import { MeasurePage, MenuPage, PensPage, PutAsidePage, SizesPage, type View } from "./list-pages.tsx";
import { CodePage, NewPinPage, RecoverPage } from "./pin-pages.tsx";
import type { DrawerProps, KeeperHere } from "./ports.ts";
import { type DraftKept, HouseholdPage, type Keep, KeeperPage, PenPage, PersonPage, startOfPerson } from "./setup-pages.tsx";
import { WalksPage } from "./walks-page.tsx";
import "./drawer-forms.css";

export type { DrawerProps } from "./ports.ts";

const MENU: View = { at: "menu" };

export function DrawerScreen(props: DrawerProps) {
  const { house } = props;
  const [keeper, setKeeper] = useState<KeeperHere | null>(null);
  const [view, setView] = useState<View>(MENU);
  const [forgot, setForgot] = useState<{ keeper: string; right: boolean } | null>(null);
  const [said, setSaid] = useState<string | null>(null);
  const [drafts, setDrafts] = useState<Readonly<Record<string, Draft>>>({});
  const [works, setWorks] = useState<Readonly<Record<string, CardWork>>>({});

  const go = (next: View) => {
    setSaid(null);
    setView(next);
  };
  const keep: Keep = async (person, events) => {
    const { notStored } = await props.keep(events.map((event) => ({ person, walk: null, event })));
    return notStored === null ? null : { heading: DRAWER.notStoredHeading, ...DRAWER.notStored(notStored) };
  };
  const draftOf = (name: string, start: Draft): DraftKept => ({
    draft: drafts[name] ?? start,
    change: (update) => setDrafts((all) => ({ ...all, [name]: update(all[name] ?? start) })),
  });
  /** The draft of a page that was saved is not wanted any more. */
  const savedTo = (name: string, next: View) => {
    setDrafts((all) => Object.fromEntries(Object.entries(all).filter(([other]) => other !== name)));
    setView(next);
    setSaid(DRAWER.saved);
  };
  // By hand only: a voice across the room changes no card, and nothing of the kitchen is heard meanwhile.
  useHearable({ title: DRAWER.title, lines: [], buttons: [], deaf: true }, true);
  useEscape(() => (keeper === null || view.at === "menu" ? props.onClose() : go(MENU)));

  const close = { label: DRAWER.close, onPress: props.onClose };
  const back = { label: DRAWER.back, onPress: () => go(MENU) };

  if (view.at === "start own" && props.onStartOwn) return <OwnQuestion about="own" onYes={props.onStartOwn} onNo={() => go(MENU)} />;
  if (view.at === "empty demo" && props.onEmptyDemo) return <OwnQuestion about="demo" onYes={props.onEmptyDemo} onNo={() => go(MENU)} />;
  if (house.household === null) {
    return (
      <HouseholdPage
        key="new household"
        drawer={props}
        keep={keep}
        {...draftOf("household", {})}
        back={close}
        onDone={() => savedTo("household", MENU)}
      />
    );
  }
  const own = props.onStartOwn ? <BigButton role="choice" label={DRAWER.startOwn} onPress={() => go({ at: "start own" })} /> : null;
  if (keeper === null && house.keepers.length === 0) {
    const done = (first: KeeperHere) => {
      setKeeper(first);
      savedTo("keeper", MENU);
    };
    return (
      <KeeperPage key="first keeper" drawer={props} keep={keep} first {...draftOf("keeper", {})} back={close} extra={own} onDone={done} />
    );
  }
  if (keeper === null) {
    const lost = house.keepers.find((k) => k.id === forgot?.keeper);
    if (!lost || !forgot)
      return <Gate {...props} extra={own} onOpen={setKeeper} onForgot={(id) => setForgot({ keeper: id, right: false })} />;
    const toGate = () => setForgot(null);
    if (!forgot.right)
      return <RecoverPage drawer={props} keeper={lost} onRight={() => setForgot({ keeper: lost.id, right: true })} onBack={toGate} />;
    const done = () => {
      setForgot(null);
      setKeeper({ id: lost.id, name: lost.name });
      savedTo("PIN", MENU);
    };
    return (
      <NewPinPage
        key="new PIN"
        drawer={props}
        keep={keep}
        keeper={lost}
        by="printed code"
        {...draftOf("PIN", {})}
        back={{ ...close, onPress: toGate }}
        onDone={done}
      />
    );
  }

  const me = "person" in view && view.person !== null ? (house.people[view.person] ?? null) : null;
  const page = { drawer: props, keep, back };
  switch (view.at) {
    case "menu":
    case "start own":
    case "empty demo":
      return <MenuPage drawer={props} keeper={keeper} said={said} go={go} />;
    case "household": {
      return (
        <HouseholdPage
          key="household"
          {...page}
          {...draftOf("household", draftOfHousehold(house.household))}
          onDone={() => savedTo("household", MENU)}
        />
      );
    }
    case "keeper":
      return <KeeperPage key="keeper" {...page} first={false} {...draftOf("keeper", {})} onDone={() => savedTo("keeper", MENU)} />;
    case "PIN":
      return <NewPinPage key="PIN" {...page} keeper={keeper} by="PIN" {...draftOf("PIN", {})} onDone={() => savedTo("PIN", MENU)} />;
    case "code":
      return <CodePage key="code" {...page} keeper={keeper} onBack={back.onPress} />;
    case "person": {
      const name = `person ${view.person ?? "new"}`;
      return (
        <PersonPage key={name} {...page} me={me} keeper={keeper} {...draftOf(name, startOfPerson(me))} onDone={() => savedTo(name, MENU)} />
      );
    }
    case "ear":
      if (props.ear) return <EarPage ear={props.ear} go={go} />;
      break;
    case "sizes":
      return <SizesPage drawer={props} go={go} />;
    case "measure":
      return <MeasurePage drawer={props} go={go} />;
    default:
      break;
  }
  if (!me) return <MenuPage drawer={props} keeper={keeper} said={said} go={go} />;
  const person = me.person.id;
  const pens: View = { at: "pens", person };
  const toBody: View = { at: "body", person };
  const form = (name: string) => ({
    drawer: props,
    me,
    keep,
    onBack: () => go(toBody),
    onDone: () => savedTo(name, toBody),
    ...draftOf(name, {}),
  });
  switch (view.at) {
    case "body":
      return <BodyPage drawer={props} me={me} keep={keep} said={said} go={go} />;
    case "walks":
      return <WalksPage key={`walks of ${person}`} drawer={props} me={me} onBack={back.onPress} />;
    case "mark":
      return <MarkPage key={`mark of ${person}`} {...form(`mark of ${person}`)} />;
    case "hands":
      return <HandsPage key={`hands of ${person}`} keeper={keeper} {...form(`hands of ${person}`)} />;
    case "pens":
      return <PensPage me={me} said={said} go={go} />;
    case "pen":
      return (
        <PenPage
          key={`pen of ${person}`}
          {...page}
          back={{ label: DRAWER.back, onPress: () => go(pens) }}
          me={me}
          {...draftOf(`pen of ${person}`, {})}
          onDone={() => savedTo(`pen of ${person}`, pens)}
        />
      );
    case "put aside": {
      const aside = (refused: NoticeProps | null) => {
        setView(pens);
        setSaid(refused === null ? DRAWER.saved : `${refused.heading ?? ""}. ${refused.wrong}`);
      };
      return <PutAsidePage me={me} pen={view.pen} keep={keep} onDone={aside} onBack={() => go(pens)} />;
    }
    case "card": {
      const change = (update: (work: CardWork) => CardWork) => setWorks((all) => ({ ...all, [person]: update(all[person] ?? NEW_WORK) }));
      return (
        <CardPages
          drawer={props}
          me={me}
          keeper={keeper}
          work={works[person] ?? NEW_WORK}
          change={change}
          keep={keep}
          onBack={() => go(MENU)}
        />
      );
    }
  }
}

/** Escape goes one page back in here. The page around would close the drawer, and with it lose what was typed. */
function useEscape(onEscape: () => void): void {
  useEffect(() => {
    const pressed = (event: KeyboardEvent) => {
      if (event.key !== "Escape") return;
      event.preventDefault();
      event.stopPropagation();
      if (!event.repeat) onEscape();
    };
    window.addEventListener("keydown", pressed, true);
    return () => window.removeEventListener("keydown", pressed, true);
  });
}
