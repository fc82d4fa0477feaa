import { seconds } from "@overcue/shared-geometry/units";
import type { DemoDistraction, DemoPlan, DemoPlanItem, DemoPlaces, DemoRepPlan } from "./demo-golfer-settings.ts";

/** A number in [0, 1), as Math.random gives; passed in so that a session can be repeated. */
export type Random = () => number;

export interface SessionWish {
  readonly golfer: DemoPlan["golfer"];
  readonly club: boolean;
  readonly ball: boolean;
  /** The reps in order; each is varied a little. */
  readonly reps: readonly DemoRepPlan[];
  /** Put before a rep with a chance of one half, in turn. */
  readonly distractions: readonly DemoDistraction[];
  /** One standard deviation of the places on the ground from rep to rep, metres. 0: every rep is as set. */
  readonly placesSd: number;
  /** One standard deviation of both tempo times, as a share. */
  readonly tempoSd: number;
}

/** A practice session: reps with still times of 1 to 2 s before each, distractions between, every rep a little different. */
export function demoSession(wish: SessionWish, random: Random): DemoPlan {
  const items: DemoPlanItem[] = [];
  let next = 0;
  for (const rep of wish.reps) {
    items.push({ do: "still", seconds: 0.6 + 0.8 * random() });
    const what = wish.distractions[next % Math.max(1, wish.distractions.length)];
    if (what !== undefined && random() < 0.5) {
      items.push({ do: "distraction", what });
      next++;
    }
    items.push({ do: "still", seconds: 1 + random() }, varied(rep, wish, random));
  }
  items.push({ do: "still", seconds: 1.2 });
  return { golfer: wish.golfer, club: wish.club, ball: wish.ball, items };
}

function varied(rep: DemoRepPlan, wish: SessionWish, random: Random): DemoRepPlan {
  const place = (y: number): number => y + wish.placesSd * normal(random);
  const stretch = (s: number): number => s * Math.exp(wish.tempoSd * normal(random));
  const places: DemoPlaces = {
    headAtTakeaway: place(rep.places.headAtTakeaway),
    headAtShaftLevelBack: place(rep.places.headAtShaftLevelBack),
    buttBack: place(rep.places.buttBack),
    buttDown: place(rep.places.buttDown),
    headAtShaftLevelDown: place(rep.places.headAtShaftLevelDown),
  };
  const spread = wish.placesSd > 0 ? 0.01 : 0;
  return {
    ...rep,
    places,
    tempo: { backswing: seconds(stretch(rep.tempo.backswing)), downswing: seconds(stretch(rep.tempo.downswing)) },
    handsShift: { x: spread * normal(random), y: spread * normal(random), z: spread * normal(random) },
  };
}

/** Sum of twelve: near enough to normal for a golfer, and never wilder than 6 standard deviations. */
function normal(random: Random): number {
  let sum = -6;
  for (let k = 0; k < 12; k++) sum += random();
  return sum;
}
