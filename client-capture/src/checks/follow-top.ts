import { landmarkIndex, type Body } from "../pipeline/body.ts";
import type { StepOutput } from "../pipeline/step.ts";

/** Whether the club stayed in the picture when the hands were last above the shoulders. */
export type TopSeen = "never" | "inside" | "outside";

/** A head nearer to the edge than this share of the picture is on its way out of it. */
const edge = 0.01;

/** What a picture adds to that: hands lower than the shoulders, or a head that was not found, add nothing. */
export function followTop(before: TopSeen, { body, hands, shaft, picture }: StepOutput): TopSeen {
  if (body === null || hands === "lost" || !handsAboveShoulders(body)) return before;
  const found = shaft.now;
  if (found.status !== "tracked") return found.reason === "out-of-picture" ? "outside" : before;
  if (found.head === null) return before;
  const { x, y } = found.head;
  const { width, height } = picture;
  const inside = x > edge * width && x < (1 - edge) * width && y > edge * height && y < (1 - edge) * height;
  return inside ? "inside" : "outside";
}

function handsAboveShoulders({ landmarks }: Body): boolean {
  const height = (name: keyof typeof landmarkIndex): number => landmarks[landmarkIndex[name]]?.y ?? Number.NaN;
  const hands = (height("leftWrist") + height("rightWrist")) / 2;
  return hands < Math.min(height("leftShoulder"), height("rightShoulder"));
}
