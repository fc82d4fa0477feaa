import { describe, expect, it } from "vitest";
import { startStationSetUp, type StationSetUpParts } from "@overcue/client-capture/setup/station-set-up";
import { createStationStore } from "@overcue/client-capture/setup/station-store";
import type { SnappedStick } from "@overcue/client-capture/station/snap-stick";
import { project } from "@overcue/shared-geometry/camera-project";
import { defaultCamera } from "@overcue/shared-geometry/default-camera";
import { defaultStation } from "@overcue/shared-geometry/default-station";
import { imagePoint, type Point } from "@overcue/shared-geometry/point";
import { stickEnds } from "@overcue/shared-geometry/station-model";
import type { StationLine } from "@overcue/shared-geometry/station";
import { stickBetween } from "@overcue/shared-geometry/stick-in-image";
import { pixels } from "@overcue/shared-geometry/units";

const settings = defaultStation("7-iron", "right");
const camera = defaultCamera(pixels(720), pixels(1280), "right");

function endOf(line: StationLine, end: "near" | "far"): Point<"image"> {
  const at = project(camera, stickEnds(line, settings, [0, 0, 0])[end]);
  if (at === null) throw new Error("behind the lens");
  return at;
}

/** The measuring worker with a picture in which nothing is found, and whose stick is snapped when it is said to be. */
function begin(change: Partial<StationSetUpParts["measure"]> = {}) {
  let kept = 0;
  const store = createStationStore(settings);
  const setUp = startStationSetUp(store, {
    measure: {
      keep: (first) => Promise.resolve((kept = first ? 1 : kept + 1)),
      freeze: () => Promise.resolve({ width: 720, height: 1280, rgba: new Uint8ClampedArray(720 * 1280 * 4) }),
      findSticks: () => Promise.resolve({ found: false, reason: "no-lines" }),
      snapStick: () => Promise.resolve({ ok: false, reason: "nothing-bright-there" }),
      ...change,
    },
    pace: "live",
    hints: () => ({}),
    remember: () => undefined,
  });
  return { store, setUp, kept: () => kept };
}

const lines = ["ball-line", "toe-line", "heel-line"] as const;

async function gather(setUp: ReturnType<typeof begin>["setUp"], from = 0): Promise<void> {
  for (let t = from; t <= from + 9 * 400; t += 40) await setUp.onPicture(t);
}

describe("setting the sticks", () => {
  it("S14 gathers ten pictures, 400 ms apart, and looks anew when asked to", async () => {
    const { store, setUp, kept } = begin();
    await gather(setUp);
    expect(kept()).toBe(10);
    expect(store.getState().picture).not.toBeNull();
    await setUp.onPicture(10_000);
    expect(kept()).toBe(10);
    setUp.lookAgain();
    expect(store.getState().picture).toBeNull();
    await gather(setUp, 20_000);
    expect(kept()).toBe(10);
    expect(store.getState().picture).not.toBeNull();
  });

  it("S14 solves nothing as long as one end of a stick is a guess", async () => {
    const { store, setUp } = begin();
    await gather(setUp);
    const ends = lines.flatMap((line) => [{ line, end: "near" } as const, { line, end: "far" } as const]);
    for (const mark of ends) {
      expect(store.getState().solution).toBeNull();
      setUp.drag(mark, endOf(mark.line, mark.end));
      await setUp.drop();
    }
    const { solution } = store.getState();
    if (solution === null || solution.verdict === "refused") throw new Error("not solved");
    expect(solution.camera.position.x).toBeCloseTo(camera.position.x, 1);
  });

  it("S14 does not move a mark that the thumb has again", async () => {
    let answer: (snapped: SnappedStick) => void = () => undefined;
    const { store, setUp } = begin({
      snapStick: () =>
        new Promise((resolve) => {
          answer = resolve;
        }),
    });
    await gather(setUp);
    setUp.drag({ line: "toe-line", end: "near" }, imagePoint(300, 900));
    setUp.drag({ line: "toe-line", end: "far" }, imagePoint(310, 800));
    const dropped = setUp.drop();
    setUp.drag({ line: "toe-line", end: "near" }, imagePoint(350, 905));
    const stick = stickBetween("toe-line", imagePoint(301, 901), imagePoint(311, 801));
    answer({ ok: true, stick, contrast: 9, seenShare: 1, runsOn: false });
    await dropped;
    const toe = store.getState().sticks.find((one) => one.stick.line === "toe-line");
    expect(toe?.stick.near.at).toEqual(imagePoint(350, 905));
  });
});
