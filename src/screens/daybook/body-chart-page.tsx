// Where injections went in the last 12 weeks: marks with their days, and the same facts as a table.
import { useState } from "preact/hooks";
import type { LocalDate } from "#events/quantity.ts";
import type { Region, Side, Spot } from "#events/spot.ts";
import type { Stamp } from "#events/stamp.ts";
import { bodyChart } from "#rules/body/chart.ts";
import { directions } from "#rules/body/directions.ts";
import { siteRules } from "#rules/body/site-rules.ts";
import { daysBetween, localParts } from "#rules/time/local.ts";
import { BodyOutline } from "#ui/body-outline.tsx";
import type { PersonState } from "#walk/state.ts";
import { NO_GO_WORDS } from "#words/en/daybook/names.ts";
import { DAY_BOOK, daysAgo } from "#words/en/daybook.ts";
import { placeName, sayMark, sayPlace } from "#words/en/places.ts";
import { Leaf } from "./leaf.tsx";

interface Part {
  region: Region;
  side: Side;
}

const PARTS: readonly Part[] = [
  { region: "belly", side: "left" },
  { region: "thigh", side: "left" },
  { region: "thigh", side: "right" },
  { region: "arm", side: "left" },
  { region: "arm", side: "right" },
  { region: "buttock", side: "left" },
  { region: "buttock", side: "right" },
];

/** The longer side of the drawing of a part, about. */
const LENGTH = { belly: "bellyWidthMm", thigh: "thighLengthMm", arm: "armLengthMm", buttock: "bellyHeightMm" } as const;

const WEEKS_12 = 84;
/** Newest spots that are said aloud; the table has them all. */
const SAID = 3;
const NO_CARE = { restDays: null, lastSpotMm: null, navelMm: null };

const isOn = (part: Part, spot: Spot): boolean => spot.region === part.region && (part.region === "belly" || spot.side === part.side);

/** Calendar days, as people count them: an injection of last evening was one day ago. */
function usesOf(me: PersonState, today: LocalDate, offset: number): { spot: Spot; daysAgo: number }[] {
  return me.uses.flatMap(({ spot, at }) => {
    const days = Math.max(0, daysBetween(localParts(at, offset).date, today));
    return days <= WEEKS_12 ? [{ spot, daysAgo: days }] : [];
  });
}

interface BodyChartPageProps {
  me: PersonState;
  today: LocalDate;
  now: Stamp;
  onBack(): void;
}

export function BodyChartPage({ me, today, now, onBack }: BodyChartPageProps) {
  const [place, turn] = useState(0);
  const { body, leftOutRegions } = me.person;
  const uses = usesOf(me, today, now.offset);
  // A part that was left out later still shows what went in there.
  const parts = PARTS.filter((part) => !leftOutRegions.includes(part.region) || uses.some((use) => isOn(part, use.spot)));
  const part = parts[place % Math.max(1, parts.length)] ?? PARTS[0];
  if (!part) return null;
  const { restDays, navelMm } = siteRules(me.card?.card.care ?? NO_CARE, body);
  // Marks so far apart that two figures fit between them; the table below leaves nothing out.
  const apartMm = body[LENGTH[part.region]] / 9;
  const chart = bodyChart({ ...part, body, uses, noGo: me.noGo, restDays, navelMm, here: null, apartMm });
  const marks = chart.marks.map((mark) => ({ ...mark, label: mark.daysAgo ? String(mark.daysAgo) : sayMark(mark) }));
  const name = part.region === "belly" ? "belly" : placeName({ ...part, outMm: 0, downMm: 0 });
  const here = uses.filter((use) => isOn(part, use.spot));
  const marked = me.noGo.filter((mark) => isOn(part, mark.spot));
  const where = (spot: Spot) => sayPlace(directions(spot, body)).join(" ");
  return (
    <Leaf
      title={`${me.person.name}: ${name}`}
      leafKey={`chart ${name}`}
      lines={here.length === 0 ? [DAY_BOOK.noSpots] : here.slice(0, SAID).map((use) => `${daysAgo(use.daysAgo)}. ${where(use.spot)}`)}
      onBack={onBack}
      buttons={[
        { label: DAY_BOOK.toTheDay, twoLines: true, safe: true, press: onBack },
        { label: DAY_BOOK.partBefore, twoLines: true, press: () => turn((place + parts.length - 1) % parts.length) },
        { label: DAY_BOOK.partAfter, twoLines: true, press: () => turn((place + 1) % parts.length) },
      ]}
    >
      <div class={part.region === "belly" ? "chart-drawing chart-belly" : "chart-drawing"}>
        <BodyOutline
          region={part.region}
          widthMm={chart.widthMm}
          heightMm={chart.heightMm}
          marks={marks}
          title={DAY_BOOK.chartTitle(name)}
          edges={{ left: DAY_BOOK.left, right: DAY_BOOK.right }}
        />
      </div>
      <p>{DAY_BOOK.chartNumbers}</p>
      {here.length === 0 ? (
        <p>{DAY_BOOK.noSpots}</p>
      ) : (
        <table class="chart-table">
          <caption>{DAY_BOOK.chartTitle(name)}</caption>
          <thead>
            <tr>
              <th scope="col">{DAY_BOOK.day}</th>
              <th scope="col">{DAY_BOOK.place}</th>
            </tr>
          </thead>
          <tbody>
            {here.map((use) => (
              <tr key={`${use.daysAgo} ${where(use.spot)} ${use.spot.side}`}>
                <th scope="row">{daysAgo(use.daysAgo)}</th>
                <td>{where(use.spot)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {marked.length > 0 ? (
        <section aria-label={DAY_BOOK.noGo}>
          <h2>{DAY_BOOK.noGo}</h2>
          <ul class="chart-marked">
            {marked.map((mark) => (
              <li key={mark.id}>
                {NO_GO_WORDS[mark.kind]}: {where(mark.spot)}
              </li>
            ))}
          </ul>
        </section>
      ) : null}
    </Leaf>
  );
}
