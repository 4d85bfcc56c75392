// What a net's files hold, so that a torn or strange file never hears. The shape is written by recipe/export.py.
import * as z from "zod/mini";

const mel = z.object({
  frame: z.number(),
  hop: z.number(),
  fft: z.number(),
  bands: z.number(),
  lowHz: z.number(),
  highHz: z.number(),
  preEmphasis: z.number(),
  floor: z.number(),
});
const layer = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("conv"), name: z.string(), in: z.number(), out: z.number(), width: z.number(), stride: z.number() }),
  z.object({ kind: z.literal("residual"), name: z.string(), channels: z.number(), width: z.number(), dilation: z.number() }),
  z.object({ kind: z.literal("bigru"), name: z.string(), in: z.number(), hidden: z.number() }),
  z.object({ kind: z.literal("linear"), name: z.string(), in: z.number(), out: z.number() }),
]);
const tensor = z.object({
  name: z.string(),
  shape: z.array(z.number()),
  type: z.enum(["int8", "float32"]),
  offset: z.number(),
  scale: z.optional(z.string()),
});
const member = z.object({ file: z.string(), sha256: z.string(), bytes: z.number(), layers: z.array(layer), tensors: z.array(tensor) });
const manifest = z.object({
  format: z.literal(1),
  sampleRate: z.literal(16000),
  mel,
  phones: z.array(z.string()),
  members: z.array(member),
});

export type Manifest = z.infer<typeof manifest>;
export type MelShape = z.infer<typeof mel>;
export type Layer = z.infer<typeof layer>;
export type MemberFile = z.infer<typeof member>;
/** Tensors by name, rounded weights already multiplied out. */
export type Weights = ReadonlyMap<string, Float32Array>;

/** Throws with a plain reason when this is no manifest of ours. */
export function readManifest(told: unknown): Manifest {
  const read = manifest.safeParse(told);
  if (!read.success) throw new Error("the ear's manifest cannot be read");
  return read.data;
}

/** One member's weights out of its bytes; `hash` gives a SHA-256 in hexadecimal. Throws with a plain reason when they do not fit. */
export async function readMember(file: MemberFile, bytes: ArrayBuffer, hash: (bytes: ArrayBuffer) => Promise<string>): Promise<Weights> {
  if (bytes.byteLength !== file.bytes) throw new Error(`${file.file} has ${bytes.byteLength} bytes, not ${file.bytes}`);
  if ((await hash(bytes)) !== file.sha256) throw new Error(`${file.file} is not the one that was made`);
  const raw = new Map<string, Float32Array | Int8Array>();
  for (const { name, shape, type, offset } of file.tensors) {
    const count = shape.reduce((product, n) => product * n, 1);
    raw.set(name, type === "int8" ? new Int8Array(bytes, offset, count) : new Float32Array(bytes, offset, count));
  }
  const weights = new Map<string, Float32Array>();
  for (const { name, shape, type, scale } of file.tensors) {
    const values = raw.get(name) ?? new Float32Array();
    if (type === "float32" && values instanceof Float32Array) weights.set(name, values);
    const scales = scale === undefined ? undefined : raw.get(scale);
    if (type !== "int8") continue;
    if (scales === undefined) throw new Error(`${file.file} has no scale for ${name}`);
    const row = values.length / (shape[0] ?? 1);
    weights.set(
      name,
      Float32Array.from(values, (q, i) => q * (scales[Math.floor(i / row)] ?? 0)),
    );
  }
  return weights;
}
