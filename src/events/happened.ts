// Every fact the log can hold, as one union. A fact is never changed: a correction is a new fact.
import * as z from "zod/mini";
import { houseEvents } from "./happened-house.ts";
import { reminderEvents } from "./happened-reminder.ts";
import { walkEvents } from "./happened-walk.ts";
import { insulinWatchEvents } from "./happened-watch.ts";

export const happened = z.discriminatedUnion("type", [...houseEvents, ...reminderEvents, ...insulinWatchEvents, ...walkEvents]);
export type Happened = z.infer<typeof happened>;
export type HappenedType = Happened["type"];
export type Of<T extends HappenedType> = Extract<Happened, { type: T }>;
