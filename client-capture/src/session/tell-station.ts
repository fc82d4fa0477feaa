import type { StationSettings } from "@overcue/shared-geometry/station";
import type { Uplink } from "../link/open-uplink.ts";

/** Tells the relay of the station that was set on the phone, now or as soon as the relay is there again. */
export interface StationTeller {
  set(settings: StationSettings): void;
  /** The relay can be reached: what it has not heard yet is told. */
  connected(): void;
}

/** `onRefused` gets the relay's reason as a sentence. Without an uplink nothing is told. */
export function makeStationTeller(
  uplink: Pick<Uplink, "sendStation"> | null,
  onRefused: (why: string) => void,
): StationTeller {
  let untold: StationSettings | null = null;
  const tell = async (): Promise<void> => {
    const settings = untold;
    if (settings === null || uplink === null) return;
    try {
      const answer = await uplink.sendStation(settings);
      // Another station may have been set while this one was on its way.
      if (untold === settings) untold = null;
      if (!answer.ok) onRefused(answer.why);
    } catch {
      // Kept, and told when the relay is back.
    }
  };
  return {
    set(settings) {
      untold = settings;
      void tell();
    },
    connected() {
      void tell();
    },
  };
}
