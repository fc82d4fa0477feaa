import type { StationSettings } from "@overcue/shared-geometry/station";
import type { StickInImage } from "@overcue/shared-geometry/stick-in-image";
import type { Picture } from "../picture/picture.ts";
import type { CameraHints } from "../station/find-sticks.ts";
import type { StationNews, StationWatch } from "../station/watch-station.ts";

export type ToWatchWorker =
  /** Watches these sticks from here on, as the camera in use was solved from them. */
  | {
      readonly do: "watch";
      readonly settings: StationSettings;
      readonly sticks: readonly StickInImage[];
      readonly hints: CameraHints;
      /** `suspect` where something was out of place already. */
      readonly calibration: StationWatch["calibration"];
    }
  | { readonly do: "look"; readonly id: number; readonly picture: Picture };

export interface FromWatchWorker {
  readonly id: number;
  /** Null where there was nothing to watch or the look failed. */
  readonly told: { readonly news: StationNews; readonly calibration: StationWatch["calibration"] } | null;
}
