/**
 * The MP4 trimmed as phones trim, without coding it anew: every picture stays in the file, and an edit list (ISO/IEC 14496-12, 8.6.6)
 * says that the first track's presentation begins `seconds` into it.
 * @throws Error where the bytes are no MP4 of one track without an edit list.
 */
export function trimMp4(bytes: Buffer, seconds: number): Buffer {
  const movie = boxIn(bytes, 0, bytes.length, "moov");
  const track = boxIn(bytes, movie.from, movie.to, "trak");
  const media = boxIn(bytes, track.from, track.to, "mdia");
  const header = boxIn(bytes, media.from, media.to, "mdhd");
  const perSecond = bytes.readUInt32BE(header.from + (bytes[header.from] === 1 ? 20 : 12));
  const edits = Buffer.alloc(36);
  edits.writeUInt32BE(36, 0);
  edits.write("edts", 4);
  edits.writeUInt32BE(28, 8);
  edits.write("elst", 12);
  edits.writeUInt32BE(1, 20);
  edits.writeUInt32BE(Math.round(seconds * perSecond), 28);
  edits.writeUInt16BE(1, 32);

  const trimmed = Buffer.concat([bytes.subarray(0, media.at), edits, bytes.subarray(media.at)]);
  for (const grown of [movie, track]) trimmed.writeUInt32BE(grown.to - grown.at + edits.length, grown.at);
  const pictures = boxIn(bytes, 0, bytes.length, "mdat");
  if (pictures.at > movie.at) moveChunks(trimmed, edits.length);
  return trimmed;
}

interface Box {
  /** Where it begins, and from where to where its content lies. */
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

function boxIn(bytes: Buffer, from: number, to: number, name: string): Box {
  for (let at = from; at + 8 <= to; at += bytes.readUInt32BE(at)) {
    if (bytes.readUInt32BE(at) < 8) break;
    if (bytes.toString("latin1", at + 4, at + 8) === name) return { at, from: at + 8, to: at + bytes.readUInt32BE(at) };
  }
  throw new Error(`this MP4 has no ${name} where one is expected`);
}

/** The table of chunks tells places in the file: they have moved on. */
function moveChunks(bytes: Buffer, by: number): void {
  let inside = boxIn(bytes, 0, bytes.length, "moov");
  for (const name of ["trak", "mdia", "minf", "stbl", "stco"]) inside = boxIn(bytes, inside.from, inside.to, name);
  const count = bytes.readUInt32BE(inside.from + 4);
  for (let k = 0; k < count; k++) {
    const at = inside.from + 8 + 4 * k;
    bytes.writeUInt32BE(bytes.readUInt32BE(at) + by, at);
  }
}
