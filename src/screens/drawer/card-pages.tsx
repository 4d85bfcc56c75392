// Signing a card: typed, typed again, compared, looked over, read aloud, signed.
import { useMemo } from "preact/hooks";
import { BigButton } from "#ui/button.tsx";
import type { SignedCard } from "#walk/state.ts";
import { CARD } from "#words/en/drawer/card.ts";
import { TRIAL } from "#words/en/drawer/trial.ts";
import { DRAWER } from "#words/en/drawer.ts";
import { type CardPagesProps, CheckedPage } from "./card-checked.tsx";
import { CardShownPage, cardsOf, OldCardsPage, TrialPage } from "./card-shown.tsx";
import { type CardWork, NEW_WORK, typingDone } from "./card-work.ts";
import { cardSections } from "./forms/card-specs.ts";
import { Form } from "./parts/form.tsx";
import { Page } from "./parts/page.tsx";
import { problemsNotice } from "./setup-pages.tsx";

export function CardPages(props: CardPagesProps) {
  const { work, change, me, onBack } = props;
  const to = (next: Partial<CardWork>) => change((before) => ({ ...before, problems: [], ...next }));
  const show = (card: SignedCard | null) => to({ stage: "shown", shown: card?.hash ?? null });
  const back = <BigButton role="choice" safe label={DRAWER.back} onPress={onBack} />;
  switch (work.stage) {
    case "start":
      return (
        <Page
          title={DRAWER.card(me.person.name)}
          lines={[me.card ? CARD.inForce(me.card.signature) : CARD.none, ...(me.nextCard ? [CARD.next(me.nextCard.card.validFrom)] : [])]}
          actions={
            <>
              {back}
              {me.card ? <BigButton role="choice" label={CARD.readIt} onPress={() => show(me.card)} /> : null}
              {me.nextCard ? <BigButton role="choice" label={CARD.readNext} onPress={() => show(me.nextCard)} /> : null}
              {me.pastCards.length > 0 ? (
                <BigButton role="choice" label={CARD.oldCards} onPress={() => to({ stage: "old cards" })} />
              ) : null}
              {me.card ? <BigButton role="choice" label={TRIAL.open} onPress={() => to({ stage: "trial" })} /> : null}
              <BigButton role="main" label={CARD.typeNew} onPress={() => to({ stage: "first" })} />
            </>
          }
        />
      );
    case "shown":
      return (
        <CardShownPage me={me} drawer={props.drawer} keep={props.keep} hash={work.shown ?? ""} onBack={() => to({ stage: "start" })} />
      );
    case "old cards":
      return <OldCardsPage me={me} onBack={() => to({ stage: "start" })} onOpen={(shown) => to({ stage: "shown", shown })} />;
    case "trial":
      return me.card ? <TrialPage me={me} card={(me.nextCard ?? me.card).card} onBack={() => to({ stage: "start" })} /> : null;
    case "first":
    case "second":
      return <TypingPage key={work.stage} {...props} stage={work.stage} />;
    case "checked":
      return <CheckedPage {...props} to={to} />;
    case "signed":
      return (
        <Page
          title={CARD.signedTitle}
          lines={[
            DRAWER.saved,
            ...cardsOf(me)
              .slice(0, 1)
              .map(({ card }) => CARD.signedLine(card)),
          ]}
          actions={
            <BigButton
              role="main"
              safe
              label={DRAWER.back}
              onPress={() => {
                change(() => NEW_WORK);
                onBack();
              }}
            />
          }
        />
      );
  }
}

function TypingPage({ work, change, me, stage, onBack }: CardPagesProps & { stage: "first" | "second" }) {
  const draft = work[stage];
  const type = (field: string, value: string) => change((before) => ({ ...before, [stage]: { ...before[stage], [field]: value } }));
  const first = stage === "first";
  const notice = useMemo(() => (work.problems.length > 0 ? problemsNotice(work.problems.length) : null), [work.problems]);
  return (
    <Page
      title={first ? CARD.firstTitle : CARD.secondTitle}
      lines={[first ? CARD.firstIntro : CARD.secondIntro, CARD.blankRule]}
      notice={notice}
      actions={
        <>
          <BigButton role="choice" safe label={DRAWER.back} onPress={onBack} />
          {first ? null : (
            <BigButton
              role="choice"
              label={CARD.changeFirst}
              onPress={() => change((before) => ({ ...before, problems: [], stage: "first" }))}
            />
          )}
          <BigButton
            role="main"
            label={first ? CARD.firstDone : CARD.secondDone}
            onPress={() => change((before) => typingDone(before, me.person.id))}
          />
        </>
      }
    >
      <Form sections={cardSections(draft, type)} draft={draft} problems={work.problems} glucose={draft.glucoseUnit ?? ""} onChange={type} />
    </Page>
  );
}
