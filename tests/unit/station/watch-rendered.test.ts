import { describe, expect, it } from "vitest";
import type { Picture } from "@overcue/client-capture/picture/picture";
import { makeStickWatch } from "@overcue/client-capture/session/watch-sticks";
import type { SolvedStation } from "@overcue/client-capture/session/configuration-for";
import { findSticks } from "@overcue/client-capture/station/find-sticks";
import { spreadCamera } from "@overcue/shared-geometry/camera-spread";
import { cameraOff } from "../../scenes/camera-off.ts";
import { watchClientHere } from "../../fakes/watch-client-here.ts";
import { renderedSettings, renderStation, tripod } from "./rendered-station.ts";

const first = findSticks(renderStation(), renderedSettings);

function solvedStation(): SolvedStation {
  if (!first.found) throw new Error(first.reason);
  const { camera, covariance } = first.solution;
  const spread = spreadCamera(camera, covariance);
  return { settings: renderedSettings, camera, calibration: "station", spread, sticks: first.sticks };
}

interface Told {
  /** How many reps had ended by then. */
  readonly after: number;
  readonly station: SolvedStation;
  readonly sentence: string;
}

/** One rep after another, each ending on the picture given for it; what the session is told on the way. */
async function practise(pictures: readonly Picture[]): Promise<Told[]> {
  const told: Told[] = [];
  let reps = 0;
  const watch = makeStickWatch({
    client: watchClientHere(),
    hints: () => ({}),
    newestPicture: () => {
      const picture = pictures[reps - 1];
      return picture ? Promise.resolve(picture) : Promise.reject(new Error("no picture"));
    },
    onChange: (station, sentence) => told.push({ after: reps, station, sentence }),
  });
  watch.use(solvedStation());
  while (reps < pictures.length) {
    reps++;
    await watch.onMeasured({ t: reps * 8000, repEnded: true, isStill: false, isAlone: false });
  }
  return told;
}

describe("the watch over the sticks, on rendered pictures", () => {
  it("W1 feet on two sticks, the club beside the third and the golfer's shadow alarm nobody", async () => {
    const address = renderStation({ atAddress: true });
    expect(await practise([address, renderStation(), address, address])).toStrictEqual([]);
  });

  it("W2 a kicked stick is told by the second rep, by name, and readings are suspect until it is back", async () => {
    const kicked = renderStation({ laid: { "heel-line": [0.05, 0.06, 0.05] } });
    const told = await practise([kicked, kicked, kicked, renderStation()]);
    expect(told.map(({ after, station, sentence }) => [after, station.calibration, sentence])).toStrictEqual([
      [2, "suspect", "The stick on the heel line was moved: put it back, or set the sticks again."],
      [4, "station", ""],
    ]);
  });

  it("W3 a bumped phone is told by the second rep and its place found again from the sticks", async () => {
    const camera = tripod(0.02, 0.6);
    const bumped = renderStation({ camera });
    const [told, ...more] = await practise([bumped, bumped, bumped]);
    expect(more).toStrictEqual([]);
    expect(told?.after).toBe(2);
    expect(told?.sentence).toBe("The phone was moved, and its place was found again from the sticks.");
    expect(told?.station.calibration).toBe("station");
    const found = told?.station.camera;
    if (!found) throw new Error("no camera");
    expect(cameraOff(found, camera).degrees).toBeLessThan(0.5);
  });

  it("W3 where a bumped phone cannot be set anew by itself, readings stay suspect and the golfer is told to set the sticks", async () => {
    const bumped = renderStation({ camera: tripod(0.02, 0.6), atAddress: true });
    const told = await practise([bumped, bumped]);
    expect(told.map(({ station, sentence }) => [station.calibration, sentence])).toStrictEqual([
      ["suspect", "The phone or the sticks were moved: set the sticks again."],
    ]);
  });
});
