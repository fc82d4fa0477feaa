import { expect, test } from "vitest";
import { milliseconds } from "@overcue/shared-geometry/units";
import type { CapturedFrame, FrameSource } from "@overcue/client-capture/frames/frame-source";
import { thinnedSource } from "@overcue/client-capture/frames/thinned-source";

test("every third picture from the second comes, numbered anew and three times as fast, and those left out are closed", async () => {
  const closed: number[] = [];
  let next = 0;
  const clip: FrameSource = {
    info: { kind: "clip", width: 4, height: 4, nominalFramesPerSecond: 30, zoom: 1, knownCamera: null },
    next() {
      if (next === 8) return Promise.resolve(null);
      const index = next++;
      const image = { close: () => closed.push(index) } as unknown as ImageBitmap;
      return Promise.resolve({ image, rotation: 0, captureTime: milliseconds(index * 30), index, truth: null });
    },
    close: () => closed.push(-1),
  };
  const thinned = thinnedSource(clip, { every: 3, from: 1 });
  const shown: CapturedFrame[] = [];
  for (let frame = await thinned.next(); frame !== null; frame = await thinned.next()) shown.push(frame);
  thinned.close();
  expect(shown.map(({ index, captureTime }) => [index, captureTime])).toStrictEqual([
    [0, 10],
    [1, 40],
    [2, 70],
  ]);
  expect(closed).toStrictEqual([0, 2, 3, 5, 6, -1]);
});
