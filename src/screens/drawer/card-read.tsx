// Reading back: part by part, each line against the paper, then the signature.
import { useState } from "preact/hooks";
import { readCard } from "#keeping/card-draft.ts";
import { BigButton } from "#ui/button.tsx";
import type { NoticeProps } from "#ui/notice.tsx";
import { CARD } from "#words/en/drawer/card.ts";
import { cardSheet } from "#words/en/drawer/sheet.ts";
import type { CardWork } from "./card-work.ts";
import { Page } from "./parts/page.tsx";
import { Photo, TakePhoto } from "./parts/photo.tsx";
import { SheetPartLines } from "./parts/sheet.tsx";
import type { DrawerProps } from "./ports.ts";

interface ReadPageProps {
  work: CardWork;
  drawer: DrawerProps;
  person: string;
  to(next: Partial<CardWork>): void;
  /** Signs, and says what stood against it. */
  onSign(): Promise<NoticeProps | null>;
}

export function ReadPage({ work, drawer, person, to, onSign }: ReadPageProps) {
  const [notice, setNotice] = useState<NoticeProps | null>(null);
  const read = readCard(work.first, person);
  if (!read.ok) throw new Error("a card with problems came to be read back");
  const parts = cardSheet(read.card);
  const part = parts[work.partsRead];
  const change = <BigButton role="choice" safe label={CARD.change} onPress={() => to({ stage: "first", agreed: [], partsRead: 0 })} />;
  if (part) {
    return (
      <Page
        key={part.heading}
        title={CARD.readPart(part.heading, work.partsRead + 1, parts.length)}
        lines={[CARD.readIntro]}
        actions={
          <>
            {change}
            <BigButton role="main" label={CARD.partMatches} onPress={() => to({ partsRead: work.partsRead + 1 })} />
          </>
        }
      >
        <SheetPartLines part={part} />
      </Page>
    );
  }
  return (
    <Page
      key="sign"
      title={CARD.readTitle}
      lines={[CARD.readDone]}
      notice={notice}
      actions={
        <>
          {change}
          <BigButton role="choice" safe label={CARD.readAgain} onPress={() => to({ partsRead: 0 })} />
          <BigButton role="main" label={CARD.sign} onPress={() => void onSign().then(setNotice)} />
        </>
      }
    >
      <TakePhoto drawer={drawer} onTaken={(picture) => to({ picture })} />
      {work.picture === null ? null : <Photo picture={work.picture} />}
    </Page>
  );
}
