import type { ClubId, Handed, StationSettings } from "./station.ts";
import { metres } from "./units.ts";

const inch = 0.0254;

/**
 * Ball line to toe line by club, metres: from the published mean ball positions of over 100 tour players (usgtf.com), rounded; golfers
 * differ by about 0.10 either way.
 */
const toeLine: Readonly<Record<ClubId, number>> = {
  driver: 0.84,
  "5-iron": 0.61,
  "6-iron": 0.59,
  "7-iron": 0.575,
  "8-iron": 0.555,
  "9-iron": 0.54,
};

/** Usual lengths (dimensionsguide.com/golf-club-dimensions; the 9-iron continues the half-inch steps: common practice, no source). */
const clubLength: Readonly<Record<ClubId, number>> = {
  driver: 45 * inch,
  "5-iron": 38 * inch,
  "6-iron": 37.5 * inch,
  "7-iron": 37 * inch,
  "8-iron": 36.5 * inch,
  "9-iron": 36 * inch,
};

/** Toes to heels along the ground, metres: a shoe's length. From memory; the user may edit it. */
const shoeLength = 0.3;

/** The station as it is laid when the user says nothing more than the club and the hand: three 4 ft sticks, no rod. */
export function defaultStation(club: ClubId, handed: Handed): StationSettings {
  return {
    handed,
    club,
    clubLength: metres(clubLength[club]),
    rodBeyondButt: metres(0),
    stickLength: metres(48 * inch),
    toeLine: metres(toeLine[club]),
    heelLine: metres(toeLine[club] + shoeLength),
    tolerance: metres(0.05),
    sticksPresent: ["ball-line", "toe-line", "heel-line"],
  };
}
