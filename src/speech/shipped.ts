// Files that ship with the app, read in a worker: the ear's nets and the voice.

/** SHA-256 in hexadecimal. */
export const hashOf = async (bytes: ArrayBuffer): Promise<string> =>
  [...new Uint8Array(await crypto.subtle.digest("SHA-256", bytes))].map((b) => b.toString(16).padStart(2, "0")).join("");

/** Throws where the file is not there. */
export async function shipped(file: string, folder: string): Promise<Response> {
  const response = await fetch(new URL(file, folder));
  if (!response.ok) throw new Error(`${file} was not found (${response.status})`);
  return response;
}
