// Marked places into the state of a person: when each was made, and when it went.
import type { Of } from "#events/happened.ts";
import { DAY } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import type { PersonState } from "./state.ts";

/** Well past the 12 weeks that the body chart looks back. */
const GONE_KEPT_MS = 200 * DAY;

export const withMark = (person: PersonState, { noGo }: Of<"no-go place marked">, at: Stamp): PersonState => ({
  ...person,
  noGo: [...person.noGo, { ...noGo, markedAt: at.wall }],
});

export function withoutMark(person: PersonState, { id }: Of<"no-go place cleared">, at: Stamp): PersonState {
  const gone = person.noGo.filter((mark) => mark.id === id).map((mark) => ({ ...mark, goneAt: at.wall }));
  return {
    ...person,
    noGo: person.noGo.filter((mark) => mark.id !== id),
    marksGone: [...gone, ...person.marksGone].filter((mark) => at.wall - mark.goneAt < GONE_KEPT_MS),
  };
}

export const withLumpsAsked = (person: PersonState, { found }: Of<"felt for lumps">, at: Stamp): PersonState => ({
  ...person,
  lumpsAsked: { at: at.wall, found },
});
