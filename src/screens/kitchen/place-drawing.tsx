// The one spot that is offered, drawn large; the words beside it say the same by touch.
import type { Spot } from "#events/spot.ts";
import { bodyChart } from "#rules/body/chart.ts";
import { marksThatHold } from "#rules/body/marks.ts";
import { siteRules } from "#rules/body/site-rules.ts";
import { BodyOutline } from "#ui/body-outline.tsx";
import type { PersonState } from "#walk/state.ts";
import { FIXED } from "#words/en/fixed.ts";

const NO_CARE = { restDays: null, lastSpotMm: null, navelMm: null };

interface PlaceDrawingProps {
  spot: Spot;
  me: PersonState;
  /** Wall time in ms; null while the clock is in doubt. */
  now: number | null;
  title: string;
}

export function PlaceDrawing({ spot, me, now, title }: PlaceDrawingProps) {
  const { body } = me.person;
  const { restDays, navelMm } = siteRules(me.card?.card.care ?? NO_CARE, body);
  // Only the next place and the places to keep off: older marks would crowd the one that matters now.
  const chart = bodyChart({
    region: spot.region,
    side: spot.side,
    body,
    uses: [],
    noGo: marksThatHold(me.noGo, now),
    restDays,
    navelMm,
    here: spot,
    apartMm: 0,
  });
  // Words inside the drawing would be too small to read, and the sentences beside it say them: it carries shapes alone.
  const marks = chart.marks.map((mark) => ({
    xMm: mark.xMm,
    yMm: mark.yMm,
    label: "",
    kind: mark.kind,
    radiusMm: mark.radiusMm,
  }));
  return (
    <div class="place-drawing">
      <p class="place-edges" aria-hidden="true">
        <span>{FIXED.leftSide}</span>
        <span>{FIXED.rightSide}</span>
      </p>
      <BodyOutline region={spot.region} widthMm={chart.widthMm} heightMm={chart.heightMm} marks={marks} title={title} />
    </div>
  );
}
