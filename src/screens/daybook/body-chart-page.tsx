// Where injections went, 4 weeks or 12: marks with their days, the same facts as a table, what was used too soon, lumps, and all of it on paper.
import { useState } from "preact/hooks";
import type { Spot } from "#events/spot.ts";
import type { Stamp } from "#events/stamp.ts";
import { bodySheet, type Weeks } from "#reports/body-sheet.ts";
import { directions } from "#rules/body/directions.ts";
import { BodyOutline } from "#ui/body-outline.tsx";
import type { PersonState } from "#walk/state.ts";
import { BODY_SHEET, sayLump, sayOverused } from "#words/en/body-sheet.ts";
import { NO_GO_WORDS } from "#words/en/daybook/names.ts";
import { DAY_BOOK, daysAgo } from "#words/en/daybook.ts";
import { sayPlace } from "#words/en/places.ts";
import { ChartPaper } from "./chart-paper.tsx";
import { drawnPart, isOn, partName, partsOf } from "./chart-parts.ts";
import { Leaf } from "./leaf.tsx";

/** Newest spots that are said aloud; the table has them all. */
const SAID = 3;

interface BodyChartPageProps {
  me: PersonState;
  now: Stamp;
  onBack(): void;
}

export function BodyChartPage({ me, now, onBack }: BodyChartPageProps) {
  const [place, turn] = useState(0);
  const [weeks, setWeeks] = useState<Weeks>(12);
  const { body, leftOutRegions } = me.person;
  const sheet = bodySheet(me, now, weeks);
  const parts = partsOf(sheet, leftOutRegions);
  const part = parts[place % Math.max(1, parts.length)];
  if (!part) return null;
  const name = partName(part);
  const title = BODY_SHEET.chartTitle(weeks, name);
  const onPart = <T extends { spot: Spot }>(list: readonly T[]): T[] => list.filter(({ spot }) => isOn(part, spot));
  const [here, often, lumps, marked] = [onPart(sheet.uses), onPart(sheet.overused), onPart(sheet.lumps), onPart(sheet.marks)];
  const where = (spot: Spot) => sayPlace(directions(spot, body)).join(" ");
  const other: Weeks = weeks === 12 ? 4 : 12;
  return (
    <>
      <Leaf
        title={`${me.person.name}: ${name}`}
        leafKey={`chart ${name} ${weeks}`}
        aside={{ label: BODY_SHEET.showWeeks(other), twoLines: true, press: () => setWeeks(other) }}
        lines={
          here.length === 0 ? [BODY_SHEET.noSpots(weeks)] : here.slice(0, SAID).map((use) => `${daysAgo(use.daysAgo)}. ${where(use.spot)}`)
        }
        onBack={onBack}
        buttons={[
          { label: DAY_BOOK.toTheDay, twoLines: true, safe: true, press: onBack },
          { label: DAY_BOOK.partBefore, twoLines: true, press: () => turn((place + parts.length - 1) % parts.length) },
          { label: DAY_BOOK.partAfter, twoLines: true, press: () => turn((place + 1) % parts.length) },
          { label: BODY_SHEET.print, press: () => window.print() },
        ]}
      >
        <div class={part.region === "belly" ? "chart-drawing chart-belly" : "chart-drawing"}>
          <BodyOutline {...drawnPart(part, sheet, body)} title={title} edges={{ left: DAY_BOOK.left, right: DAY_BOOK.right }} />
        </div>
        <p>{DAY_BOOK.chartNumbers}</p>
        {here.length === 0 ? (
          <p>{BODY_SHEET.noSpots(weeks)}</p>
        ) : (
          <table class="chart-table">
            <caption>{title}</caption>
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
        {here.length > 0 ? (
          <Listed
            heading={BODY_SHEET.often}
            lines={often.length === 0 ? [BODY_SHEET.noneOften] : often.map((skin) => `${where(skin.spot)} ${sayOverused(skin, weeks)}`)}
          />
        ) : null}
        <Listed heading={BODY_SHEET.lumps} lines={lumps.map((lump) => `${where(lump.spot)} ${sayLump(lump)}`)} />
        <Listed heading={DAY_BOOK.noGo} lines={marked.map((mark) => `${NO_GO_WORDS[mark.kind]}: ${where(mark.spot)}`)} />
      </Leaf>
      <ChartPaper me={me} sheet={sheet} />
    </>
  );
}

/** Nothing at all where there is nothing to tell. */
function Listed({ heading, lines }: { heading: string; lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <section aria-label={heading}>
      <h2>{heading}</h2>
      <ul class="chart-marked">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}
