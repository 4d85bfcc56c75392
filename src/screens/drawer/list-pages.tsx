// Pages without a form: the menu, the pens of a person, why a pen is put aside, letters and screen size.
import type { Of } from "#events/happened.ts";
import { retirePen } from "#keeping/pens.ts";
import { BigButton } from "#ui/button.tsx";
import { Calibration } from "#ui/calibration.tsx";
import type { HouseState, PersonState } from "#walk/state.ts";
import { BODY_PAGE } from "#words/en/drawer/body.ts";
import { EAR } from "#words/en/drawer/ear.ts";
import { WALKS_PAGE } from "#words/en/drawer/walks.ts";
import { DRAWER, RETIRE } from "#words/en/drawer.ts";
import { FIXED } from "#words/en/fixed.ts";
import { dateInWords } from "#words/en/when.ts";
import { Page } from "./parts/page.tsx";
import type { DrawerProps, KeeperHere } from "./ports.ts";
import type { Keep } from "./setup-pages.tsx";

export type View =
  | { at: "menu" | "household" | "keeper" | "PIN" | "code" | "sizes" | "ear" | "measure" | "start own" | "empty demo" }
  | { at: "person"; person: string | null }
  | { at: "pens" | "pen" | "card" | "body" | "walks" | "mark" | "hands"; person: string }
  | { at: "put aside"; person: string; pen: string };

/** What a walk still needs before it can tell a dose. */
function missing(house: HouseState): string[] {
  const people = Object.values(house.people);
  const codes =
    house.household?.kind === "demo" ? [] : house.keepers.filter((k) => k.recovery === null).map((k) => DRAWER.noCodeYet(k.name));
  if (people.length === 0) return [DRAWER.noPerson, ...codes];
  return [
    ...people.flatMap((me) => [
      ...(me.card ? [] : [DRAWER.noCard(me.person.name)]),
      ...(me.pens.some((p) => !p.retired && p.pen.kind === "mealtime") ? [] : [DRAWER.noPen(me.person.name)]),
    ]),
    ...codes,
  ];
}

export function MenuPage({
  drawer,
  keeper,
  said,
  go,
}: {
  drawer: DrawerProps;
  keeper: KeeperHere;
  said: string | null;
  go(view: View): void;
}) {
  const { house } = drawer;
  const open = missing(house);
  const demo = house.household?.kind === "demo";
  const item = (label: string, view: View) => <BigButton key={label} role="choice" label={label} onPress={() => go(view)} />;
  return (
    <Page
      title={DRAWER.title}
      lines={[...(demo ? [DRAWER.demoLine] : []), DRAWER.menuIntro(keeper.name)]}
      said={said}
      actions={<BigButton role="main" safe label={DRAWER.close} onPress={drawer.onClose} />}
    >
      {open.length > 0 ? (
        <section aria-label={DRAWER.missing}>
          <h2>{DRAWER.missing}</h2>
          <ul class="drawer-list">
            {open.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </section>
      ) : null}
      <div class="drawer-menu">
        {Object.values(house.people).flatMap(({ person: { id, name } }) => [
          item(DRAWER.card(name), { at: "card", person: id }),
          item(DRAWER.pens(name), { at: "pens", person: id }),
          item(BODY_PAGE.title(name), { at: "body", person: id }),
          item(WALKS_PAGE.title(name), { at: "walks", person: id }),
          item(DRAWER.editPerson(name), { at: "person", person: id }),
        ])}
        {item(DRAWER.addPerson, { at: "person", person: null })}
        {item(DRAWER.householdChange, { at: "household" })}
        {item(DRAWER.addKeeper, { at: "keeper" })}
        {item(DRAWER.changePin, { at: "PIN" })}
        {item(DRAWER.makeCode, { at: "code" })}
        {item(DRAWER.sizes, { at: "sizes" })}
        <BigButton role="choice" label={FIXED.practice} onPress={drawer.onPractise} />
        {drawer.ear ? item(EAR.title, { at: "ear" }) : null}
        {drawer.onStartOwn ? item(DRAWER.startOwn, { at: "start own" }) : null}
        {drawer.onEmptyDemo ? item(DRAWER.emptyDemo, { at: "empty demo" }) : null}
      </div>
    </Page>
  );
}

export function PensPage({ me, said, go }: { me: PersonState; said: string | null; go(view: View): void }) {
  const person = me.person.id;
  const pens = me.pens.filter((p) => !p.retired);
  return (
    <Page
      title={DRAWER.pens(me.person.name)}
      said={said}
      actions={
        <>
          <BigButton role="choice" safe label={DRAWER.back} onPress={() => go({ at: "menu" })} />
          <BigButton role="main" label={DRAWER.penAdd} onPress={() => go({ at: "pen", person })} />
        </>
      }
    >
      {pens.length === 0 ? <p>{DRAWER.penNone}</p> : null}
      <ul class="drawer-list">
        {pens.map(({ pen, openedOn }) => (
          <li key={pen.id}>
            <p>
              {pen.mark}: {pen.insulinName}, {pen.kind}.
            </p>
            <p>
              {openedOn === null ? "Not opened yet." : `Opened on ${dateInWords(openedOn)}, lasts ${pen.inUseDays} days.`} Good until{" "}
              {dateInWords(pen.expiresOn)}.
            </p>
            <BigButton role="choice" label={DRAWER.putAsideOf(pen.mark)} onPress={() => go({ at: "put aside", person, pen: pen.id })} />
          </li>
        ))}
      </ul>
    </Page>
  );
}

const REASONS: readonly Of<"pen retired">["why"][] = ["empty", "too old", "clumped", "frozen", "overheated", "lost", "other"];

interface PutAsideProps {
  me: PersonState;
  pen: string;
  keep: Keep;
  onDone(notice: Awaited<ReturnType<Keep>>): void;
  onBack(): void;
}

export function PutAsidePage({ me, pen, keep, onDone, onBack }: PutAsideProps) {
  const mark = me.pens.find((p) => p.pen.id === pen)?.pen.mark ?? "";
  const aside = async (why: Of<"pen retired">["why"]) => onDone(await keep(me.person.id, retirePen(pen, why)));
  return (
    <Page title={DRAWER.putAsideTitle(mark)} actions={<BigButton role="choice" safe label={DRAWER.back} onPress={onBack} />}>
      <div class="drawer-menu">
        {REASONS.map((why) => (
          <BigButton key={why} role="choice" label={RETIRE[why]} onPress={() => void aside(why)} />
        ))}
      </div>
    </Page>
  );
}

export function SizesPage({ drawer, go }: { drawer: DrawerProps; go(view: View): void }) {
  const { prefs, onPrefs } = drawer;
  return (
    <Page
      title={DRAWER.sizesTitle}
      lines={[prefs.mm === null ? DRAWER.mmUnknown : DRAWER.mmKnown, DRAWER.sizesIntro]}
      actions={
        <>
          <BigButton role="choice" safe label={DRAWER.back} onPress={() => go({ at: "menu" })} />
          <BigButton role="main" label={DRAWER.measure} onPress={() => go({ at: "measure" })} />
        </>
      }
    >
      <div class="drawer-menu">
        {([1, 1.4, 2] as const).map((k) => (
          <BigButton key={k} role="choice" label={DRAWER.letters(k)} pressed={prefs.k === k} onPress={() => onPrefs({ k })} />
        ))}
        <BigButton role="choice" label={DRAWER.light} pressed={prefs.theme === "light"} onPress={() => onPrefs({ theme: "light" })} />
        <BigButton role="choice" label={DRAWER.dark} pressed={prefs.theme === "dark"} onPress={() => onPrefs({ theme: "dark" })} />
      </div>
    </Page>
  );
}

/** Until somebody measured, the usual length of a millimetre is tried first. */
const USUAL_MM_PX = 5.9;

export function MeasurePage({ drawer, go }: { drawer: DrawerProps; go(view: View): void }) {
  const done = (mm: number) => {
    drawer.onPrefs({ mm });
    go({ at: "sizes" });
  };
  return <Calibration {...DRAWER.calibration} mmPx={drawer.prefs.mm ?? USUAL_MM_PX} onDone={done} onBack={() => go({ at: "sizes" })} />;
}
