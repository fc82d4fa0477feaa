import { stickEndNames } from "@overcue/shared-geometry/stick-in-image";
import { placeKey } from "../session/place-memory.ts";
import { stationFileSchema, type StationFile } from "./station-file.ts";
import type { StationState } from "./station-store.ts";

const key = "overcue.station";

/** The station as a file's content: what the user said and where the marks are. */
export function stationFile({
  settings,
  sticks,
  ball,
  shutter,
}: Pick<StationState, "settings" | "sticks" | "ball" | "shutter">): StationFile {
  return {
    settings: { ...settings, sticksPresent: [...settings.sticksPresent] },
    sticks: sticks.map(({ stick }) => {
      const { line, near, far } = stick;
      const hidden = stickEndNames.filter((end) => !stick[end].isEnd);
      return {
        line,
        near: [near.at.x, near.at.y],
        far: [far.at.x, far.at.y],
        ...(hidden.length === 0 ? {} : { hidden }),
      };
    }),
    ...(ball?.placed === "by-hand" ? { ball: [ball.at.x, ball.at.y] as const } : {}),
    ...(shutter === null ? {} : { rollingShutter: { milliseconds: shutter.time, towards: shutter.towards } }),
  };
}

/** Remembers the last station of a place on this phone. A browser that keeps nothing is no fault. */
export function rememberStation(file: StationFile): void {
  try {
    localStorage.setItem(placeKey(key), JSON.stringify(file));
  } catch {
    // A private window: the station is set anew next time.
  }
}

export function rememberedStation(): ReturnType<typeof stationFileSchema.parse> | null {
  try {
    const kept = stationFileSchema.safeParse(JSON.parse(localStorage.getItem(placeKey(key)) ?? "null"));
    return kept.success ? kept.data : null;
  } catch {
    return null;
  }
}
