// One spelling for one value, so that a hash over it means something. RFC 8785 (JSON Canonicalization Scheme):
// members sorted by UTF-16 code units, no white space, numbers and strings as ECMAScript writes them.

/**
 * The canonical JSON text of a plain value. A member that is undefined is left out, as JSON does, so that a value
 * hashes the same before and after it was written to a file.
 * Throws (a defect) for what JSON cannot carry: NaN, infinities, bigint, functions, dates, maps.
 * One difference from the RFC: half of a surrogate pair is escaped instead of refused, because a name that was cut in the
 * middle of a character must not stop an injection from being written down.
 */
export function canonical(value: unknown): string {
  if (typeof value === "string") return spell(value);
  if (value === null || typeof value === "boolean") return String(value);
  if (typeof value === "number") {
    if (!Number.isFinite(value)) throw new TypeError(`No canonical form for the number ${value}`);
    return JSON.stringify(value);
  }
  if (Array.isArray(value)) return `[${value.map(canonical).join(",")}]`;
  if (isRecord(value)) {
    let members = "";
    for (const name of Object.keys(value).sort()) {
      const member = value[name];
      if (member !== undefined) members += `${members === "" ? "" : ","}${spell(name)}:${canonical(member)}`;
    }
    return `{${members}}`;
  }
  throw new TypeError(`No canonical form for ${Object.prototype.toString.call(value)}`);
}

/** Printable ASCII but the quotation mark and the backslash stands for itself: the common case, spared the longer way. */
const PLAIN = /^[ !#-[\]-~]*$/;
const spell = (text: string): string => (PLAIN.test(text) ? `"${text}"` : JSON.stringify(text));

function isRecord(value: unknown): value is Record<string, unknown> {
  // By tag, not by prototype: a value that comes out of a database may be of another realm.
  return Object.prototype.toString.call(value) === "[object Object]";
}
