// The body of a person: how many places fit and how long each can rest, the places to keep off, lengths in hands.
import { useState } from "preact/hooks";
import { fromName, IN_HANDS, MARK_KINDS, MARK_PARTS, markPlace, measureByHands, partOfMark } from "#keeping/body.ts";
import { dayLoads } from "#rules/body/day-load.ts";
import { directions } from "#rules/body/directions.ts";
import { marksThatHold } from "#rules/body/marks.ts";
import { fromsOf } from "#rules/body/told-place.ts";
import { localParts } from "#rules/time/local.ts";
import { BigButton } from "#ui/button.tsx";
import type { PersonState } from "#walk/state.ts";
import { BODY_PAGE, clearMark, nowInHands, sayLoad, sayMarked } from "#words/en/drawer/body.ts";
import { DRAWER } from "#words/en/drawer.ts";
import { sayPlace } from "#words/en/places.ts";
import type { View } from "./list-pages.tsx";
import { Page } from "./parts/page.tsx";
import type { Section } from "./parts/spec.ts";
import type { DrawerProps, KeeperHere } from "./ports.ts";
import { type DraftKept, FormPage, type Keep } from "./setup-pages.tsx";

interface BodyProps {
  drawer: DrawerProps;
  me: PersonState;
  keep: Keep;
}

export function BodyPage({ drawer, me, keep, said, go }: BodyProps & { said: string | null; go(view: View): void }) {
  const { id: person, name, body, leftOutRegions } = me.person;
  const { now } = drawer;
  const marks = marksThatHold(me.noGo, now.wall);
  const loads = me.card ? dayLoads(me.card.card, body, marks, leftOutRegions) : null;
  const fits = loads === null ? [BODY_PAGE.noCard] : loads.length === 0 ? [BODY_PAGE.noMeals] : loads.flatMap(sayLoad);
  return (
    <Page
      title={BODY_PAGE.title(name)}
      said={said}
      actions={
        <>
          <BigButton role="choice" safe label={DRAWER.back} onPress={() => go({ at: "menu" })} />
          <BigButton role="choice" label={BODY_PAGE.measure} onPress={() => go({ at: "hands", person })} />
          <BigButton role="main" label={BODY_PAGE.markPlace} onPress={() => go({ at: "mark", person })} />
        </>
      }
    >
      <section aria-label={BODY_PAGE.fits}>
        <h2>{BODY_PAGE.fits}</h2>
        {fits.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </section>
      <section aria-label={BODY_PAGE.reach}>
        <h2>{BODY_PAGE.reach}</h2>
        <p>{BODY_PAGE.leftOut(leftOutRegions)}</p>
        <BigButton role="choice" label={BODY_PAGE.changeReach} onPress={() => go({ at: "person", person })} />
      </section>
      <section aria-label={BODY_PAGE.marks}>
        <h2>{BODY_PAGE.marks}</h2>
        {marks.length === 0 ? <p>{BODY_PAGE.noMarks}</p> : null}
        <ol class="drawer-list">
          {marks.map((mark, i) => (
            <li key={mark.id}>
              <p>{sayMarked(mark, localParts(mark.markedAt, now.offset).date)}</p>
              <p>{sayPlace(directions(mark.spot, body)).join(" ")}</p>
              <BigButton
                role="choice"
                label={clearMark(i + 1, mark.kind)}
                onPress={() => void keep(person, [{ type: "no-go place cleared", id: mark.id }])}
              />
            </li>
          ))}
        </ol>
      </section>
    </Page>
  );
}

interface FormProps extends BodyProps, DraftKept {
  onBack(): void;
  onDone(): void;
}

export function MarkPage({ drawer, me, keep, onBack, onDone, ...kept }: FormProps) {
  const { id: person, name, body } = me.person;
  const [id] = useState(() => drawer.newId());
  const part = partOfMark(kept.draft);
  const froms = part ? fromsOf(part.region, body).map(fromName) : [];
  const sections: Section[] = [
    {
      specs: [
        { kind: "choice", field: "mark.kind", options: MARK_KINDS },
        { kind: "choice", field: "mark.part", options: MARK_PARTS },
        ...(froms.length > 1 ? [{ kind: "choice", field: "mark.from", options: froms } as const] : []),
        { kind: "number", field: "mark.along" },
        { kind: "number", field: "mark.outwards" },
        { kind: "number", field: "mark.radiusMm" },
      ],
    },
  ];
  return (
    <FormPage
      {...kept}
      title={BODY_PAGE.markTitle(name)}
      lines={[BODY_PAGE.markIntro]}
      sections={sections}
      save={DRAWER.save}
      back={{ label: DRAWER.back, onPress: onBack }}
      decide={(draft) => markPlace(draft, id, body)}
      store={(events) => keep(person, events)}
      onDone={onDone}
    />
  );
}

export function HandsPage({ me, keeper, keep, onBack, onDone, ...kept }: FormProps & { keeper: KeeperHere }) {
  const { id: person, name, body } = me.person;
  const sections: Section[] = [
    {
      specs: [
        { kind: "number", field: "hands.handMm", hint: `Now ${body.handMm} millimeters.` },
        ...IN_HANDS.map((length) => ({
          kind: "number" as const,
          field: `hands.${length}`,
          hint: nowInHands(body[length], body.handMm),
        })),
      ],
    },
  ];
  return (
    <FormPage
      {...kept}
      title={BODY_PAGE.handsTitle(name)}
      lines={[BODY_PAGE.handsIntro]}
      sections={sections}
      save={DRAWER.save}
      back={{ label: DRAWER.back, onPress: onBack }}
      decide={(draft) => measureByHands(draft, me.person, keeper.id)}
      store={(events) => keep(person, events)}
      onDone={onDone}
    />
  );
}
