import { timeTracker } from "./time-tracker.ts";

self.onmessage = ({ data }: MessageEvent<number>): void => {
  self.postMessage(timeTracker(data));
};
