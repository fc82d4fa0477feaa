/** The first line of an uncompressed Y4M file as Chromium's fake camera reads it; `FRAME\n` opens each picture. */
export const y4mHeader = (
  { width, height }: { readonly width: number; readonly height: number },
  framesPerSecond: number,
): string => `YUV4MPEG2 W${width} H${height} F${framesPerSecond}:1 Ip A1:1 C420jpeg\n`;
