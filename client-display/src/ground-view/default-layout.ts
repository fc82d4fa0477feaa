import type { BandLayout } from "@overcue/shared-geometry/bands";
import { defaultStation } from "@overcue/shared-geometry/default-station";
import { gripToHead } from "@overcue/shared-geometry/grip-convention";

const station = defaultStation("7-iron", "right");

/** A 7-iron's station, drawn until the relay has told the golfer's own. */
export const defaultLayout: BandLayout = station;

/** Middle of the grips to the head, metres, to draw the shaft by; nothing is measured from it. */
export const drawnGripToHead = gripToHead(station);
