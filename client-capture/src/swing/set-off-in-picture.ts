import type { FoundInPicture } from "./find-picture-rep.ts";
import { timeAt, upAt, type HandsMoment } from "./hands-path.ts";
import { lastPause } from "./last-pause.ts";
import { leaveRest, type Leaving, type PlaceAt } from "./leave-rest.ts";
import type { PictureClip } from "./picture-clip.ts";
import { pictureTuning } from "./picture-tuning.ts";
import { swingTuning } from "./swing-tuning.ts";
import type { StartOfGrowth } from "./start-of-growth.ts";

/** The beginning of a rep in the picture. */
export interface SetOffInPicture {
  /** Null out of a flow, which has no rest. */
  readonly address: StartOfGrowth | null;
  /** When it could first be seen that the club, or where its head is not seen the hands, had left its rest. */
  readonly visible: StartOfGrowth | null;
  /** The address; out of a flow, when the hands turned round forward of the ball. */
  readonly from: StartOfGrowth;
}

export function setOffInPicture({ path, heads }: PictureClip, found: FoundInPicture): SetOffInPicture {
  const { rest, top } = found;
  if (!rest.still)
    return {
      address: null,
      visible: null,
      from: { t: timeAt(path, turnedForward(path, rest.index)), sd: swingTuning.setOff.turnSd },
    };
  const restT = timeAt(path, rest.index);
  const span = { from: restT - rest.time, rest: restT, top: timeAt(path, top) };
  const { head, hands, lingers } = pictureTuning.setOff;
  const ofHeads = heads.map(({ t, x, y }) => ({ t, at: [x, y] }));
  const ofHands = path.map(({ t, x, up }) => ({ t, at: [x, up] }));
  const leave = (places: readonly PlaceAt[], by: { readonly seen: number; readonly most: number }): Leaving[] => {
    const one = leaveRest(places, lastPause(places, span, by.seen), { ...by, lingers });
    return one === null ? [] : [one];
  };
  const ways = [...leave(ofHeads, head), ...leave(ofHands, hands)];
  const [leaving] = ways.sort((a, b) => a.visible.t - b.visible.t);
  if (leaving === undefined) {
    const unfitted = { t: restT, sd: pictureTuning.setOff.unfittedSd };
    return { address: unfitted, visible: null, from: unfitted };
  }
  const address = withCreeping(leaving.address, span.top);
  return { address, visible: leaving.visible, from: address };
}

/** Head or hands alone may seem to rest for long after the setting off, while they go along the line of sight. */
function withCreeping({ t, sd }: StartOfGrowth, top: number): StartOfGrowth {
  const backswing = top - t;
  return { t, sd: Math.min(Math.hypot(sd, pictureTuning.setOff.creepShare * backswing), backswing / 2) };
}

function turnedForward(path: readonly HandsMoment[], low: number): number {
  let forward = low;
  for (let index = low; index >= 0 && timeAt(path, low) - timeAt(path, index) < pictureTuning.flowTime; index--)
    if (upAt(path, index) > upAt(path, forward)) forward = index;
  return forward;
}
