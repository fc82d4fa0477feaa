import { answerOf } from "./filter-answer.ts";
import { uprightOf, type FilterInput, type FilterSetting } from "./filter-shaft.ts";
import type { ShaftMotion } from "./filter-motion.ts";
import { startMotion } from "./filter-start.ts";
import { stepMotion, type FilterStep } from "./filter-step.ts";
import { filterTuning } from "./filter-tuning.ts";
import { missInSds } from "./filter-update.ts";
import { gripToHead } from "./grip-convention.ts";
import { leanSd } from "./lean-sd.ts";
import { nextNode, paceBothWays } from "./lean-nodes.ts";
import type { LeanNode } from "./lean-node.ts";
import type { LiftObservation } from "./lift-observation.ts";
import { sightOfShaft } from "./sight-of-shaft.ts";
import { smoothStep } from "./smooth-step.ts";
import { pacesOf } from "./swing-pace.ts";
import type { Milliseconds } from "./units.ts";
import { unsettledLean } from "./unsettled-lean.ts";
import { weighLeans, type WeighedLean } from "./weigh-leans.ts";
import type { Direction, ShaftInWorld } from "./world-shaft.ts";

interface Picture {
  readonly t: Milliseconds;
  readonly observation: LiftObservation | null;
  readonly lean: WeighedLean | null;
}

/** How often the whole is gone over: each time with the pace, and about the directions, of the time before. */
const rounds = 2;

/**
 * A finished rep gone over once more: which way the shaft leans is weighed over all pictures first, then each picture's shaft is found in the light of those
 * before and after it (Rauch, Tung and Striebel 1965). One shaft for each input from the first that could be lifted on; empty where none could. Where
 * the leans stay open, the likeliest is followed and the others widen its spread.
 */
export function smoothRep(inputs: readonly FilterInput[], setting: FilterSetting): ShaftInWorld[] {
  const pictures = weighPictures(inputs, setting);
  const first = pictures.findIndex(({ lean }) => lean !== null);
  const seen = first < 0 ? [] : pictures.slice(first);
  let answer: readonly ShaftMotion[] | null = null;
  for (let round = 0; round < rounds; round++) answer = goOver(seen, setting, answer);
  const unsettled = unsettledOf(seen, answer ?? [], setting);
  const length = gripToHead(setting.settings);
  let depthSd = 0;
  return (answer ?? []).map((motion, index) => {
    const observation = seen[index]?.observation ?? null;
    depthSd = observation?.depth.sd ?? depthSd;
    return answerOf(motion, setting.through, { length, depthSd }, unsettled[index] ?? 0, observation);
  });
}

function weighPictures(inputs: readonly FilterInput[], { through, settings }: FilterSetting): Picture[] {
  const nodes: LeanNode[] = [];
  const nodeAt = new Map<number, number>();
  const observations = inputs.map(({ t, seen }, index) => {
    const observation = uprightOf(t, seen, through);
    const node =
      observation && nextNode(nodes[nodes.length - 1] ?? null, observation, through.upright, gripToHead(settings));
    if (node) nodeAt.set(index, nodes.push(node) - 1);
    return observation;
  });
  const leans = weighLeans(paceBothWays(nodes));
  return inputs.map(({ t }, index) => ({
    t,
    observation: observations[index] ?? null,
    lean: leans[nodeAt.get(index) ?? -1] ?? null,
  }));
}

/** Once forward and back; `before` is the answer of the time before. Empty where the first picture cannot be lifted. */
function goOver(
  pictures: readonly Picture[],
  { through, settings }: FilterSetting,
  before: readonly ShaftMotion[] | null,
): ShaftMotion[] {
  const sightAt = ({ observation, lean }: Picture, about: Direction | undefined): ShaftInWorld | null => {
    const towards = lean?.toHead ?? about;
    const sight = observation && towards ? sightOfShaft(observation, through.upright, settings, towards) : null;
    return typeof sight === "string" ? null : sight;
  };
  const [first, ...rest] = pictures;
  const start = first && sightAt(first, before?.[0]?.toHead);
  if (!start) return [];
  const begun = startMotion(start);
  const paces = before && pacesOf(before);
  let motion = begun;
  const steps: FilterStep[] = [];
  rest.forEach((picture, index) => {
    const sight = sightAt(picture, before?.[index + 1]?.toHead ?? motion.toHead);
    const answer = before?.[index + 1];
    const pace = paces?.[index + 1];
    const again = answer && pace && { pace, widen: sight ? distrust(sight, answer) : 1 };
    const step = stepMotion(motion, picture.t, sight, picture.lean, again);
    steps.push(step);
    motion = step.motion;
  });
  const smoothed = [motion];
  for (let index = steps.length - 1; index >= 0; index--) {
    const step = steps[index];
    const filtered = index === 0 ? begun : steps[index - 1]?.motion;
    const later = smoothed[smoothed.length - 1];
    if (step && filtered && later) smoothed.push(smoothStep(filtered, step.expected, step.carried, later));
  }
  return smoothed.reverse();
}

/** How much wider a sight is than it says, by how far it lies from an answer that had the others too: factor on its variances. */
function distrust(sight: ShaftInWorld, answer: ShaftMotion): number {
  return Math.max(1, missInSds(answer, sight) / filterTuning.distrustBeyond) ** 2;
}

/** Between the pictures in which leans were weighed, the larger of the two neighbours' counts. */
function unsettledOf(
  pictures: readonly Picture[],
  answer: readonly ShaftMotion[],
  { through }: FilterSetting,
): number[] {
  const own = pictures.map(({ lean }, index) => {
    const motion = answer[index];
    return lean && motion ? unsettledLean(lean, motion.toHead, leanSd(motion, through.upright)) : null;
  });
  const spread = (values: readonly (number | null)[]): number[] => {
    let last = 0;
    return values.map((value) => (last = value ?? last));
  };
  const forward = spread(own);
  const back = spread(own.toReversed()).toReversed();
  return forward.map((value, index) => Math.max(value, back[index] ?? 0));
}
