import { spreadCamera } from "@overcue/shared-geometry/camera-spread";
import type { Picture } from "../picture/picture.ts";
import { newsSentence } from "../setup/station-words.ts";
import type { WatchAnswer, WatchClient } from "../watching/watch-client.ts";
import type { CameraHints } from "../station/find-sticks.ts";
import type { SolvedStation } from "./configuration-for.ts";

export interface StickWatchParts {
  readonly client: WatchClient;
  /** What is known of the lens. */
  readonly hints: () => CameraHints;
  /** The newest picture that was measured; rejects where there is none. */
  readonly newestPicture: () => Promise<Picture>;
  /** The station as it is to be used from here on, with what to tell the golfer; an empty sentence takes the last one back. */
  readonly onChange: (station: SolvedStation, sentence: string) => void;
}

/** Looks at the sticks of a solved station between reps. */
export interface StickWatch {
  /** The station in use; null, or one that was not solved from sticks, is not watched. */
  use(station: SolvedStation | null): void;
  /**
   * Hears of every measured picture. A look is taken where a rep has just ended, or the club is still or nobody holds one and the last look was some
   * seconds ago; resolves when that look is over.
   */
  onMeasured(moment: Moment): Promise<void>;
}

interface Moment {
  /** Milliseconds of the source's clock. */
  readonly t: number;
  readonly repEnded: boolean;
  readonly isStill: boolean;
  /** Nobody's hands are found: the sticks lie free. */
  readonly isAlone: boolean;
}

/** Between two looks while nothing happens, milliseconds of the source's clock. */
const lookEvery = 3000;

export function makeStickWatch({ client, hints, newestPicture, onChange }: StickWatchParts): StickWatch {
  let station: SolvedStation | null = null;
  let lookedAt = Number.NEGATIVE_INFINITY;
  let isLooking = false;

  const look = async (watched: SolvedStation): Promise<void> => {
    try {
      const answer = await client.look(await newestPicture());
      // Another station may have been set meanwhile.
      if (answer === null || station !== watched) return;
      const next = stationAfter(watched, answer);
      if (next === null) return;
      station = next;
      onChange(next, newsSentence(answer.news));
    } catch {
      // Without a picture there is nothing to look at; the next rep brings one.
    } finally {
      isLooking = false;
    }
  };

  return {
    use(next) {
      station = next?.sticks === undefined ? null : next;
      lookedAt = Number.NEGATIVE_INFINITY;
      if (station?.sticks === undefined) return;
      const { settings, sticks, calibration } = station;
      client.watch({
        settings,
        sticks,
        hints: hints(),
        calibration: calibration === "suspect" ? "suspect" : "station",
      });
    },
    async onMeasured({ t, repEnded, isStill, isAlone }) {
      if (station === null || isLooking) return;
      // A film that is played over and over starts its clock anew.
      const isDue = repEnded || ((isStill || isAlone) && Math.abs(t - lookedAt) >= lookEvery);
      if (!isDue) return;
      lookedAt = t;
      isLooking = true;
      await look(station);
    },
  };
}

/** The station that follows from a look; null where it stays as it is. */
function stationAfter(station: SolvedStation, { news, calibration }: WatchAnswer): SolvedStation | null {
  if (news.news === "phone-moved" && news.solution !== null) {
    const { camera, covariance } = news.solution;
    return { ...station, camera, spread: spreadCamera(camera, covariance), sticks: news.sticks, calibration };
  }
  return calibration === station.calibration ? null : { ...station, calibration };
}
