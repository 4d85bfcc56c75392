// Reads a draft field by field and collects every problem, so that a keeper sees all of them at once.
import type { ClockTime, LocalDate } from "#events/quantity.ts";
import type { Draft, Problem, ProblemWhy } from "./problem.ts";
import { type NumberSpan, readDate, readNumber, readPhone, readTime, type Typed } from "./typed.ts";

/** Every method gives a value to go on with, even where it noted a problem; with problems nothing that was read may be used. */
export class Reader {
  readonly problems: Problem[] = [];

  constructor(private readonly draft: Draft) {}

  raw(field: string): string {
    return (this.draft[field] ?? "").trim();
  }

  note(field: string, why: ProblemWhy): void {
    this.problems.push({ field, got: this.raw(field), ...why });
  }

  text(field: string, most: number): string {
    const text = this.raw(field);
    if (text === "") this.note(field, { why: "empty" });
    else if (text.length > most) this.note(field, { why: "too long", most });
    return text;
  }

  blankOrText(field: string, most: number): string | null {
    return this.raw(field) === "" ? null : this.text(field, most);
  }

  number(field: string, span: NumberSpan): number {
    return this.take(field, readNumber(this.raw(field), span), span.least);
  }

  blankOrNumber(field: string, span: NumberSpan): number | null {
    return this.raw(field) === "" ? null : this.number(field, span);
  }

  date(field: string): LocalDate {
    return this.take(field, readDate(this.raw(field)), "1970-01-01");
  }

  blankOrDate(field: string): LocalDate | null {
    return this.raw(field) === "" ? null : this.date(field);
  }

  time(field: string): ClockTime {
    return this.take(field, readTime(this.raw(field)), "00:00");
  }

  phone(field: string): string {
    return this.take(field, readPhone(this.raw(field)), "");
  }

  /** One of the options, or the problem "not chosen". */
  choice<const T extends string>(field: string, options: readonly [T, ...T[]]): T {
    const chosen = options.find((option) => option === this.raw(field));
    if (chosen === undefined) this.note(field, { why: "not chosen" });
    return chosen ?? options[0];
  }

  private take<T>(field: string, read: Typed<T>, otherwise: T): T {
    if (read.ok) return read.value;
    const { ok: _ok, ...why } = read;
    this.note(field, why);
    return otherwise;
  }
}
