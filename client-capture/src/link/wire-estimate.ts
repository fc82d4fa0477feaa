import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import type { Estimate, WireShaft } from "@overcue/shared-geometry/wire/estimate";
import type { StepOutput } from "../pipeline/step.ts";

interface Sending {
  readonly sequence: number;
  /** Milliseconds on the relay's clock. */
  readonly capturedAt: number;
  readonly framesPerSecond: number;
}

/** What the screens are told of one picture. */
export function wireEstimate(output: StepOutput, { sequence, capturedAt, framesPerSecond }: Sending): Estimate {
  // What motion alone says of an unseen club is for the swing clock, not for the screen.
  const world = output.shaft.now.status === "lost" ? null : output.world;
  return {
    sequence,
    capturedAt,
    picture: output.picture,
    shaft: wireShaft(output.shaft.now),
    hands: output.hands,
    calibration: output.calibration,
    world: world === null ? null : { grip: plain(world.grip), toHead: plain(world.toHead) },
    readOuts: output.readOuts,
    phase: output.swing.phase,
    checkpoint: output.swing.checkpoint,
    framesPerSecond,
  };
}

function wireShaft(shaft: ShaftInImage): WireShaft {
  switch (shaft.status) {
    case "lost":
      return { status: "lost", reason: shaft.reason };
    case "tracked":
      return { status: "tracked", ...seen(shaft) };
    case "predicted":
      return { status: "predicted", reason: shaft.reason, ...seen(shaft) };
  }
}

const seen = ({ grip, head, angle, sd }: Exclude<ShaftInImage, { status: "lost" }>) => ({
  grip: { x: grip.x, y: grip.y },
  head: head === null ? null : { x: head.x, y: head.y },
  angle,
  sd,
});

const plain = ({ x, y, z }: { readonly x: number; readonly y: number; readonly z: number }) => ({ x, y, z });
