import { expect, test } from "vitest";
import { milliseconds } from "@overcue/shared-geometry/units";
import type { CapturedFrame, FrameSource } from "@overcue/client-capture/frames/frame-source";
import type { MeasureClient } from "@overcue/client-capture/measuring/measure-client";
import type { PoseClient } from "@overcue/client-capture/pose/pose-client";
import { runSource } from "@overcue/client-capture/running/run-source";
import { liveClock } from "@overcue/client-capture/running/source-clock";

/** A picture that counts how often it is closed. */
function picture(closed: number[], index: number): CapturedFrame {
  const image = {
    displayWidth: 4,
    displayHeight: 4,
    clone: () => image,
    close: () => closed.push(index),
  } as unknown as VideoFrame;
  return { image, rotation: 0, captureTime: milliseconds(index * 16), index, truth: null };
}

interface Script {
  readonly frames: number;
  readonly measure: (index: number) => Promise<unknown>;
  readonly find?: () => Promise<unknown>;
  /** Pictures that pile up behind a live source's one. */
  readonly waiting?: number;
}

async function run({ frames, measure, find, waiting }: Script) {
  const closed: number[] = [];
  const failed: string[] = [];
  const measured: number[] = [];
  let next = 0;
  let atOnce = 0;
  let most = 0;
  const source: FrameSource = {
    info: { kind: "clip", width: 4, height: 4, nominalFramesPerSecond: 60, zoom: 1, knownCamera: null },
    next: () => Promise.resolve(next < frames ? picture(closed, next++) : null),
    close: () => undefined,
    ...(waiting === undefined ? {} : { live: { waiting: () => waiting, missed: () => 0 } }),
  };
  await runSource({
    source,
    clock: liveClock,
    pose: () => (find === undefined ? null : ({ find } as unknown as PoseClient)),
    measure: {
      measure: async (_image: unknown, _rotation: unknown, t: number) => {
        most = Math.max(most, ++atOnce);
        try {
          return await measure(Math.round(t / 16));
        } finally {
          atOnce--;
        }
      },
      tellBody: () => undefined,
    } as unknown as MeasureClient,
    now: () => 0,
    wait: () => Promise.resolve(),
    stopped: () => false,
    paused: () => false,
    hooks: {
      onPicture: () => undefined,
      onMeasured: (_measured, { index }) => measured.push(index),
      onPose: () => undefined,
      onFailed: (why) => failed.push(why),
    },
  });
  return { closed, failed, measured, most };
}

test("R1 one picture is measured at a time, and a clip loses none", async () => {
  const { measured, most } = await run({ frames: 5, measure: () => Promise.resolve({}) });
  expect(measured).toEqual([0, 1, 2, 3, 4]);
  expect(most).toBe(1);
});

test("R2 a picture that fails is closed and told, and the next one is asked for", async () => {
  const { measured, failed, closed } = await run({
    frames: 4,
    measure: (index) => (index === 1 ? Promise.reject(new Error("no pixels")) : Promise.resolve({})),
  });
  expect(measured).toEqual([0, 2, 3]);
  expect(failed).toEqual(["no pixels"]);
  expect(closed).toContain(1);
});

test("R3 a pose model that fails on a picture is told and asked again at the next one", async () => {
  let asked = 0;
  const { measured, failed } = await run({
    frames: 3,
    measure: () =>
      new Promise((resolve) =>
        setTimeout(() => {
          resolve({});
        }, 1),
      ),
    find: () => {
      asked++;
      return Promise.reject(new Error("no pose"));
    },
  });
  expect(measured).toEqual([0, 1, 2]);
  expect(asked).toBe(3);
  expect(failed).toEqual(["no pose", "no pose", "no pose"]);
});

test("R4 the pose model gets no second picture while it is at one", async () => {
  let asked = 0;
  await run({
    frames: 4,
    measure: () => Promise.resolve({}),
    find: () => {
      asked++;
      return new Promise(() => undefined);
    },
  });
  expect(asked).toBe(1);
});

test.each([
  { waiting: 0, asked: 20 },
  { waiting: 1, asked: 3 },
])(
  "R5 the pose model waits while $waiting pictures pile up, but no longer than hands are carried on",
  async ({ waiting, asked }) => {
    let count = 0;
    await run({
      frames: 20,
      waiting,
      measure: () =>
        new Promise((resolve) => {
          setTimeout(resolve, 1, {});
        }),
      find: () => {
        count++;
        return Promise.resolve({ body: null });
      },
    });
    expect(count).toBe(asked);
  },
);
