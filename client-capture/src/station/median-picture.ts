import type { Picture } from "../picture/picture.ts";

/**
 * What keeps still: each pixel's middle value over pictures of one size taken some time apart. A golfer who moves, and a club that comes and goes, leave no
 * trace where they covered a place in less than half of the pictures. @throws RangeError without pictures or with unlike ones.
 */
export function medianPicture(pictures: readonly Picture[]): Picture {
  const [first] = pictures;
  if (!first || pictures.some(({ width, height }) => width !== first.width || height !== first.height)) {
    throw new RangeError("medianPicture: needs pictures of one size");
  }
  const chromas = pictures.map(({ chroma }) => chroma).filter((chroma) => chroma !== null);
  return {
    width: first.width,
    height: first.height,
    luma: medianOf(pictures.map(({ luma }) => luma)),
    chroma:
      chromas.length < pictures.length
        ? null
        : { blue: medianOf(chromas.map(({ blue }) => blue)), red: medianOf(chromas.map(({ red }) => red)) },
  };
}

function medianOf(planes: readonly Uint8Array[]): Uint8Array {
  const length = planes[0]?.length ?? 0;
  const middle = new Uint8Array(length);
  const values = new Uint8Array(planes.length);
  const half = planes.length >> 1;
  for (let index = 0; index < length; index++) {
    for (let count = 0; count < planes.length; count++) {
      const value = planes[count]?.[index] ?? 0;
      let at = count;
      for (; at > 0 && (values[at - 1] ?? 0) > value; at--) values[at] = values[at - 1] ?? 0;
      values[at] = value;
    }
    middle[index] = values[half] ?? 0;
  }
  return middle;
}
