import type { Camera } from "./camera.ts";
import { filterTuning } from "./filter-tuning.ts";
import { leanNode, leanOf, type LeanNode } from "./lean-node.ts";
import type { LiftObservation } from "./lift-observation.ts";
import { noErrors, viewShaft, type ShaftView } from "./view-shaft.ts";

/**
 * The next picture between which leans are weighed; null while too little has changed since the last one, or the shaft cannot be placed.
 * Camera and observation are a right-handed golfer's.
 */
export function nextNode(
  last: LeanNode | null,
  observation: LiftObservation,
  camera: Camera,
  length: number,
): LeanNode | null {
  const { leastNodeSeconds, mostNodeSeconds, nodeChange } = filterTuning;
  const seconds = last === null ? mostNodeSeconds : (observation.t - last.t) / 1000;
  if (seconds < leastNodeSeconds) return null;
  const view = viewShaft(camera, observation, noErrors);
  if (typeof view === "string") return null;
  const change = last === null ? 1 : changeBetween(last.view, view, length);
  if (seconds < mostNodeSeconds - 1e-3 && change < nodeChange) return null;
  const node = leanNode(camera, observation, view, length, Math.min(seconds, mostNodeSeconds));
  const moved = Math.min(1, Math.max(0, change - noiseChange) / (nodeChange - noiseChange));
  const weights = likelyAlike(node.weights, moved);
  if (last === null) return { ...node, weights };
  return {
    ...node,
    weights,
    pace: Math.max(change / seconds, last.pace * Math.exp(-seconds / filterTuning.paceLasts)),
  };
}

/** Noise alone changes the picture by about this much, as a share of the shaft's length. */
const noiseChange = 0.05;

/**
 * Leans are spaced evenly, directions are what is likely alike: a cosine for every new direction. A club that stands still shows none
 * (`moved` 0), and does not speak against pointing at the lens again with every picture.
 */
const likelyAlike = (weights: Float64Array, moved: number): Float64Array =>
  weights.map((value, cell) => value * Math.cos(leanOf(cell)) ** moved);

/** How far the head has moved in the picture, as a share of the shaft's length. */
function changeBetween(one: ShaftView, other: ShaftView, length: number): number {
  const seenLength = ({ spread, distance }: ShaftView, or: number): number =>
    spread === null ? or : (distance * Math.tan(spread)) / length;
  const a = seenLength(one, seenLength(other, 1));
  const b = seenLength(other, a);
  const [s, q] = [one.square, other.square];
  return Math.hypot(a * s.x - b * q.x, a * s.y - b * q.y, a * s.z - b * q.z);
}

/** The same pictures with the pace of what comes after them counted too. */
export function paceBothWays(nodes: readonly LeanNode[]): LeanNode[] {
  let pace = 0;
  let t = nodes[nodes.length - 1]?.t ?? 0;
  return nodes
    .toReversed()
    .map((node) => {
      pace = Math.max(node.pace, pace * Math.exp((node.t - t) / 1000 / filterTuning.paceLasts));
      t = node.t;
      return { ...node, pace };
    })
    .toReversed();
}
