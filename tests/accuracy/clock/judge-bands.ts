import type { BandSubject } from "@overcue/shared-geometry/checkpoints";
import { bandAt } from "@overcue/shared-geometry/band-interval";
import { lineOnGround } from "@overcue/shared-geometry/butt-point";
import { headPoint } from "@overcue/shared-geometry/head-point";
import type { DemoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import type { ToldLive } from "@overcue/client-capture/pipeline/told-live";

/** A band that was claimed of one picture. */
export interface JudgedBand {
  readonly subject: BandSubject;
  readonly right: boolean;
}

/** The club's own line tells the truth, also where it is so flat that nothing is read of it; one that never comes down makes any band of the butt point wrong. */
export function judgeBands(motion: DemoMotion, bands: ToldLive["bands"]): JudgedBand[] {
  const station = motion.plan.golfer.station;
  return bands.map(({ t, subject, band }) => {
    const { club } = motion.at(t / 1000);
    if (club === null) return { subject, right: false };
    if (subject === "head-point") return { subject, right: band === bandAt(headPoint(club, station).y, station) };
    return { subject, right: club.toHead.z > 0 && band === bandAt(lineOnGround(club).y, station) };
  });
}
