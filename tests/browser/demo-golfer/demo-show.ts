import type { DemoRepKind } from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import type { RodColour } from "@overcue/client-capture/frames/demo-golfer/demo-colours";

/** What the demo golfer shows on the test page. Width and height are even. */
export interface DemoShow {
  readonly width: number;
  readonly height: number;
  readonly framesPerSecond: number;
  readonly handed: "right" | "left";
  /**
   * `default`: stands where an uncalibrated phone is assumed to stand; `bumped`: the same, knocked aside by 2 cm and turned by a degree and
   * a half; `near`: so near and so high up that the near ends of the sticks are out of the picture.
   */
  readonly camera: "default" | "demo" | "bumped" | "near";
  /** 1: flat going back, steep coming down; -1 the reverse; 0 even. */
  readonly flatToSteep: number;
  readonly kind: DemoRepKind;
  readonly tempo: "tour" | "slow";
  readonly reps: number;
  /** Every other rep is held this long at lead arm level going back, the ones between coming down. 0: no rep is held. */
  readonly holdSeconds: number;
  /** Walks down the line and back before the first rep, as while the phone is set up. */
  readonly walksFirst: boolean;
  readonly club: boolean;
  readonly ball: boolean;
  readonly rodBeyondButt: number;
  readonly rodColour: RodColour;
  readonly seed: number;
}

export const usualShow: DemoShow = {
  width: 540,
  height: 960,
  framesPerSecond: 30,
  handed: "right",
  camera: "default",
  flatToSteep: 0,
  kind: "rehearsal",
  tempo: "slow",
  reps: 1,
  holdSeconds: 0,
  walksFirst: false,
  club: true,
  ball: false,
  rodBeyondButt: 0,
  rodColour: "orange",
  seed: 1,
};
