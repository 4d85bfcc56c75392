// The printed code that opens the drawer once when a PIN is forgotten. Only a hash of it is kept.

/** Without I, O, 0 and 1, which are taken for one another on paper. 32 signs: each byte gives one without favour. */
const SIGNS = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789";
/** 16 signs of 5 bits: 80 bits, far beyond what the waits after wrong tries let anybody guess. */
export const CODE_SIGNS = 16;
const GROUP = 4;

/** Bytes from a good source of chance into a code as it is printed: "ABCD-EFGH-JKLM-NPQR". */
export function codeFrom(bytes: readonly number[]): string {
  const signs = bytes.slice(0, CODE_SIGNS).map((byte) => SIGNS.charAt(byte % SIGNS.length));
  return Array.from({ length: CODE_SIGNS / GROUP }, (_, i) => signs.slice(i * GROUP, (i + 1) * GROUP).join("")).join("-");
}

/** The code as it was printed, from what was typed: small letters, spaces and missing dashes do not matter. null: that is no code. */
export function readCode(typed: string): string | null {
  const signs = typed.toUpperCase().replaceAll(/[\s-]/g, "");
  if (signs.length !== CODE_SIGNS || [...signs].some((sign) => !SIGNS.includes(sign))) return null;
  return signs.replaceAll(/(.{4})(?=.)/g, "$1-");
}
