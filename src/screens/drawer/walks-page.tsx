// How a person's walks go: read from the log when a keeper opens it, and nowhere else shown.
import { useEffect, useState } from "preact/hooks";
import { SPAN_DAYS, type Walks, walksOf, walksSpan } from "#reports/walks.ts";
import { BigButton } from "#ui/button.tsx";
import type { PersonState } from "#walk/state.ts";
import { WALKS_PAGE } from "#words/en/drawer/walks.ts";
import { DRAWER } from "#words/en/drawer.ts";
import { Page } from "./parts/page.tsx";
import type { DrawerProps } from "./ports.ts";

export function WalksPage({ drawer, me, onBack }: { drawer: DrawerProps; me: PersonState; onBack(): void }) {
  const [walks, setWalks] = useState<Walks | null>(null);
  const { id, name } = me.person;
  useEffect(() => {
    const { from, to } = walksSpan(drawer.now);
    void drawer.rowsBetween(from, to).then((rows) => setWalks(walksOf(rows, id, drawer.now)));
  }, [id]);
  return (
    <Page
      title={WALKS_PAGE.title(name)}
      lines={walks ? [WALKS_PAGE.intro(SPAN_DAYS), WALKS_PAGE.opened(walks.opened, walks.whole)] : [WALKS_PAGE.reading]}
      actions={<BigButton role="main" safe label={DRAWER.back} onPress={onBack} />}
    >
      {walks ? sections(walks).map(({ heading, lines }) => <Section key={heading} heading={heading} lines={lines} />) : null}
    </Page>
  );
}

interface Lines {
  heading: string;
  lines: readonly string[];
}

const Section = ({ heading, lines }: Lines) => (
  <section aria-label={heading}>
    <h2>{heading}</h2>
    {lines.map((line) => (
      <p key={line}>{line}</p>
    ))}
  </section>
);

const orNone = (lines: readonly string[], none: string): readonly string[] => (lines.length > 0 ? lines : [none]);

function sections({ stops, repeated, notSure, caught, cut, minutes, growing }: Walks): Lines[] {
  const unsure = [
    ...(notSure.needle > 0 ? [WALKS_PAGE.needle(notSure.needle)] : []),
    ...(notSure.taken > 0 ? [WALKS_PAGE.taken(notSure.taken)] : []),
  ];
  const pace = [
    ...(minutes.now === null ? [] : [WALKS_PAGE.takes(minutes.now)]),
    ...(minutes.now === null || minutes.before === null ? [] : [WALKS_PAGE.took(minutes.before, SPAN_DAYS)]),
    ...(growing ? [WALKS_PAGE.growing] : []),
  ];
  const slips = caught.map(({ step, times }) => WALKS_PAGE.slip(step, times));
  return [
    {
      heading: WALKS_PAGE.stops,
      lines: orNone(
        [...stops.map(({ step, times }) => WALKS_PAGE.stop(step, times)), ...repeated.map(({ step }) => WALKS_PAGE.again(step))],
        WALKS_PAGE.noStops,
      ),
    },
    { heading: WALKS_PAGE.notSure, lines: orNone(unsure, WALKS_PAGE.sure) },
    { heading: WALKS_PAGE.caught, lines: slips.length > 0 ? [...slips, WALKS_PAGE.noBlame] : [WALKS_PAGE.noSlips] },
    {
      heading: WALKS_PAGE.cut,
      lines: orNone(
        cut.map(({ what, times }) => WALKS_PAGE.times(WALKS_PAGE.cutShort[what], times)),
        WALKS_PAGE.noCut,
      ),
    },
    { heading: WALKS_PAGE.pace, lines: orNone(pace, WALKS_PAGE.tooFew) },
  ];
}
