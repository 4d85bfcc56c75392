// A photograph made small: the letters of a card stay readable, and years of them still fit the tablet.

/** Pixels of the longer side: a page of 297 mm at about 140 dots an inch. */
const LONGEST = 1600;
const QUALITIES = [0.7, 0.5, 0.35, 0.2];

/** most: letters of the text that it may have. "not a picture" too where it cannot be made small enough. */
export async function smallPicture(file: Blob, most: number): Promise<string | "not a picture"> {
  const bitmap = await createImageBitmap(file).catch(() => null);
  if (bitmap === null) return "not a picture";
  const scale = Math.min(1, LONGEST / Math.max(bitmap.width, bitmap.height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.round(bitmap.width * scale));
  canvas.height = Math.max(1, Math.round(bitmap.height * scale));
  const context = canvas.getContext("2d");
  context?.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  const made = QUALITIES.map((quality) => canvas.toDataURL("image/jpeg", quality)).find((text) => text.length <= most);
  return context && made?.startsWith("data:image/jpeg;base64,") ? made : "not a picture";
}
