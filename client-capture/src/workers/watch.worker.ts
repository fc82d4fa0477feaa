/// <reference lib="webworker" />
import { startWatch, watchStation, type StationWatch } from "../station/watch-station.ts";
import type { FromWatchWorker, ToWatchWorker } from "./watch-messages.ts";

declare const self: DedicatedWorkerGlobalScope;

let watch: StationWatch | null = null;

self.onmessage = ({ data }: MessageEvent<ToWatchWorker>) => {
  if (data.do === "watch") {
    watch = startWatch(data.settings, data.sticks, data.hints, data.calibration);
    return;
  }
  self.postMessage({ id: data.id, told: look(data) } satisfies FromWatchWorker);
};

function look({ picture }: Extract<ToWatchWorker, { do: "look" }>): FromWatchWorker["told"] {
  if (watch === null) return null;
  try {
    const { state, output } = watchStation(watch, picture);
    watch = state;
    return { news: output, calibration: state.calibration };
  } catch {
    // A look that fails says nothing; the next one may.
    return null;
  }
}
