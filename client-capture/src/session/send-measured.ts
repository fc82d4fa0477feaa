import type { Uplink } from "../link/open-uplink.ts";
import type { RepBox } from "../link/rep-box.ts";
import { wireEstimate } from "../link/wire-estimate.ts";
import { wireCheckpoint, wireNoRep, wireRep } from "../link/wire-rep.ts";
import type { Measured } from "../measuring/measure-client.ts";
import type { Configuration } from "../pipeline/configuration.ts";
import { readCheckpoint, type RepReading } from "../pipeline/rep-readings.ts";
import type { SourceClock } from "../running/source-clock.ts";
import type { Refusal } from "../swing/segment-reps.ts";
import type { RepIds } from "./rep-ids.ts";
import type { ToldBands } from "./told-bands.ts";

export interface SendingParts {
  /** Null while the page is not paired. */
  readonly uplink: Uplink | null;
  readonly reps: RepBox;
  readonly repIds: RepIds;
  readonly toldBands: ToldBands;
  readonly clock: SourceClock;
  readonly configuration: Configuration;
  readonly framesPerSecond: number;
}

/**
 * Sends on what one picture gave: the estimate, which may be lost; checkpoints passed slowly enough to be read live; and a finished rep, which
 * is kept until the book has it; before it, the checkpoints whose band the finished rep takes back. A rep that has just ended is sent when it has been gone over
 * once more, and keeps the id it had. A movement that was no rep is told too, for what was told of it to be taken back. Without a relay a rep is dated by the page's own clock.
 */
export function sendMeasured({ output, rep }: Measured, sequence: number, parts: SendingParts): void {
  const { uplink, reps, repIds, toldBands, clock, configuration } = parts;
  const { calibration, settings } = configuration;
  // As the clock stands at this picture: a clip that falls behind moves it before the rep has been gone over.
  const shift = clock.toPageTime(output.t) - output.t;
  const relayTime = (t: number): number | null => uplink?.relayTime(t + shift) ?? null;
  const anyTime = (t: number): number => relayTime(t) ?? performance.timeOrigin + t + shift;

  const capturedAt = relayTime(output.t);
  if (uplink !== null && capturedAt !== null) {
    const { framesPerSecond } = parts;
    uplink.sendEstimate(wireEstimate(output, { sequence, capturedAt, framesPerSecond }));
    for (const passed of output.swing.passed) {
      const read = readCheckpoint(passed, configuration);
      toldBands.tell(read);
      const reading = wireCheckpoint(read, anyTime);
      uplink.sendCheckpoint({ repId: repIds.current(), reading, calibration, corrects: false });
    }
  }
  if (rep !== null) {
    const repId = repIds.finish();
    const corrections = toldBands.finish();
    const send = (finished: RepReading): void => {
      for (const taken of corrections(finished.checkpoints)) {
        const reading = wireCheckpoint(taken, anyTime);
        uplink?.sendCheckpoint({ repId, reading, calibration, corrects: true });
      }
      void reps.add(wireRep(finished, repId, settings.handed, calibration, anyTime));
    };
    // A rep that never comes is told by whoever follows the run.
    void rep.then(send, () => undefined);
  } else if (output.swing.refused !== null) {
    giveUpRep(parts, output.swing.refused);
  }
}

/** The rep under way, if there is one, was none (why, where it is known), or is not followed to its end: what was told of it is taken back. */
export function giveUpRep(
  { uplink, repIds, toldBands }: Pick<SendingParts, "uplink" | "repIds" | "toldBands">,
  refusal: Refusal | null,
): void {
  uplink?.sendNoRep(wireNoRep(refusal, repIds.finish()));
  toldBands.forget();
}
