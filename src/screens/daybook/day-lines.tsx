// The lines of a day: telephoned numbers before everything, then what happened, in order, with every step beneath if wanted.
import type { DayPage } from "#reports/day.ts";
import { DAY_BOOK } from "#words/en/daybook.ts";

/** A number and its unit stay on one line: "5 units". */
const together = (text: string): string => text.replaceAll(/(\d) (?=[a-z])/g, "$1\u00a0");

export function DayLines({ page, steps }: { page: DayPage; steps: boolean }) {
  return (
    <>
      {page.first.length > 0 ? (
        <ul class="day-first" aria-label={DAY_BOOK.telephoned}>
          {page.first.map((step) => (
            <li key={`${step.time} ${step.text}`}>
              {together(step.text)} {step.time}.
            </li>
          ))}
        </ul>
      ) : null}
      <ol class="day-lines">
        {page.lines.map((line) => (
          <li key={line.seq} class={`day-line day-${line.kind}`}>
            <h2 class="day-time">{line.time}</h2>
            <p>{together(line.text)}</p>
            {steps && line.steps.length > 0 ? (
              <ol class="day-steps">
                {line.steps.map((step, place) => (
                  <li key={place}>
                    {/* The time stands only where it changes: a walk has many steps in one minute. */}
                    {step.time === (line.steps[place - 1]?.time ?? line.time) ? null : <span class="day-time">{step.time}: </span>}
                    {together(step.text)}
                  </li>
                ))}
              </ol>
            ) : null}
          </li>
        ))}
      </ol>
    </>
  );
}
