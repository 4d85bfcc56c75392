// A person's own mark: the shape before the name, wherever two people must not be mixed up.
import type { Person } from "#events/person.ts";

const SHAPES = { circle: "●", square: "■", triangle: "▲", star: "★" } as const;

/** "● Marta". */
export const markedName = ({ shape, name }: Pick<Person, "shape" | "name">): string => `${SHAPES[shape]} ${name}`;

/** For the voice: a shape is seen and not said. */
export const withoutShapes = (text: string): string => text.replace(/[●■▲★] /g, "");
