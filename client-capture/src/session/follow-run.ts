import { followTop, type TopSeen } from "../checks/follow-top.ts";
import { framingOf } from "../checks/framing.ts";
import type { CameraSource } from "../frames/camera-source.ts";
import type { CapturedFrame, FrameSource } from "../frames/frame-source.ts";
import type { MeasureClient, Measured } from "../measuring/measure-client.ts";
import type { PoseClient } from "../pose/pose-client.ts";
import { adaptRest, type RestTuning } from "../running/adapt-rest.ts";
import { runSource } from "../running/run-source.ts";
import { liveClock, playingClock, type SourceClock } from "../running/source-clock.ts";
import { keepAwake } from "./keep-awake.ts";
import { makeLiveNumbers } from "./live-numbers.ts";
import type { PhoneStore } from "./phone-store.ts";
import { tellFinding } from "./tell-finding.ts";

export interface FollowedRun {
  readonly store: PhoneStore;
  readonly pose: () => PoseClient | null;
  readonly measure: MeasureClient;
  readonly now: () => number;
  readonly databaseMissing: boolean;
  readonly source: FrameSource;
  /** Null where the source is no camera. */
  readonly camera: CameraSource | null;
  readonly stopped: () => boolean;
  /** Whether sticks are being marked on a picture that was kept. */
  readonly settingSticks: () => boolean;
  /** Sees the pictures that are painted; the finding of each follows with `painted`. */
  readonly onPicture: (frame: CapturedFrame) => void;
  readonly onMeasured: (measured: Measured, clock: SourceClock, framesPerSecond: number, painted: boolean) => void;
}

/** Numbers for people change this often, milliseconds. */
const tellEvery = 300;
/** Pictures are painted this far apart at least, milliseconds; further where pictures are missed; and where others wait to be measured only so often. */
const paintEvery = 30;
const paintRest: RestTuning = { longest: 170, longer: 30, shorter: 3 };
const paintBehindEvery = 200;
/** The exposure is looked after this often, milliseconds: a change takes a few pictures to show. */
const tendEvery = 1000;

/** Runs a source until it ends, breaks or is stopped, and tells the store what is seen; the screen stays awake meanwhile. */
export async function followRun(run: FollowedRun): Promise<void> {
  const { store, pose, measure, now, source, camera, stopped } = run;
  const awake = keepAwake();
  const numbers = makeLiveNumbers();
  const clock = source.info.kind === "camera" ? liveClock : playingClock();
  let toldAt = Number.NEGATIVE_INFINITY;
  let paintedAt = Number.NEGATIVE_INFINITY;
  let painted = false;
  const rest = adaptRest(paintRest);
  let tendedAt = Number.NEGATIVE_INFINITY;
  let top: TopSeen = "never";

  const onPicture = (frame: CapturedFrame): void => {
    const at = now();
    const behind = (source.live?.waiting() ?? 0) > 0;
    const since = at - paintedAt;
    painted = behind ? since > paintBehindEvery : since > paintEvery && rest.isOver(at - paintEvery);
    if (!painted) return;
    paintedAt = at;
    rest.worked(at, source.live?.missed() ?? 0);
    run.onPicture(frame);
  };
  const onMeasured = (measured: Measured): void => {
    if (stopped()) return;
    const at = now();
    numbers.pictureAt(at, source.live?.missed() ?? 0);
    run.onMeasured(measured, clock, store.getState().framesPerSecond, painted);
    void measured.rep?.then(({ kind, complete }) => {
      store.setState(({ reps: count }) => ({ reps: count + 1, lastRep: { kind, complete } }));
    }, onFailed);
    top = followTop(top, measured.output);
    if (camera !== null && at - tendedAt > tendEvery) {
      tendedAt = at;
      void camera.exposure.tend(measured.brightness);
    }
    if (at - toldAt < tellEvery) return;
    toldAt = at;
    const { hands, body, picture } = measured.output;
    const framing = framingOf(hands === "lost" ? null : body, picture);
    const { brightness } = measured;
    store.setState({ framing, top, brightness, exposureMs: camera?.exposure.now() ?? null });
    tellFinding(store, measured.output, numbers.read(at), run.databaseMissing);
  };

  const onFailed = (why: unknown): void => {
    if (stopped()) return;
    const lastFailure = why instanceof Error ? why.message : String(why);
    store.setState(({ failedFrames }) => ({ failedFrames: failedFrames + 1, lastFailure }));
  };

  try {
    await runSource({
      source,
      clock,
      pose,
      measure,
      now,
      wait: (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds)),
      stopped,
      // A clip waits while its sticks are set; a camera goes on, so that a new picture can be taken.
      paused: () => source.info.kind !== "camera" && run.settingSticks(),
      hooks: {
        onPicture,
        onMeasured,
        onPose: () => {
          numbers.poseAt(now());
        },
        onFailed,
      },
    });
  } finally {
    awake.release();
  }
}
