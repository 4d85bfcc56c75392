// The day book: a page a day, in the person's own letters. Reached from the kitchen screen by anybody at the table; it changes nothing.
import { useEffect, useState } from "preact/hooks";
import type { LogRow } from "#events/log-port.ts";
import type { LocalDate } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { type DayPage, dayPage } from "#reports/day.ts";
import { rowsOn, spanOf } from "#reports/day-rows.ts";
import { addDays, compareDates, localParts } from "#rules/time/local.ts";
import { BigButton } from "#ui/button.tsx";
import type { HouseState } from "#walk/state.ts";
import { DAY_BOOK, dayTitle } from "#words/en/daybook.ts";
import { BodyChartPage } from "./body-chart-page.tsx";
import { DayLines } from "./day-lines.tsx";
import { Leaf } from "./leaf.tsx";
import "./daybook.css";

export interface DayBookProps {
  /** All rows whose wall time lies in [from, to), ms since 1970, in order of their number: the log's readBetween. */
  rowsOfDay(from: number, to: number): Promise<LogRow[]>;
  house: HouseState;
  now: Stamp;
  onClose(): void;
  /** Whose page comes up first; the first person of the house if left out. */
  person?: string;
}

type Read = { is: "reading" } | { is: "read"; rows: LogRow[] } | { is: "not read" };

export function DayBookScreen(props: DayBookProps) {
  const { house, now } = props;
  const people = Object.values(house.people);
  const today = localParts(now.wall, now.offset).date;
  const [day, setDay] = useState<LocalDate>(today);
  const [chosen, choose] = useState(props.person ?? people[0]?.person.id ?? "");
  const [view, setView] = useState<"day" | "chart">("day");
  const [steps, showSteps] = useState(false);
  const [asked, askAgain] = useState(0);
  const read = useRows(props, day, asked);
  const me = house.people[chosen];

  if (view === "chart" && me) return <BodyChartPage me={me} now={now} onBack={() => setView("day")} />;

  const turn = (to: LocalDate) => {
    if (to === day) askAgain(asked + 1);
    else setDay(to);
  };
  const page: DayPage | null = read.is === "read" ? dayPage(read.rows, chosen, house) : null;
  const state = page ? (page.lines.length === 0 ? [DAY_BOOK.nothing] : []) : [read.is === "reading" ? DAY_BOOK.reading : DAY_BOOK.notRead];
  const said = people.length === 0 ? [DAY_BOOK.nobody] : state;
  return (
    <Leaf
      title={dayTitle(day, today)}
      leafKey={`${day} ${chosen}`}
      top={
        people.length > 1
          ? people.map(({ person }) => (
              <BigButton key={person.id} role="bar" label={person.name} pressed={person.id === chosen} onPress={() => choose(person.id)} />
            ))
          : null
      }
      aside={{ label: steps ? DAY_BOOK.fewer : DAY_BOOK.allSteps, twoLines: true, press: () => showSteps(!steps) }}
      lines={[...said, ...(page?.first ?? []).map((step) => step.text), ...(page?.lines ?? []).map((line) => `${line.time}. ${line.text}`)]}
      onBack={props.onClose}
      buttons={[
        { label: DAY_BOOK.back, safe: true, press: props.onClose },
        { label: DAY_BOOK.dayBefore, twoLines: true, press: () => turn(addDays(day, -1)) },
        { label: DAY_BOOK.today, press: () => turn(today) },
        ...(compareDates(day, today) < 0 ? [{ label: DAY_BOOK.dayAfter, twoLines: true, press: () => turn(addDays(day, 1)) }] : []),
        ...(me ? [{ label: DAY_BOOK.chart, twoLines: true, press: () => setView("chart") }] : []),
      ]}
    >
      {said.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {page ? <DayLines page={page} steps={steps} /> : null}
    </Leaf>
  );
}

/** The rows of the day, read anew when the log has grown. An answer that comes late, for a page that was turned, is dropped. */
function useRows(props: DayBookProps, day: LocalDate, asked: number): Read {
  const { house, now } = props;
  const [read, setRead] = useState<{ day: LocalDate; read: Read }>({ day, read: { is: "reading" } });
  useEffect(() => {
    let turned = false;
    const { from, to } = spanOf(day, now.offset);
    props.rowsOfDay(from, to).then(
      (rows) => turned || setRead({ day, read: { is: "read", rows: rowsOn(rows, day, now.offset) } }),
      () => turned || setRead({ day, read: { is: "not read" } }),
    );
    return () => {
      turned = true;
    };
  }, [day, asked, house.lastSeq, now.offset]);
  return read.day === day ? read.read : { is: "reading" };
}
