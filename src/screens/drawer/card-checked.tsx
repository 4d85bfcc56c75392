// Both typings are there: where they differ, what looks unusual, the reading aloud, and the signature.
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import type { Happened } from "#events/happened.ts";
import type { Difference } from "#keeping/differences.ts";
import { alarmKey } from "#keeping/sign.ts";
import type { Alarm } from "#rules/card/alarm.ts";
import { BigButton } from "#ui/button.tsx";
import { Notice, type NoticeProps } from "#ui/notice.tsx";
import type { PersonState } from "#walk/state.ts";
import { sayAlarm } from "#words/en/drawer/alarms.ts";
import { CARD, saySignRefusal } from "#words/en/drawer/card.ts";
import { fieldName } from "#words/en/drawer/fields.ts";
import { sayLeaf, shownDifferences } from "#words/en/drawer/problems.ts";
import { ReadPage } from "./card-read.tsx";
import { type CardWork, judge, type Signer } from "./card-work.ts";
import { TickField } from "./parts/choice-field.tsx";
import { Page } from "./parts/page.tsx";
import { Table } from "./parts/table.tsx";
import type { DrawerProps, KeeperHere } from "./ports.ts";
import type { Keep } from "./setup-pages.tsx";

export interface CardPagesProps {
  drawer: DrawerProps;
  me: PersonState;
  keeper: KeeperHere;
  work: CardWork;
  change(update: (work: CardWork) => CardWork): void;
  keep: Keep;
  onBack(): void;
}

interface CheckedProps extends CardPagesProps {
  to(next: Partial<CardWork>): void;
}

const signerOf = ({ me, keeper, drawer }: CardPagesProps): Signer => ({
  person: me.person,
  keeper,
  today: drawer.today,
  held: [me.card, me.nextCard].filter((card) => card !== null),
  hash: drawer.hashCard,
});

/** Card and photograph are stored together, or neither. */
const withPicture = (events: readonly Happened[], picture: string | null): readonly Happened[] =>
  picture === null
    ? events
    : events.flatMap((event): Happened[] =>
        event.type === "card signed" ? [event, { type: "card photographed", cardHash: event.cardHash, picture }] : [event],
      );

async function signed({ work, me, to, keep, ...props }: CheckedProps): Promise<NoticeProps | null> {
  const judged = judge(work, signerOf({ work, me, keep, ...props }), true);
  const refused = judged.ok ? await keep(me.person.id, withPicture(judged.events, work.picture)) : saySignRefusal(judged);
  if (refused === null) to({ stage: "signed" });
  return refused;
}

export function CheckedPage(props: CheckedProps) {
  const { work, me, to } = props;
  const judged = judge(work, signerOf(props), false);
  const again = (
    <>
      <BigButton role="choice" safe label={CARD.changeFirst} onPress={() => to({ stage: "first" })} />
      <BigButton role="choice" label={CARD.changeSecond} onPress={() => to({ stage: "second" })} />
    </>
  );
  if (judged.ok) throw new Error("a card that nobody read back was signed");
  switch (judged.refused) {
    case "typings differ":
      return <DifferPage differing={judged.differences} again={again} />;
    case "alarms not confirmed":
      return <AlarmPage alarms={judged.alarms} again={again} onConfirmed={(keys) => to({ agreed: [...work.agreed, ...keys] })} />;
    case "not read back":
      return <ReadPage work={work} drawer={props.drawer} person={me.person.id} to={to} onSign={() => signed(props)} />;
    default: {
      const { heading, ...parts } = saySignRefusal(judged);
      const ends =
        judged.refused === "overlaps" ? (
          <BigButton role="main" label={CARD.endsOld(judged.from)} onPress={() => to({ endsOld: true })} />
        ) : null;
      return (
        <Page
          title={heading}
          actions={
            <>
              {again}
              {ends}
            </>
          }
        >
          <Notice {...parts} />
        </Page>
      );
    }
  }
}

function DifferPage({ differing, again }: { differing: readonly Difference[]; again: ComponentChildren }) {
  return (
    <Page title={CARD.differTitle} lines={[CARD.differIntro]} actions={again}>
      <Table label={CARD.differTitle}>
        <thead>
          <tr>
            <th scope="col">{CARD.field}</th>
            <th scope="col">{CARD.first}</th>
            <th scope="col">{CARD.second}</th>
          </tr>
        </thead>
        <tbody>
          {shownDifferences(differing).map((d) => (
            <tr key={d.field}>
              <th scope="row">{fieldName(d.field)}</th>
              <td>{sayLeaf(d.field, d.first)}</td>
              <td>{sayLeaf(d.field, d.second)}</td>
            </tr>
          ))}
        </tbody>
      </Table>
    </Page>
  );
}

interface AlarmPageProps {
  alarms: readonly Alarm[];
  again: ComponentChildren;
  onConfirmed(keys: readonly string[]): void;
}

function AlarmPage({ alarms, again, onConfirmed }: AlarmPageProps) {
  const [ticked, setTicked] = useState<readonly string[]>([]);
  const [notice, setNotice] = useState<NoticeProps | null>(null);
  const goOn = () => {
    if (alarms.every((alarm) => ticked.includes(alarmKey(alarm)))) onConfirmed(ticked);
    else setNotice({ heading: CARD.alarmOpenHeading, ...CARD.alarmOpen });
  };
  return (
    <Page
      title={CARD.alarmTitle}
      lines={[CARD.alarmIntro]}
      notice={notice}
      actions={
        <>
          {again}
          <BigButton role="main" label={CARD.allConfirmed} onPress={goOn} />
        </>
      }
    >
      <ul class="drawer-list">
        {alarms.map((alarm) => {
          const key = alarmKey(alarm);
          const tick = (on: boolean) => setTicked(on ? [...ticked, key] : ticked.filter((other) => other !== key));
          return (
            <li key={key}>
              <TickField label={`${sayAlarm(alarm)} ${CARD.paperSaysSo}`} checked={ticked.includes(key)} onTick={tick} />
            </li>
          );
        })}
      </ul>
    </Page>
  );
}
