// One id for one insulin, whoever types its name: it ties pens to the card.

/** "Insulin lispro", 100 -> "lispro-100". */
export function insulinId(name: string, unitsPerMl: number): string {
  const words = name.toLowerCase().replace(/^insulin\s+/, "");
  return `${words.replaceAll(/[^a-z0-9]+/g, "-").replaceAll(/^-|-$/g, "")}-${unitsPerMl}`;
}
