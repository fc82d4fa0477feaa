import {
  flowTempo,
  placesOf,
  slowTempo,
  tourTempo,
  type DemoDistraction,
  type DemoPlan,
  type DemoRepPlan,
  type DemoTempo,
} from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { demoMotion, type DemoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import { demoSession } from "@overcue/client-capture/demo-motion/demo-session";
import { checkpointIds } from "@overcue/shared-geometry/checkpoints";
import { seconds } from "@overcue/shared-geometry/units";
import { sceneOf } from "../conditions.ts";
import { between, namedRandom, type Random } from "../random.ts";
import type { SceneSettings } from "../scene-settings.ts";

const sessionSpeeds = ["slow+rod", "slow", "flow", "full"] as const;
export type SessionSpeed = (typeof sessionSpeeds)[number];

/** A practice session whose truth is known: `motion` holds its reps and the instant of each checkpoint. */
export interface PracticeSession {
  readonly index: number;
  readonly speed: SessionSpeed;
  readonly motion: DemoMotion;
  /** Everything needed to render it (`renderScene(scene, index)`); also who, where and with what camera. */
  readonly scene: SceneSettings;
}

const distractions: readonly DemoDistraction[] = [
  "waggle",
  "practice-brush",
  "walk-away-and-back",
  "re-grip",
  "tee-up",
  "lean-on-club",
  "look-up",
];

const rates = [60, 30, 120, 60] as const;

/** How long a session is, and how fast its pictures come. */
export interface SessionForm {
  framesPerSecond(index: number, speed: SessionSpeed): number;
  /** Distractions between the reps, and time to stand still. */
  readonly unhurried: boolean;
  reps(speed: SessionSpeed, random: Random): readonly DemoRepPlan[];
}

const wholeSession: SessionForm = {
  framesPerSecond: (index) => rates[(index >> 2) % rates.length] ?? 60,
  unhurried: true,
  reps: (speed, random) => shuffle(repsOf(speed, random), random),
};

/** Slow reps of a drawn session take this share of the usual time. */
const brisk = 0.65;

/** Few enough pictures to be drawn and looked at by the pose model: four or five reps one after the other. */
export const drawnSession: SessionForm = {
  framesPerSecond: (_, speed) => (isSlow(speed) ? 30 : 60),
  unhurried: false,
  reps(speed, random) {
    const plans = shuffle(repsOf(speed, random), random);
    if (speed === "full") return plans.slice(0, 5);
    const running = plans.filter(({ kind }) => kind === "continuous").map((plan) => ({ ...plan, swings: 3 }));
    const single = plans.filter(({ kind }) => kind !== "continuous" && kind !== "pump");
    return [...single.slice(0, speed === "flow" ? 2 : 1), ...running].map((plan) =>
      isSlow(speed) ? { ...plan, tempo: quickened(plan.tempo) } : plan,
    );
  },
};

export const isSlow = (speed: SessionSpeed): boolean => speed === "slow" || speed === "slow+rod";
const quickened = ({ backswing, downswing }: DemoTempo): DemoTempo => ({
  backswing: seconds(brisk * backswing),
  downswing: seconds(brisk * downswing),
});

/**
 * The session of an index: speeds, picture rates and hands take turns, so that any 24 sessions in a row hold every mixture. As a rule six plans of
 * reps each (a continuous one counts as two reps), in drawn order, with distractions between.
 */
export function practiceSession(index: number, form = wholeSession): PracticeSession {
  const random = namedRandom(index, "session");
  const speed = sessionSpeeds[index % sessionSpeeds.length] ?? "slow";
  const handed = index % 3 === 1 ? "left" : "right";
  const framesPerSecond = form.framesPerSecond(index, speed);
  const base = sceneOf(conditionOf[speed], index + 1);
  const { golfer } = base.plan;
  const session = demoSession(
    {
      golfer: { ...golfer, station: { ...golfer.station, handed } },
      club: true,
      ball: base.plan.ball,
      reps: form.reps(speed, random),
      distractions: form.unhurried ? shuffle(distractions, random) : [],
      placesSd: 0.03,
      tempoSd: 0.06,
    },
    random,
  );
  const plan = form.unhurried ? session : withoutWaiting(session);
  const motion = demoMotion(plan);
  return {
    index,
    speed,
    motion,
    scene: {
      ...base,
      name: `session ${speed}`,
      camera: { ...base.camera, handed },
      framesPerSecond,
      exposureMs: Math.min(base.exposureMs, 500 / framesPerSecond),
      plan,
      fromMs: 0,
      toMs: motion.duration * 1000,
    },
  };
}

/** Of two still times in a row only the one that stands before a rep. */
function withoutWaiting(plan: DemoPlan): DemoPlan {
  return { ...plan, items: plan.items.filter((item, at) => item.do !== "still" || plan.items[at + 1]?.do !== "still") };
}

const conditionOf = { "slow+rod": "slow+rod", slow: "slow+bare", flow: "flow 60", full: "full 60 1/500" } as const;

const tempoOf: Readonly<Record<SessionSpeed, DemoTempo>> = {
  "slow+rod": slowTempo,
  slow: slowTempo,
  flow: flowTempo,
  full: tourTempo,
};

function repsOf(speed: SessionSpeed, random: Random): readonly DemoRepPlan[] {
  const stretch = Math.exp(between(random, -0.25, 0.25));
  const { backswing, downswing } = tempoOf[speed];
  const tempo = { backswing: seconds(backswing * stretch), downswing: seconds(downswing * stretch) };
  const places = placesOf(between(random, -1, 1.3));
  const rep = (kind: DemoRepPlan["kind"]): DemoRepPlan => ({ do: "rep", kind, places, tempo });
  const at = checkpointIds[1 + Math.floor(random() * 6)] ?? "arm-level-back";
  switch (speed) {
    case "slow+rod":
    case "slow": {
      const whole = speed === "slow" ? "full" : "rehearsal";
      const held: DemoRepPlan = { ...rep("rehearsal"), hold: { at, seconds: between(random, 1, 2) } };
      return [rep(whole), rep("rehearsal"), rep("half"), rep("pump"), held, rep("continuous")];
    }
    case "flow":
      return [rep("flow"), rep("flow"), rep("flow"), rep("half"), rep("pump"), rep("continuous")];
    case "full":
      return [rep("full"), rep("full"), rep("full"), rep("flow"), rep("half"), rep("full")];
  }
}

/** The same things in drawn order (Fisher and Yates). */
function shuffle<T>(list: readonly T[], random: Random): readonly T[] {
  const drawn = [...list];
  for (let last = drawn.length - 1; last > 0; last--) {
    const pick = Math.floor(random() * (last + 1));
    const [a, b] = [drawn[last], drawn[pick]];
    if (a === undefined || b === undefined) continue;
    drawn[last] = b;
    drawn[pick] = a;
  }
  return drawn;
}
