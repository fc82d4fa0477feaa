import type { Body } from "@overcue/client-capture/pipeline/body";
import type { DemoTruth } from "@overcue/client-capture/demo-motion/demo-truth";
import { wrapAngle } from "@overcue/shared-geometry/angle";
import type { ShaftInImage, ShaftReason } from "@overcue/shared-geometry/image-shaft";
import { imagePoint } from "@overcue/shared-geometry/point";
import { normalBelow } from "@overcue/shared-geometry/normal-probability";
import { milliseconds, pixels, radians, radiansPerSecond, type Milliseconds } from "@overcue/shared-geometry/units";
import { bodyPieces } from "../golfer/body-pieces.ts";
import { hiddenBehind } from "../pose/hidden-behind.ts";
import { simulatePoses } from "../pose/simulate-poses.ts";
import { gaussian, namedRandom, type Random } from "../random.ts";
import { truthInPicture } from "../truth-in-picture.ts";
import { pixelsPerMetre, see, type View } from "../view.ts";
import { visibleShaft, type VisibleShaft } from "../visible-shaft.ts";
import type { PracticeSession } from "./practice-session.ts";
import type { SightErrors } from "./sight-errors.ts";
import { startWander, wander, type Wander } from "./wander.ts";

/** What the tracker and the pose model would say of one picture, without the picture. */
export interface Sighting extends VisibleShaft {
  readonly index: number;
  readonly t: Milliseconds;
  readonly shaft: ShaftInImage;
  readonly body: Body | null;
  readonly truth: DemoTruth | null;
}

const degree = Math.PI / 180;

/** A whole session as the tracker and the pose model would see it, errors and gaps and all, thousands of pictures a second. */
export function* simulateSightings(session: PracticeSession, errors: SightErrors): Generator<Sighting> {
  const { scene, motion, index: seed } = session;
  const view: View = { camera: scene.camera, shiftX: 0, shiftY: 0 };
  const draw = (use: string): Random => namedRandom(seed, `${scene.name} ${use}`);
  const poses = simulatePoses(motion, view, scene.dress, scene.pose, scene.fromMs, draw("pose"));
  const random = draw("sight");
  const step = 1000 / scene.framesPerSecond;
  const off = startWander(["angle", "along", "across", "head", "tracked", "plain", "neck"], errors, random);
  const before = errors.plainBefore * random();
  const count = Math.floor((scene.toMs - scene.fromMs) / step);
  for (let index = 0; index < count; index++) {
    const t = scene.fromMs + index * step;
    wander(off, step, errors, random);
    const truth = truthInPicture(motion, view, t, scene.readOutMs, scene.bowAtFullSpeed);
    const isHidden = hiddenBehind(view, bodyPieces(motion.at(t / 1000), scene.dress));
    const shown = visibleShaft(motion, view, t, scene.bowAtFullSpeed, (_, seen) => isHidden(seen));
    const shaft =
      truth === null ? lost(t, "no-line-found") : sightOf(session, view, truth, shown, before, errors, off, random);
    yield { index, t: milliseconds(t), shaft, body: poses.answerAt(t), truth, ...shown };
  }
}

const lost = (t: number, reason: ShaftReason): ShaftInImage => ({ status: "lost", t: milliseconds(t), reason });

function sightOf(
  { scene, motion }: PracticeSession,
  view: View,
  truth: DemoTruth,
  shown: VisibleShaft,
  before: number,
  errors: SightErrors,
  off: Wander,
  random: Random,
): ShaftInImage {
  const { t } = truth;
  const rate = turnRate(motion, view, t);
  const { height } = scene.camera;
  if (normalBelow(off.value("tracked")) > chanceTracked(shown, height, errors)) {
    return lost(t, shown.visible > 0.5 && shown.visiblePixels < height / 20 ? "end-on" : "no-line-found");
  }
  const blur = Math.abs(rate) * (scene.exposureMs / 1000);
  const sd = Math.hypot(
    errors.angleFloor * degree,
    (Math.SQRT2 * errors.edge) / Math.max(4, shown.visiblePixels),
    errors.blurShare * blur,
  );
  const wild = random() < errors.wildShare ? errors.wildFactor : 1;
  const stated = Math.hypot(errors.leastStated * degree, sd) * Math.exp(errors.statedScatter * gaussian(random));
  const angle = wrapAngle(radians(truth.angleInPicture + wild * sd * off.value("angle")));
  const { x, y } = truth.gripInPicture;
  const along = errors.gripAlong * off.value("along") * pixelsPerMetre(view, see(view, truth.grip).depth);
  const across = errors.gripAcross * off.value("across");
  const [cos, sin] = [Math.cos(truth.angleInPicture), Math.sin(truth.angleInPicture)];
  const grip = imagePoint(x + along * cos - across * sin, y + along * sin + across * cos);
  const length = Math.hypot(truth.headInPicture.x - x, truth.headInPicture.y - y);
  const metre = pixelsPerMetre(view, see(view, truth.head).depth);
  const seenEnd = endOf(length, metre, before, errors, off, random);
  const reach = seenEnd.at - along;
  const head = imagePoint(grip.x + reach * Math.cos(angle), grip.y + reach * Math.sin(angle));
  const headSeen = isInside(head, scene.camera) && shown.visible > 0.6;
  return {
    status: "tracked",
    t,
    grip,
    head: headSeen ? head : null,
    angle,
    sd: radians(stated),
    angularRate: radiansPerSecond(rate * (1 + 0.1 * gaussian(random))),
    offsetSd: pixels(errors.acrossStated),
    headSd: headSeen ? pixels(seenEnd.stated) : null,
    rodSeen: scene.club.rod !== null,
  };
}

/** Where the head is told to be, from the hands' true place along the true shaft, `length` and `metre` in pixels; `before`: how much earlier a line ends, metres. */
function endOf(
  length: number,
  metre: number,
  before: number,
  errors: SightErrors,
  off: Wander,
  random: Random,
): { readonly at: number; readonly stated: number } {
  if (normalBelow(off.value("plain")) < errors.headPlain) {
    const neck = normalBelow(off.value("neck")) < errors.neckShare ? errors.neck : 0;
    const at = length * (1 + errors.plainAlong * off.value("head")) - metre * (before + neck);
    return { at, stated: errors.plainStated * length };
  }
  const short = normalBelow(off.value("head")) < errors.headShortShare ? errors.headShort * random() : 0;
  const at = length * (1 - errors.headBias - short + errors.headAlong * off.value("head"));
  return { at, stated: errors.headStated * length };
}

/** Turn of the shaft in the picture, radians a second. */
function turnRate(motion: PracticeSession["motion"], view: View, t: number): number {
  const before = truthInPicture(motion, view, t - 4, 0, 0);
  const after = truthInPicture(motion, view, t + 4, 0, 0);
  if (!before || !after) return 0;
  return wrapAngle(radians(after.angleInPicture - before.angleInPicture)) / 0.008;
}

/** Well: as a shaft counts as findable for the judge of the tracker. Poorly: half of that. */
function chanceTracked(shown: VisibleShaft, height: number, errors: SightErrors): number {
  if (shown.visible >= 0.35 && shown.visiblePixels >= height / 20) return errors.trackedWell;
  if (shown.visible >= 0.2 && shown.visiblePixels >= height / 40) return errors.trackedPoorly;
  return errors.trackedHardly;
}

const isInside = (point: { x: number; y: number }, size: { width: number; height: number }): boolean =>
  point.x >= 0 && point.y >= 0 && point.x < size.width && point.y < size.height;
