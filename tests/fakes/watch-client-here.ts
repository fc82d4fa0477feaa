import { startWatch, watchStation, type StationWatch } from "@overcue/client-capture/station/watch-station";
import type { WatchClient } from "@overcue/client-capture/watching/watch-client";

/** The watch over the sticks as the worker runs it, but here and at once. */
export function watchClientHere(): WatchClient {
  let watch: StationWatch | null = null;
  return {
    watch({ settings, sticks, hints, calibration }) {
      watch = startWatch(settings, sticks, hints, calibration);
    },
    look(picture) {
      if (watch === null) return Promise.resolve(null);
      const { state, output } = watchStation(watch, picture);
      watch = state;
      return Promise.resolve({ news: output, calibration: state.calibration });
    },
  };
}
