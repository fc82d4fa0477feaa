import type { Picture } from "@overcue/client-capture/picture/picture";
import { writeFileSync } from "node:fs";
import { crc32, deflateSync } from "node:zlib";

const signature = Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]);

/** Writes a picture as an RGB PNG (ISO/IEC 15948), for looking at. Grey where it has no colour. */
export function writePng(path: string, picture: Picture): void {
  const { width, height } = picture;
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 2, 0, 0, 0], 8);
  const data = deflateSync(rows(picture), { level: 4 });
  writeFileSync(
    path,
    Buffer.concat([signature, chunk("IHDR", header), chunk("IDAT", data), chunk("IEND", Buffer.alloc(0))]),
  );
}

function rows({ width, height, luma, chroma }: Picture): Buffer {
  const out = Buffer.alloc(height * (1 + width * 3));
  const halfWidth = Math.ceil(width / 2);
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) {
      const half = (row >> 1) * halfWidth + (column >> 1);
      const y = luma[row * width + column] ?? 0;
      const blue = (chroma?.blue[half] ?? 128) - 128;
      const red = (chroma?.red[half] ?? 128) - 128;
      const at = row * (1 + width * 3) + 1 + column * 3;
      out[at] = byte(y + 1.402 * red);
      out[at + 1] = byte(y - 0.344136 * blue - 0.714136 * red);
      out[at + 2] = byte(y + 1.772 * blue);
    }
  }
  return out;
}

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, "latin1"), data]);
  const out = Buffer.alloc(body.length + 8);
  out.writeUInt32BE(data.length, 0);
  body.copy(out, 4);
  out.writeUInt32BE(crc32(body), body.length + 4);
  return out;
}

const byte = (value: number): number => Math.min(255, Math.max(0, Math.round(value)));
