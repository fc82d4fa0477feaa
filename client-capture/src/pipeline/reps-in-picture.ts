import { checkpointIds, type CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import type { Handed } from "@overcue/shared-geometry/station";
import { imagePoint, type Point } from "@overcue/shared-geometry/point";
import { noReadOuts } from "@overcue/shared-geometry/read-outs-of";
import { milliseconds } from "@overcue/shared-geometry/units";
import type { PictureMoment } from "../swing/picture-moment.ts";
import type { Turned } from "../shaft/background-state.ts";
import { pictureReps, type PictureRep } from "../swing/picture-reps.ts";
import { landmarkIndex, type Body } from "./body.ts";
import { handsInPicture } from "./hands-in-picture.ts";
import { pixelsPerMetre } from "./pixels-per-metre.ts";
import type { RepReading } from "./rep-readings.ts";
import type { StationSettings } from "@overcue/shared-geometry/station";

/** What one picture of a clip without a station says. */
export interface SeenInPicture {
  readonly t: number;
  readonly width: number;
  readonly shaft: ShaftInImage;
  readonly body: Body | null;
  /** From a hand that holds the phone the golfer must not seem to move. */
  readonly turned: Turned;
}

/**
 * The reps of a clip whose camera nobody solved: dated in the picture, and nothing read on the ground. Nobody said either which way the golfer plays: the settings' way
 * stands unless more can be dated the other way, for which the ball lies on the other side.
 */
export function repsInPicture(pictures: readonly SeenInPicture[], settings: StationSettings): RepReading[] {
  const asSaid = repsOneWay(pictures, settings);
  const otherwise = repsOneWay(pictures, { ...settings, handed: settings.handed === "right" ? "left" : "right" });
  return datedIn(otherwise) > datedIn(asSaid) ? otherwise : asSaid;
}

const datedIn = (reps: readonly RepReading[]): number =>
  reps.reduce((sum, { checkpoints }) => sum + checkpoints.length, 0);

function repsOneWay(pictures: readonly SeenInPicture[], settings: StationSettings): RepReading[] {
  const moments = pictures.map((picture) => momentOf(picture, settings.handed));
  return pictureReps(moments).map((rep) => withoutGround(rep, pictures));
}

function momentOf({ t, width, shaft, body, turned }: SeenInPicture, handed: Handed): PictureMoment {
  const upright = (at: { readonly x: number; readonly y: number }): Point<"image"> => {
    const [x, y] = [at.x - turned.x, at.y - turned.y];
    return imagePoint(handed === "left" ? width - x : x, y);
  };
  const shoulder = body?.landmarks[handed === "right" ? landmarkIndex.leftShoulder : landmarkIndex.rightShoulder];
  const tracked = shaft.status === "tracked" ? shaft : null;
  // The model's hands throughout: the shaft's grip lies a little elsewhere, and a path that changes between the two has steps.
  const hands = body === null ? null : (handsInPicture(body, handed)?.at ?? null);
  return {
    t,
    hands: hands === null ? null : upright(hands),
    shaft:
      tracked === null
        ? null
        : {
            angle: handed === "left" ? Math.atan2(Math.sin(tracked.angle), -Math.cos(tracked.angle)) : tracked.angle,
            grip: upright(tracked.grip),
            head: tracked.head === null ? null : upright(tracked.head),
          },
    leadShoulder: shoulder === undefined ? null : upright(shoulder),
    scale: body === null ? 0 : (pixelsPerMetre(body) ?? 0),
  };
}

/** What a half swing is not expected to show in the picture, and a rep out of a flow. */
const notExpected: Readonly<Record<PictureRep["kind"], readonly CheckpointId[]>> = {
  full: [],
  pump: [],
  flow: ["address", "takeaway"],
  half: ["arm-level-back", "arm-level-down"],
};

function withoutGround(rep: PictureRep, pictures: readonly SeenInPicture[]): RepReading {
  const at = (id: string): number | null => rep.checkpoints.find(({ checkpoint }) => checkpoint === id)?.t ?? null;
  const impact = at("impact");
  const missing = checkpointIds.filter((id) => at(id) === null && !notExpected[rep.kind].includes(id));
  const swung = pictures.filter(({ t }) => t >= rep.startedAt && t <= (impact ?? rep.endedAt));
  const tracked = swung.filter(({ shaft }) => shaft.status === "tracked").length;
  return {
    kind: rep.kind,
    startedAt: milliseconds(rep.startedAt),
    endedAt: milliseconds(rep.endedAt),
    tempo: rep.tempo,
    complete: missing.length === 0,
    missing,
    trackedShare: tracked / Math.max(1, swung.length),
    checkpoints: rep.checkpoints.map(({ checkpoint, t, sd }) => ({
      checkpoint,
      t,
      sdMs: sd,
      readOuts: noReadOuts("no-camera"),
    })),
    trajectory: [],
  };
}
