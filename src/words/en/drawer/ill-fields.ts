// Names and hints of what a card says for high glucose and ill days.
export const ILL_NAMES: Readonly<Record<string, string>> = {
  "care.watchMinutes": "Readings while no meal comes, every",
  ketones: "Test for ketones",
  "ketones.test": "Test for ketones",
  "ketones.from": "Test for ketones from",
  "ketones.whenIll": "Test for ketones when ill, at any reading",
  sickDay: "Rules for ill days",
  "sickDay.rules": "Rules for ill days",
  "sickDay.callWhen": "When to call on an ill day",
};

const OF_LINE: Readonly<Record<string, string>> = { from: "from", says: "what the card says", call: "whom to call" };

/** "ketones.lines.1.call" -> "Ketones, line 2: whom to call"; undefined where it is another field. */
export function illFieldName(field: string): string | undefined {
  const [, i, cell] = /^ketones\.lines\.(\d+)(?:\.(\w+))?$/.exec(field) ?? [];
  if (i !== undefined) return `Ketones, line ${Number(i) + 1}${cell === undefined ? "" : `: ${OF_LINE[cell] ?? cell}`}`;
  const [, n] = /^sickDay\.rules\.(\d+)$/.exec(field) ?? [];
  return n === undefined ? undefined : `Ill days, rule ${Number(n) + 1}`;
}

export function illFieldHint(field: string): string | undefined {
  if (field === "ketones.from") return "Blank: not for a reading alone.";
  if (field === "sickDay.rules.0") return "One thing to do in each line. Blank: call the clinic.";
  if (field === "sickDay.callWhen") return "Blank: call the clinic.";
  if (/^ketones\.lines\.\d+\.says$/.test(field)) return "Blank: call the clinic.";
  if (/^ketones\.lines\.\d+\.from$/.test(field)) return "Up to where the next line begins.";
  return undefined;
}
