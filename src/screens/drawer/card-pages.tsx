// Signing a card: typed, typed again, compared, looked over, read aloud, signed.
import { useMemo } from "preact/hooks";
import { BigButton } from "#ui/button.tsx";
import { CARD, DRAWER } from "#words/en/drawer.ts";
import { type CardPagesProps, CheckedPage } from "./card-checked.tsx";
import { type CardWork, NEW_WORK, typingDone } from "./card-work.ts";
import { cardSections } from "./forms/card-specs.ts";
import { Form } from "./parts/form.tsx";
import { Page } from "./parts/page.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { problemsNotice } from "./setup-pages.tsx";

export function CardPages(props: CardPagesProps) {
  const { work, change, me, onBack } = props;
  const to = (next: Partial<CardWork>) => change((before) => ({ ...before, problems: [], ...next }));
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
              {me.card ? <BigButton role="choice" label={CARD.readIt} onPress={() => to({ stage: "in force" })} /> : null}
              <BigButton role="main" label={CARD.typeNew} onPress={() => to({ stage: "first" })} />
            </>
          }
        />
      );
    case "in force":
      return (
        <Page
          title={DRAWER.card(me.person.name)}
          actions={<BigButton role="main" safe label={DRAWER.back} onPress={() => to({ stage: "start" })} />}
        >
          {me.card ? <Sheet card={me.card.card} /> : null}
        </Page>
      );
    case "first":
    case "second":
      return <TypingPage key={work.stage} {...props} stage={work.stage} />;
    case "checked":
      return <CheckedPage {...props} to={to} />;
    case "signed":
      return (
        <Page
          title={CARD.signedTitle}
          lines={me.card ? [DRAWER.saved, CARD.signedLine(me.card.card)] : [DRAWER.saved]}
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
