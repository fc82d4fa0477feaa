import { Builder, ByteBuffer } from "flatbuffers";

const alignment = 64;
const modelFields = 8;
const slot = { version: 0, buffers: 4, metadata: 6 } as const;
/** operator codes, sub-graphs, description, metadata buffers, signatures: kept as they are. */
const keptOffsets = [1, 2, 3, 5, 7] as const;

/**
 * The same TensorFlow Lite model with one more metadata buffer. Nothing of the old file moves: a new root table is written
 * before its bytes and points forward into them, so that no table of the schema has to be understood but the root.
 * Fields by TensorFlow Lite's public schema (schema.fbs, file identifier TFL3).
 * @throws Error where the bytes are no such model or hold metadata of the same name already.
 */
export function addMetadata(model: Uint8Array, name: string, content: Uint8Array): Uint8Array {
  const old = new ByteBuffer(model);
  if (!old.__has_identifier("TFL3")) throw new Error("addMetadata: not a TensorFlow Lite model");
  const root = old.readInt32(0);
  const field = (index: number): number => old.__offset(root, 4 + 2 * index);
  const target = (index: number): number => (field(index) === 0 ? 0 : old.__indirect(root + field(index)));
  const elements = (index: number): number[] => {
    const vector = target(index);
    if (vector === 0) return [];
    return Array.from({ length: old.readInt32(vector) }, (_, i) => old.__indirect(vector + 4 + 4 * i));
  };
  const named = elements(slot.metadata).map((entry) => String(old.__string(entry + old.__offset(entry, 4))));
  if (named.includes(name)) throw new Error(`addMetadata: the model has ${name} already`);

  const builder = new Builder(model.length + content.length + 4096);
  builder.prep(alignment, 0);
  const padded = new Uint8Array(Math.ceil(model.length / alignment) * alignment);
  padded.set(model);
  builder.createByteVector(padded);
  // A builder counts places from the end of what it writes.
  const moved = (position: number): number => padded.length - position;
  const offsets = (list: readonly number[]): number => {
    builder.startVector(4, list.length, 4);
    for (const offset of [...list].reverse()) builder.addOffset(offset);
    return builder.endVector();
  };

  builder.prep(16, content.length);
  const data = builder.createByteVector(content);
  builder.startObject(1);
  builder.addFieldOffset(0, data, 0);
  const buffer = builder.endObject();
  const oldBuffers = elements(slot.buffers).map(moved);
  const buffers = offsets([...oldBuffers, buffer]);
  const nameOffset = builder.createString(name);
  builder.startObject(2);
  builder.addFieldOffset(0, nameOffset, 0);
  builder.addFieldInt32(1, oldBuffers.length, 0);
  const entry = builder.endObject();
  const metadata = offsets([...elements(slot.metadata).map(moved), entry]);

  builder.startObject(modelFields);
  const version = field(slot.version);
  builder.addFieldInt32(slot.version, version === 0 ? 0 : old.readInt32(root + version), 0);
  for (const index of keptOffsets) {
    if (target(index) !== 0) builder.addFieldOffset(index, moved(target(index)), 0);
  }
  builder.addFieldOffset(slot.buffers, buffers, 0);
  builder.addFieldOffset(slot.metadata, metadata, 0);
  builder.finish(builder.endObject(), "TFL3");
  return builder.asUint8Array();
}
