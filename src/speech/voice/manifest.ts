// What is known of the shipped voice file, so that a torn or strange file never speaks.
import * as z from "zod/mini";

const voiceFile = z.object({
  file: z.string(),
  bytes: z.number(),
  sha256: z.string(),
  recipe: z.string(),
  licence: z.string(),
});

/** The bytes of the voice, checked against the manifest; throws with a plain reason. `hash` gives a SHA-256 in hexadecimal. */
export async function checkedVoice(
  manifest: unknown,
  fetchBytes: (file: string) => Promise<ArrayBuffer>,
  hash: (bytes: ArrayBuffer) => Promise<string>,
): Promise<ArrayBuffer> {
  const told = voiceFile.safeParse(manifest);
  if (!told.success) throw new Error("the voice's manifest cannot be read");
  const bytes = await fetchBytes(told.data.file);
  if (bytes.byteLength !== told.data.bytes) throw new Error(`the voice has ${bytes.byteLength} bytes, not ${told.data.bytes}`);
  if ((await hash(bytes)) !== told.data.sha256) throw new Error("the voice is not the one that was built");
  return bytes;
}
