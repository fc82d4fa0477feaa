import { milliseconds } from "@overcue/shared-geometry/units";
import type { CapturedFrame, FrameSource } from "./frame-source.ts";
import type { Thinning } from "../pipeline/thinning.ts";

/** A clip with most of its pictures left out and its time run as many times faster: what was filmed in slow motion comes at about the pace at which it happened. */
export function thinnedSource(source: FrameSource, { every, from }: Thinning): FrameSource {
  let taken = 0;
  return {
    info: source.info,
    async next(): Promise<CapturedFrame | null> {
      for (let frame = await source.next(); frame !== null; frame = await source.next()) {
        if (frame.index % every === from)
          return { ...frame, index: taken++, captureTime: milliseconds(frame.captureTime / every) };
        frame.image.close();
      }
      return null;
    },
    close() {
      source.close();
    },
  };
}
