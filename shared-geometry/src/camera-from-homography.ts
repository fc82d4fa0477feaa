import type { Camera, Matrix3 } from "./camera.ts";
import { worldPoint, type Point } from "./point.ts";
import { pixels, type Pixels } from "./units.ts";
import { cross, dot, lengthOf, normalise, scale, subtract, type Vector } from "./vector.ts";

/**
 * The camera behind a ground-to-picture homography (Zhang 2000, section 3, with square pixels and a known principal point).
 * The focal length comes from the homography where that fixes it to within a factor of two of `usualFocal`, else it is `usualFocal`.
 * Null where no camera above the ground fits. The picture is taken as a right-handed golfer's.
 */
export function cameraFromHomography(
  h: Matrix3,
  size: { readonly width: Pixels; readonly height: Pixels },
  principal: Point<"image">,
  usualFocal: Pixels,
): Camera | null {
  const column = (index: 0 | 1 | 2): Vector => {
    const u = h[index];
    const v = h[3 + index] ?? 0;
    const w = h[6 + index] ?? 0;
    return { x: u - principal.x * w, y: v - principal.y * w, z: w };
  };
  const [first, second, third] = [column(0), column(1), column(2)];
  const focal = focalFrom(first, second, usualFocal);
  const unproject = (v: Vector): Vector => ({ x: v.x / focal, y: v.y / focal, z: v.z });
  const along = unproject(first);
  const across = unproject(second);
  const size1 = lengthOf(along);
  const size2 = lengthOf(across);
  if (!(size1 * size2 > 0)) return null;
  const by = 1 / Math.sqrt(size1 * size2);
  const signed = unproject(third).z < 0 ? -by : by;
  const xAxis = normalise(scale(along, signed));
  if (!xAxis) return null;
  const rough = scale(across, signed);
  const yAxis = normalise(subtract(rough, scale(xAxis, dot(rough, xAxis))));
  if (!yAxis) return null;
  const up = cross(xAxis, yAxis);
  const translation = scale(unproject(third), signed);
  const position = worldPoint(-dot(xAxis, translation), -dot(yAxis, translation), -dot(up, translation));
  if (!(position.z > 0)) return null;
  return {
    ...size,
    focal,
    principal,
    position,
    rotation: [xAxis.x, yAxis.x, up.x, xAxis.y, yAxis.y, up.y, xAxis.z, yAxis.z, up.z],
    handed: "right",
  };
}

/** From the two columns being square to each other and of one length, whichever says more. */
function focalFrom(first: Vector, second: Vector, usual: Pixels): Pixels {
  const squares = [
    { above: -(first.x * second.x + first.y * second.y), below: first.z * second.z },
    {
      above: second.x ** 2 + second.y ** 2 - first.x ** 2 - first.y ** 2,
      below: first.z ** 2 - second.z ** 2,
    },
  ].toSorted((a, b) => Math.abs(b.below) - Math.abs(a.below));
  for (const { above, below } of squares) {
    const focal = Math.sqrt(above / below);
    if (focal > usual / 2 && focal < usual * 2) return pixels(focal);
  }
  return usual;
}
