import { Buffer } from "node:buffer";
import { crc32, deflateSync } from "node:zlib";
import { bars, dots, ground } from "./icon-shapes.ts";

type Rgb = readonly [red: number, green: number, blue: number];

/** Each pixel is looked at in this many places each way, for smooth edges. */
const samples = 4;

/** The mark as a PNG file of `size` by `size` pixels (W3C PNG, third edition: RGB, 8 bits, one unfiltered scan line after another). */
export function iconPng(size: number): Uint8Array {
  const rows = Buffer.alloc(size * (1 + 3 * size));
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) rows.set(pixel(x, y, size), y * (1 + 3 * size) + 1 + 3 * x);
  }
  const header = Buffer.alloc(13);
  header.writeUInt32BE(size, 0);
  header.writeUInt32BE(size, 4);
  header.set([8, 2, 0, 0, 0], 8);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    signature,
    chunk("IHDR", header),
    chunk("IDAT", deflateSync(rows)),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

function pixel(x: number, y: number, size: number): Rgb {
  const sum: [number, number, number] = [0, 0, 0];
  for (let i = 0; i < samples * samples; i++) {
    const across = x + ((i % samples) + 0.5) / samples;
    const down = y + (Math.floor(i / samples) + 0.5) / samples;
    const [red, green, blue] = rgb(colourAt(across / size, down / size));
    sum[0] += red;
    sum[1] += green;
    sum[2] += blue;
  }
  const mean = (value: number): number => Math.round(value / (samples * samples));
  return [mean(sum[0]), mean(sum[1]), mean(sum[2])];
}

/** What lies on top at a point of the unit square. */
function colourAt(x: number, y: number): string {
  const dot = dots.findLast(({ at, radius }) => Math.hypot(x - at[0], y - at[1]) <= radius);
  if (dot !== undefined) return dot.colour;
  const bar = bars.findLast(({ from, to, width }) => {
    const [along, down] = [to[0] - from[0], to[1] - from[1]];
    const share = ((x - from[0]) * along + (y - from[1]) * down) / (along * along + down * down);
    const at = Math.min(1, Math.max(0, share));
    return Math.hypot(x - from[0] - at * along, y - from[1] - at * down) <= width / 2;
  });
  return bar?.colour ?? ground;
}

const rgb = (hex: string): Rgb => {
  const value = parseInt(hex.slice(1), 16);
  return [value >> 16, (value >> 8) & 255, value & 255];
};

function chunk(type: string, data: Uint8Array): Uint8Array {
  const named = Buffer.concat([Buffer.from(type, "latin1"), data]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(crc32(named));
  return Buffer.concat([length, named, sum]);
}
