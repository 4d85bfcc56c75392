// A body as a keeper measures and marks it: lengths in the person's own hands, places by fingers from a landmark.
import type { Happened } from "#events/happened.ts";
import { type Person, person as personShape } from "#events/person.ts";
import type { BodyMeasures, NoGo, Region, Side } from "#events/spot.ts";
import { REGIONS, SIDES } from "#rules/body/area.ts";
import { MARK_RADIUS_MM } from "#rules/body/marks.ts";
import { fromsOf, MOST_FINGERS_TOLD, placeTold, type ToldFrom } from "#rules/body/told-place.ts";
import { BODY } from "./people.ts";
import type { Draft, Problem } from "./problem.ts";
import { Reader } from "./reader.ts";

type BodySet = { ok: true; events: Happened[] } | { ok: false; problems: readonly Problem[] };

export const IN_HANDS = ["bellyWidthMm", "bellyHeightMm", "thighLengthMm", "armLengthMm"] as const;
/** Half and quarter hands and the like: a tenth of a hand is half a finger. */
const HAND_DECIMALS = 1;

/** A length left blank stays as it is. In hands of `person.body.handMm`, which the same form may change. */
export function measureByHands(draft: Draft, person: Person, keeper: string): BodySet {
  const r = new Reader(draft);
  const handMm = r.blankOrNumber("hands.handMm", BODY.handMm) ?? person.body.handMm;
  const measured = IN_HANDS.map((name): [keyof BodyMeasures, number] => {
    const { least, most } = BODY[name];
    const tenths = (mm: number, round: (n: number) => number) => round((mm / handMm) * 10) / 10;
    const span = { least: tenths(least, Math.ceil), most: tenths(most, Math.floor), decimals: HAND_DECIMALS };
    const hands = r.blankOrNumber(`hands.${name}`, span);
    return [name, hands === null ? person.body[name] : Math.round(hands * handMm)];
  });
  if (r.problems.length > 0) return { ok: false, problems: r.problems };
  const body = { ...person.body, ...Object.fromEntries(measured), handMm };
  return { ok: true, events: [{ type: "person changed", person: personShape.parse({ ...person, body }), keeper }] };
}

export const MARK_KINDS = ["scar", "mole", "lump", "sore", "other"] as const satisfies readonly NoGo["kind"][];

type PartName = `${Side} ${Region}`;
export const MARK_PARTS = REGIONS.flatMap((region) => SIDES.map((side): PartName => `${side} ${region}`));

/** "navel up", "knee up": as the form names where the counting begins. */
export const fromName = ({ landmark, way }: ToldFrom): string => `${landmark} ${way}`;

export function partOfMark(draft: Draft): { region: Region; side: Side } | null {
  const [side, region] = (draft["mark.part"] ?? "").split(" ");
  const found = { region: REGIONS.find((one) => one === region), side: SIDES.find((one) => one === side) };
  return found.region && found.side ? { region: found.region, side: found.side } : null;
}

/** A scar may be long: up to a hand. */
const RADIUS = { least: 5, most: 80, decimals: 0 };
const COUNT = { least: 0, most: MOST_FINGERS_TOLD, decimals: 0 };

/** id: a fresh one. Blank size: as a mark made at the needle. */
export function markPlace(draft: Draft, id: string, body: BodyMeasures): BodySet {
  const r = new Reader(draft);
  const kind = r.choice("mark.kind", MARK_KINDS);
  const part = partOfMark(draft);
  if (part === null) r.note("mark.part", { why: "not chosen" });
  const froms = part ? fromsOf(part.region, body) : [];
  const from = froms.length === 1 ? froms[0] : froms.find((one) => fromName(one) === r.raw("mark.from"));
  if (part && from === undefined) r.note("mark.from", { why: "not chosen" });
  const along = r.number("mark.along", COUNT);
  const outwards = r.number("mark.outwards", COUNT);
  const radiusMm = r.blankOrNumber("mark.radiusMm", RADIUS) ?? MARK_RADIUS_MM;
  const spot = part && from ? placeTold({ ...part, from, along, outwards }, body) : null;
  if (r.problems.length > 0 || spot === null) return { ok: false, problems: r.problems };
  return { ok: true, events: [{ type: "no-go place marked", noGo: { id, spot, radiusMm, kind } }] };
}
