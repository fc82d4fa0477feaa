import type { Milliseconds, Pixels, Radians, RadiansPerSecond } from "./units.ts";
import type { Point } from "./point.ts";

/** Why no shaft is reported, or why it is only predicted. A closed list: screens have a sentence for each. */
export type ShaftReason =
  | "no-hands"
  | "walking"
  | "no-line-found"
  | "ambiguous"
  | "end-on"
  | "blurred-away"
  | "out-of-picture"
  | "hands-hidden"
  | "starting";

interface ShaftGeometry {
  /** The hands' place on the shaft: middle of the two grips. */
  readonly grip: Point<"image">;
  /** The head end where it was seen; null where it is out of the picture, hidden or not told apart. */
  readonly head: Point<"image"> | null;
  /** atan2(dy, dx) from grip to head, y down, in (-pi, pi]. */
  readonly angle: Radians;
  /** One standard deviation of `angle`, blur and fit included. */
  readonly sd: Radians;
  readonly angularRate: RadiansPerSecond;
  /** One standard deviation of the line's place across its direction, at the grip. */
  readonly offsetSd: Pixels;
  /** One standard deviation of the head end along the shaft; null with `head`. */
  readonly headSd: Pixels | null;
  /** Whether the practice rod was seen out of the butt end. */
  readonly rodSeen: boolean;
}

/** The shaft in one picture. `tracked` rests on this picture; `predicted` on the motion before it; `lost` claims nothing. */
export type ShaftInImage =
  | ({ readonly status: "tracked"; readonly t: Milliseconds } & ShaftGeometry)
  | ({ readonly status: "predicted"; readonly t: Milliseconds; readonly reason: ShaftReason } & ShaftGeometry)
  | { readonly status: "lost"; readonly t: Milliseconds; readonly reason: ShaftReason };
