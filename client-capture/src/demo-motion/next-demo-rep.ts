import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { seconds } from "@overcue/shared-geometry/units";
import type { PracticeState, StageId } from "@overcue/shared-geometry/wire/practice";
import { flowTempo, slowTempo, type DemoPlaces, type DemoRepPlan, type DemoTempo } from "./demo-golfer-settings.ts";

/** An invented golfer who practises: where the club passes by habit, and what share of a felt change arrives in reality, 0 to 1. */
export interface DemoPupil {
  readonly habit: DemoPlaces;
  readonly carryOver: number;
}

/** What the next rep goes by; null while nobody keeps a book. */
export type PupilsPractice = Pick<PracticeState, "mode" | "stage" | "aims">;

const quickTempo: DemoTempo = { backswing: seconds(1), downswing: seconds(0.4) };

const wayOf: Readonly<Record<StageId, Pick<DemoRepPlan, "kind" | "tempo">>> = {
  "slow-rehearsal": { kind: "rehearsal", tempo: slowTempo },
  flow: { kind: "flow", tempo: flowTempo },
  "added-speed": { kind: "full", tempo: quickTempo },
  "rod-off": { kind: "full", tempo: quickTempo },
  ball: { kind: "full", tempo: quickTempo },
};

const placeAt: Readonly<Partial<Record<CheckpointId, keyof DemoPlaces>>> = {
  takeaway: "headAtTakeaway",
  "shaft-level-back": "headAtShaftLevelBack",
  "arm-level-back": "buttBack",
  "arm-level-down": "buttDown",
  "shaft-level-down": "headAtShaftLevelDown",
};

/** What a body can still do, metres from the ball line towards the heels; the head goes less far beyond the ball than the butt points. */
const farthest = { behind: 0.7, buttBeyond: -0.6, headBeyond: -0.25 };

/**
 * The pupil's next rep: the habit while nothing is cued (baseline, test), else the habit and that share of the way to the middle of what is to be felt.
 * Slow or quick as the stage asks.
 */
export function nextDemoRep({ habit, carryOver }: DemoPupil, practice: PupilsPractice | null): DemoRepPlan {
  const places = { ...habit };
  for (const { checkpoint, felt } of practice?.mode === "practice" ? practice.aims : []) {
    const place = placeAt[checkpoint];
    if (place === undefined) continue;
    const reached = habit[place] + carryOver * ((felt.from + felt.to) / 2 - habit[place]);
    const beyond = place === "buttBack" || place === "buttDown" ? farthest.buttBeyond : farthest.headBeyond;
    places[place] = Math.min(farthest.behind, Math.max(beyond, reached));
  }
  return { do: "rep", ...wayOf[practice?.stage ?? "slow-rehearsal"], places };
}
