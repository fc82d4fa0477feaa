import { groundPoint, worldPoint } from "@overcue/shared-geometry/point";
import type { Body } from "./body.ts";
import type { BodyInWorld } from "./body-in-world.ts";

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
 * Where the body was in each picture: straight between the answers before and after it, each at the time of the picture that it was about, once the later
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
    while (next < moments.length && (moments[next]?.t ?? 0) < t) next++;
    const before = moments[next - 1];
    const after = moments[next];
    if (before === undefined || after === undefined) return (before ?? after)?.at ?? inWorld;
    return between(before.at, after.at, (t - before.t) / (after.t - before.t));
  });
}

function between(a: BodyInWorld, b: BodyInWorld, share: number): BodyInWorld {
  const mix = (from: number, to: number): number => from + share * (to - from);
  const mixed = (from: BodyInWorld["handsX"], to: BodyInWorld["handsX"]): BodyInWorld["handsX"] => ({
    value: mix(from.value, to.value),
    sd: mix(from.sd, to.sd),
  });
  const [p, q] = [a.hands.place, b.hands.place];
  return {
    feet: groundPoint(mix(a.feet.x, b.feet.x), mix(a.feet.y, b.feet.y)),
    handsX: mixed(a.handsX, b.handsX),
    hands: { place: worldPoint(mix(p.x, q.x), mix(p.y, q.y), mix(p.z, q.z)), sd: mix(a.hands.sd, b.hands.sd) },
    leadShoulderZ: mixed(a.leadShoulderZ, b.leadShoulderZ),
    trailThighX: mixed(a.trailThighX, b.trailThighX),
  };
}
