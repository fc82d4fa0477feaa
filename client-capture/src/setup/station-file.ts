import { stationLines, type StationSettings } from "@overcue/shared-geometry/station";
import {
  stickBetween,
  stickEndNames,
  type StickEnd,
  type StickEndName,
  type StickInImage,
} from "@overcue/shared-geometry/stick-in-image";
import { imagePoint, type Point } from "@overcue/shared-geometry/point";
import { readingWays, type RollingShutter } from "@overcue/shared-geometry/rolling-shutter";
import { metres, milliseconds } from "@overcue/shared-geometry/units";
import { z } from "zod";

const length = z.number().positive().max(5);
/** No camera takes longer over a picture, milliseconds: 24 a second. */
export const longestReading = 42;
const place = z.tuple([z.number(), z.number()]).readonly();

/**
 * A laid station as a file: what the user says of it (metres) and where its sticks' ends are in the upright picture (pixels, y down).
 * `near` is the end nearer to the camera.
 */
export const stationFileSchema = z.object({
  settings: z
    .object({
      handed: z.enum(["right", "left"]),
      club: z.enum(["driver", "5-iron", "6-iron", "7-iron", "8-iron", "9-iron"]),
      clubLength: length,
      rodBeyondButt: z.number().nonnegative().max(2),
      stickLength: length,
      toeLine: length,
      heelLine: length,
      tolerance: length,
      sticksPresent: z.array(z.enum(stationLines)).readonly(),
    })
    .transform((said): StationSettings => ({
      ...said,
      clubLength: metres(said.clubLength),
      rodBeyondButt: metres(said.rodBeyondButt),
      stickLength: metres(said.stickLength),
      toeLine: metres(said.toeLine),
      heelLine: metres(said.heelLine),
      tolerance: metres(said.tolerance),
    })),
  sticks: z
    .array(
      z.object({
        line: z.enum(stationLines),
        near: place,
        far: place,
        /** Ends that a foot hides or the picture cuts off: their place only tells where the stick's line runs. */
        hidden: z.array(z.enum(stickEndNames)).readonly().optional(),
      }),
    )
    .transform((sticks): readonly StickInImage[] =>
      sticks.map(({ line, near, far, hidden = [] }) => {
        const stick = stickBetween(line, imagePoint(...near), imagePoint(...far));
        const end = (name: StickEndName): StickEnd => ({ ...stick[name], isEnd: !hidden.includes(name) });
        return { line, near: end("near"), far: end("far") };
      }),
    ),
  /** The ball's middle, where it was marked. */
  ball: place.transform((at): Point<"image"> => imagePoint(...at)).optional(),
  /** How the camera reads its picture, where that is known: milliseconds from the first line to the last, and which way over the upright picture. */
  rollingShutter: z
    .object({ milliseconds: z.number().min(0).max(longestReading), towards: z.enum(readingWays) })
    .transform((said): RollingShutter => ({ time: milliseconds(said.milliseconds), towards: said.towards }))
    .optional(),
});

export type StationFile = z.input<typeof stationFileSchema>;
