import type { Body } from "@overcue/client-capture/pipeline/body";
import type { Picture } from "@overcue/client-capture/picture/picture";
import { drawBody, drawPicture, seeded } from "../../unit/shaft/draw-picture.ts";

export interface SwingPicture {
  readonly picture: Picture;
  readonly body: Body;
}

const pictureSize = { width: 720, height: 1280 } as const;

/** Pictures of a shaft that turns to and fro before a horizon and two posts, with noise; the same every time. */
export function drawSwing(count: number): SwingPicture[] {
  const { width, height } = pictureSize;
  const random = seeded(9);
  const torso = 190;
  return Array.from({ length: count }, (_, i) => {
    const angle = 0.9 - 1.6 * (1 - Math.cos((2 * Math.PI * i) / count));
    const x = 380 + 60 * Math.sin((2 * Math.PI * i) / count);
    const y = 640;
    const lines = [
      { x: 0, y: 560, angle: 0, length: width, width: 5, level: 170 },
      { x: 120, y: 200, angle: Math.PI / 2, length: 700, width: 9, level: 60 },
      { x: 640, y: 300, angle: Math.PI / 2, length: 500, width: 6, level: 60 },
      { x: x + 25 * Math.cos(angle), y: y + 25 * Math.sin(angle), angle, length: 320, width: 5, level: 205 },
    ];
    return { picture: drawPicture(width, height, 110, lines, 8, random), body: drawBody(0, x, y, torso) };
  });
}
