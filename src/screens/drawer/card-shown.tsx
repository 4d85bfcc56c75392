// Cards to look at: the one in force, the next, the old ones, and the trial sheet for the clinic.
import { useState } from "preact/hooks";
import { trialOf } from "#keeping/trial.ts";
import { BigButton } from "#ui/button.tsx";
import type { NoticeProps } from "#ui/notice.tsx";
import type { PersonState, SignedCard } from "#walk/state.ts";
import { CARD } from "#words/en/drawer/card.ts";
import { ketoneTrial } from "#words/en/drawer/ill-sheet.ts";
import { answerWords, askedWords, TRIAL } from "#words/en/drawer/trial.ts";
import { DRAWER } from "#words/en/drawer.ts";
import { Page } from "./parts/page.tsx";
import { KeptPhoto, TakePhoto } from "./parts/photo.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { Table } from "./parts/table.tsx";
import type { DrawerProps } from "./ports.ts";
import type { Keep } from "./setup-pages.tsx";
import "#ui/paper.css";

interface ShownProps {
  me: PersonState;
  onBack(): void;
}

const back = (onBack: () => void) => <BigButton role="main" safe label={DRAWER.back} onPress={onBack} />;

/** Every card that was ever signed for this person, newest first. */
export const cardsOf = (me: PersonState): SignedCard[] => [me.nextCard, me.card, ...me.pastCards].filter((card) => card !== null);

interface CardShownProps extends ShownProps {
  drawer: DrawerProps;
  hash: string;
  keep: Keep;
}

/** The photograph may be taken later too, or anew. */
export function CardShownPage({ me, drawer, hash, keep, onBack }: CardShownProps) {
  const [notice, setNotice] = useState<NoticeProps | null>(null);
  const taken = async (picture: string) => setNotice(await keep(me.person.id, [{ type: "card photographed", cardHash: hash, picture }]));
  const shown = cardsOf(me).find((card) => card.hash === hash);
  return (
    <Page
      title={DRAWER.card(me.person.name)}
      lines={shown ? [CARD.signedBy(shown.signature), CARD.days(shown.card)] : []}
      notice={notice}
      actions={back(onBack)}
    >
      {shown ? (
        <>
          <KeptPhoto drawer={drawer} row={me.photos[hash]} />
          <TakePhoto drawer={drawer} onTaken={(picture) => void taken(picture)} />
          <Sheet card={shown.card} />
        </>
      ) : null}
    </Page>
  );
}

export function OldCardsPage({ me, onBack, onOpen }: ShownProps & { onOpen(hash: string): void }) {
  return (
    <Page title={CARD.oldTitle(me.person.name)} actions={back(onBack)}>
      <div class="drawer-menu">
        {me.pastCards.map(({ card, hash, signature }) => (
          <BigButton key={hash} role="choice" label={CARD.oldCard(card, signature)} onPress={() => onOpen(hash)} />
        ))}
      </div>
    </Page>
  );
}

/** Each case beside an empty box, so that whoever gave the card can look over what the tablet made of it. */
export function TrialPage({ me, card, onBack }: ShownProps & { card: SignedCard["card"] }) {
  const trials = trialOf(card);
  return (
    <div class="paper">
      <Page
        title={TRIAL.title(me.person.name)}
        lines={[trials.length > 0 ? TRIAL.intro : TRIAL.none, CARD.days(card)]}
        actions={
          <>
            <BigButton role="choice" safe label={DRAWER.back} onPress={onBack} />
            <BigButton role="main" label={TRIAL.print} onPress={() => window.print()} />
          </>
        }
      >
        <Table label={TRIAL.intro}>
          <thead>
            <tr>
              <th scope="col">{TRIAL.asked}</th>
              <th scope="col">{TRIAL.told}</th>
              <th scope="col" class="narrow">
                {TRIAL.right}
              </th>
            </tr>
          </thead>
          <tbody>
            {trials.map((trial) => (
              <tr key={askedWords(trial, card.glucoseUnit)}>
                <th scope="row">{askedWords(trial, card.glucoseUnit)}</th>
                <td>{answerWords(trial)}</td>
                <td class="narrow">
                  <span class="tick-here" />
                </td>
              </tr>
            ))}
            {ketoneTrial(card).map(({ asked, told }) => (
              <tr key={asked}>
                <th scope="row">{asked}</th>
                <td>{told}</td>
                <td class="narrow">
                  <span class="tick-here" />
                </td>
              </tr>
            ))}
          </tbody>
        </Table>
        <p>{TRIAL.signed}</p>
      </Page>
    </div>
  );
}
