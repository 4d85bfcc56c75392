// The whole card as lines, to be read aloud against the paper.
import type { DoseCard } from "#events/card.ts";
import { cardSheet, type SheetPart } from "#words/en/drawer/sheet.ts";

export function SheetPartLines({ part }: { part: SheetPart }) {
  return (
    <dl class="sheet">
      {part.lines.map((line) => (
        <div key={line.label} class="sheet-line">
          <dt>{line.label}</dt>
          <dd>{line.value}</dd>
        </div>
      ))}
    </dl>
  );
}

export function Sheet({ card }: { card: DoseCard }) {
  return (
    <>
      {cardSheet(card).map((part) => (
        <section key={part.heading} aria-label={part.heading}>
          <h2>{part.heading}</h2>
          <SheetPartLines part={part} />
        </section>
      ))}
    </>
  );
}
