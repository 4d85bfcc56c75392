// Which household this tablet keeps, and the way from the demo to an own one and back.
import { changePrefs, readPrefs } from "#devices/prefs.ts";
import { deleteLog } from "#log/dexie-log.ts";

/** The demo has a database of its own; only one whose name begins so can ever be deleted. */
const LOGS = { demo: "tablebell-demo", home: "tablebell-home" } as const;

export type Home = keyof typeof LOGS;

/** A tablet on which nobody chose yet shows the demo. */
export const homeOfTablet = (): Home => readPrefs().household ?? "demo";

export const logNameOf = (home: Home): string => LOGS[home];

/** After the clear question was answered with yes: the demo is emptied and an own household begins. */
export async function startOwn(closeLog: () => void): Promise<void> {
  closeLog();
  await deleteLog(LOGS.demo);
  changePrefs({ household: "home" });
  location.reload();
}

/** The demo begins anew. */
export async function emptyDemo(closeLog: () => void): Promise<void> {
  closeLog();
  await deleteLog(LOGS.demo);
  location.reload();
}

export function showDemo(): void {
  changePrefs({ household: "demo" });
  location.reload();
}
