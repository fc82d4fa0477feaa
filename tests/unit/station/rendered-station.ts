import type { Picture } from "@overcue/client-capture/picture/picture";
import type { Camera } from "@overcue/shared-geometry/camera";
import { lookAtCamera } from "@overcue/shared-geometry/look-at-camera";
import { worldPoint } from "@overcue/shared-geometry/point";
import { stickEnds } from "@overcue/shared-geometry/station-model";
import type { StationLine, StationSettings } from "@overcue/shared-geometry/station";
import { pixels, radians } from "@overcue/shared-geometry/units";
import { sceneOf } from "../../scenes/conditions.ts";
import { renderScene } from "../../scenes/render-scene.ts";

const seed = 1;
const scene = sceneOf("full 240 1/1000", seed);

export const renderedSettings: StationSettings = scene.plan.golfer.station;

/** A phone on its tripod, moved sideways by so many metres and turned by so many degrees. */
export const tripod = (sideways = 0, turned = 0): Camera =>
  lookAtCamera({
    position: worldPoint(-3.6, 0.5 + sideways, 1),
    target: worldPoint(0.4, 0.5 + sideways + 4 * Math.tan((turned * Math.PI) / 180), 0.75),
    roll: radians(0.01),
    focal: pixels(760),
    width: pixels(540),
    height: pixels(960),
    handed: "right",
  });

export interface Rendered {
  readonly camera?: Camera;
  /** Over the sticks, feet on two of them and the club soled by the third; else a few steps down the line. */
  readonly atAddress?: boolean;
  readonly laid?: Partial<Record<StationLine, readonly [number, number, number]>>;
}

/** The same sunny tee with a golfer on it, whose shadow falls where it will, as the phone sees it. */
export function renderStation({ camera = tripod(), atAddress = false, laid = {} }: Rendered = {}): Picture {
  const fromMs = atAddress ? 0 : 5800;
  const [frame] = renderScene(
    {
      ...scene,
      camera,
      light: "sun",
      place: "tee",
      plan: {
        ...scene.plan,
        golfer: { ...scene.plan.golfer, station: { ...renderedSettings, sticksPresent: [] } },
        items: atAddress
          ? scene.plan.items
          : [
              { do: "still", seconds: 0.5 },
              { do: "distraction", what: "walk-away-and-back" },
            ],
      },
      extraBars: renderedSettings.sticksPresent.map((line) => {
        const { near, far } = stickEnds(line, renderedSettings, laid[line] ?? [0, 0, 0]);
        return { from: near, to: far, radius: 0.004, colour: scene.stickColour, cover: 1 };
      }),
      fromMs,
      toMs: fromMs + 1500 / scene.framesPerSecond,
    },
    seed,
  );
  if (!frame) throw new Error("renderStation: nothing was rendered");
  return frame.picture;
}
