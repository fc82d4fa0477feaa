import { LatheGeometry, Vector2 } from "three";

/** How thick a limb is along its length: share of the length, radius in metres. Rises from 0 to 1. */
export type LimbProfile = readonly (readonly [share: number, radius: number])[];

const capSteps = 3;

/** A round limb along +y from 0 to `length`, with round ends that reach one radius beyond. */
export function limbGeometry(length: number, profile: LimbProfile, around = 10): LatheGeometry {
  const first = profile[0]?.[1] ?? 0;
  const last = profile.at(-1)?.[1] ?? 0;
  const points: Vector2[] = [];
  for (let k = 0; k < capSteps; k++) {
    const turn = (k / capSteps) * (Math.PI / 2);
    points.push(new Vector2(first * Math.sin(turn), -first * Math.cos(turn)));
  }
  for (const [share, radius] of profile) points.push(new Vector2(radius, share * length));
  for (let k = 1; k <= capSteps; k++) {
    const turn = (k / capSteps) * (Math.PI / 2);
    points.push(new Vector2(last * Math.cos(turn), length + last * Math.sin(turn)));
  }
  return new LatheGeometry(points, around);
}

/** A straight rod along +y from 0 to `length`, flat ends, thicker at one end if so told. */
export function rodGeometry(length: number, from: number, to: number, around = 6): LatheGeometry {
  return new LatheGeometry(
    [new Vector2(0, 0), new Vector2(from, 0), new Vector2(to, length), new Vector2(0, length)],
    around,
  );
}
