// The body chart on paper, the whole body at once: what the clinic looks at beside its own sheet. Black on white, A4 or US letter.
import type { BodySheet } from "#reports/body-sheet.ts";
import { BodyOutline } from "#ui/body-outline.tsx";
import type { PersonState } from "#walk/state.ts";
import { BODY_SHEET, sayLump, sayOverused } from "#words/en/body-sheet.ts";
import { NO_GO_WORDS } from "#words/en/daybook/names.ts";
import { DAY_BOOK } from "#words/en/daybook.ts";
import { placeName } from "#words/en/places.ts";
import { dateInWords } from "#words/en/when.ts";
import { drawnPart, isOn, partName, partsOf } from "./chart-parts.ts";

export function ChartPaper({ me, sheet }: { me: PersonState; sheet: BodySheet }) {
  const { body, leftOutRegions, name } = me.person;
  const parts = partsOf(sheet, leftOutRegions).filter((part) => [...sheet.uses, ...sheet.marks].some(({ spot }) => isOn(part, spot)));
  const clinic = me.card?.card.clinic.name ?? null;
  const { restDays } = sheet.rules;
  return (
    <section class="paper chart-paper" hidden>
      <h1>{BODY_SHEET.title(name)}</h1>
      <p>{BODY_SHEET.span(sheet.from, sheet.to)}</p>
      <p>{clinic === null ? BODY_SHEET.restWithoutCard(restDays) : BODY_SHEET.restOfCard(restDays, clinic)}</p>
      <p>{BODY_SHEET.total(sheet.uses.length)}</p>
      <h2>{BODY_SHEET.often}</h2>
      {sheet.overused.length === 0 ? <p>{BODY_SHEET.noneOften}</p> : null}
      <ul>
        {sheet.overused.map((skin, place) => (
          <li key={place}>
            {placeName(skin.spot)}, {millimeters(skin.spot)}: {sayOverused(skin, sheet.weeks)}
          </li>
        ))}
      </ul>
      {sheet.lumps.length > 0 ? <h2>{BODY_SHEET.lumps}</h2> : null}
      <ul>
        {sheet.lumps.map((lump) => (
          <li key={lump.id}>
            {placeName(lump.spot)}, {millimeters(lump.spot)}: {sayLump(lump)}
          </li>
        ))}
      </ul>
      {sheet.marks.length > 0 ? <h2>{DAY_BOOK.noGo}</h2> : null}
      <ul>
        {sheet.marks.map((mark) => (
          <li key={mark.id}>
            {NO_GO_WORDS[mark.kind]}: {placeName(mark.spot)}, {millimeters(mark.spot)}
          </li>
        ))}
      </ul>
      {parts.map((part) => (
        <figure key={partName(part)} class={part.region === "belly" ? "chart-drawing chart-belly" : "chart-drawing"}>
          <figcaption>{BODY_SHEET.chartTitle(sheet.weeks, partName(part))}</figcaption>
          <BodyOutline {...drawnPart(part, sheet, body)} title={partName(part)} edges={{ left: DAY_BOOK.left, right: DAY_BOOK.right }} />
        </figure>
      ))}
      <table class="chart-table">
        <caption>{DAY_BOOK.chartNumbers}</caption>
        <thead>
          <tr>
            {[BODY_SHEET.date, BODY_SHEET.daysAgo, BODY_SHEET.place, BODY_SHEET.code, BODY_SHEET.millimeters].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {sheet.uses.map((use, place) => (
            <tr key={place}>
              <th scope="row">{dateInWords(use.on)}</th>
              <td>{use.daysAgo}</td>
              <td>{placeName(use.spot)}</td>
              <td>{use.code}</td>
              <td>{millimeters(use.spot)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>{BODY_SHEET.codeNote}</p>
      <p>{BODY_SHEET.reported}</p>
    </section>
  );
}

const millimeters = ({ outMm, downMm }: { outMm: number; downMm: number }): string => `${Math.round(outMm)}, ${Math.round(downMm)} mm`;
