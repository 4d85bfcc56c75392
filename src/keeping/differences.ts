// Where two typings of a card differ, field by field.

export type Leaf = string | number | boolean | null;

/** field is a path: "meals.lunch.bands.2.units". null: left blank, or the whole part is missing. */
export interface Difference {
  field: string;
  first: Leaf;
  second: Leaf;
}

type Parts = Record<string, unknown>;
const isParts = (value: unknown): value is Parts => typeof value === "object" && value !== null;
const leaf = (value: unknown): Leaf => (isParts(value) ? "filled in" : value === undefined || value === null ? null : (value as Leaf));

/** Kinds that decide which other fields there are: where they differ, nothing below them can be compared. */
const KINDS = ["kind", "model"] as const;

/** Plain JSON values only. [] means equal. */
export function differences(first: unknown, second: unknown, field = ""): Difference[] {
  if (!isParts(first) || !isParts(second)) {
    const same = !isParts(first) && !isParts(second) && leaf(first) === leaf(second);
    return same ? [] : [{ field, first: leaf(first), second: leaf(second) }];
  }
  const under = (name: string) => (field === "" ? name : `${field}.${name}`);
  const kind = KINDS.find((name) => name in first && name in second && first[name] !== second[name]);
  if (kind !== undefined) return [{ field: under(kind), first: leaf(first[kind]), second: leaf(second[kind]) }];
  const names = [...new Set([...Object.keys(first), ...Object.keys(second)])];
  return names.flatMap((name) => differences(first[name], second[name], under(name)));
}
