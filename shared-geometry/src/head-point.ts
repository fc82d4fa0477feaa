import { gripToHead } from "./grip-convention.ts";
import { groundPoint, worldPoint, type Point } from "./point.ts";
import type { StationSettings } from "./station.ts";
import type { ShaftInWorld } from "./world-shaft.ts";

/** The club head in the world: a club's length less the grip's place from the grip point. */
export function clubHead(
  shaft: Pick<ShaftInWorld, "grip" | "toHead">,
  settings: Pick<StationSettings, "clubLength">,
): Point<"world"> {
  const reach = gripToHead(settings);
  const { grip, toHead } = shaft;
  return worldPoint(grip.x + reach * toHead.x, grip.y + reach * toHead.y, grip.z + reach * toHead.z);
}

/** The club head dropped straight down onto the ground. */
export function headPoint(
  shaft: Pick<ShaftInWorld, "grip" | "toHead">,
  settings: Pick<StationSettings, "clubLength">,
): Point<"ground"> {
  const head = clubHead(shaft, settings);
  return groundPoint(head.x, head.y);
}
