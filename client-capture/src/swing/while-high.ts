import type { Stretch } from "./date-crossing.ts";
import type { SwingSample } from "./swing-sample.ts";
import { swingTuning } from "./swing-tuning.ts";

/** The part of a stretch in which the hands are about as high as in all of it: where they are held well below that, the club may seem to turn round too. All of it where no hands were seen. */
export function whileHigh(samples: readonly SwingSample[], within: Stretch): Stretch {
  const seen = samples.flatMap(({ t, hands }) =>
    hands === null || t < within.from || t > within.to ? [] : [{ t, z: hands.place.z }],
  );
  const highest = Math.max(...seen.map(({ z }) => z));
  const high = seen.filter(({ z }) => z > highest - swingTuning.topHandsFall);
  return { from: high[0]?.t ?? within.from, to: high.at(-1)?.t ?? within.to };
}
