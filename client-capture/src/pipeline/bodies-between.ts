import { groundPoint, worldPoint } from "@overcue/shared-geometry/point";
import type { Body } from "./body.ts";
import type { BodyInWorld } from "./body-in-world.ts";
import { momentsAbout, nextMoment, weightsBetween } from "./through-moments.ts";

/** What one picture had of the body: the pose model's newest answer, which is of an earlier picture, and where that body was. */
interface SeenBody {
  readonly t: number;
  readonly body: Body | null;
  readonly inWorld: BodyInWorld | null;
}

interface BodyMoment {
  readonly t: number;
  readonly at: BodyInWorld;
}

/**
 * Where the body was in each picture: on a smooth way through the answers before and after it, each at the time of the picture that it was about, once the later
 * one is known too. Taken as they came, answers lag by a tenth of a second, in which fast hands go a quarter of a metre. Null where there was none.
 */
export function bodiesBetween(pictures: readonly SeenBody[]): readonly (BodyInWorld | null)[] {
  const moments: BodyMoment[] = [];
  for (const { body, inWorld } of pictures) {
    const last = moments[moments.length - 1];
    if (body !== null && inWorld !== null && (last === undefined || body.t > last.t))
      moments.push({ t: body.t, at: inWorld });
  }
  let next = 0;
  return pictures.map(({ t, inWorld }) => {
    if (inWorld === null) return null;
    next = nextMoment(moments, next, t);
    const about = momentsAbout(moments, next);
    if (about === null) return (moments[next - 1] ?? moments[next])?.at ?? inWorld;
    const weights = weightsBetween(t, about);
    return mix(about.map((moment, at) => ({ weight: weights[at] ?? 0, body: moment?.at ?? about[1].at })));
  });
}

interface Weighed {
  readonly weight: number;
  readonly body: BodyInWorld;
}

/** Errors are taken as the nearest answers' own: they are shared from answer to answer. */
function mix(bodies: readonly Weighed[]): BodyInWorld {
  const sum = (of: (body: BodyInWorld) => number): number =>
    bodies.reduce((total, { weight, body }) => total + weight * of(body), 0);
  const mixed = (of: (body: BodyInWorld) => BodyInWorld["handsX"]): BodyInWorld["handsX"] => ({
    value: sum((body) => of(body).value),
    sd: sum((body) => of(body).sd),
  });
  return {
    feet: groundPoint(
      sum(({ feet }) => feet.x),
      sum(({ feet }) => feet.y),
    ),
    handsX: mixed(({ handsX }) => handsX),
    hands: {
      place: worldPoint(
        sum(({ hands }) => hands.place.x),
        sum(({ hands }) => hands.place.y),
        sum(({ hands }) => hands.place.z),
      ),
      sd: sum(({ hands }) => hands.sd),
    },
    leadShoulderZ: mixed(({ leadShoulderZ }) => leadShoulderZ),
    trailThighX: mixed(({ trailThighX }) => trailThighX),
  };
}
