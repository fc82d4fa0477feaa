import { z } from "zod";
import { journalEntrySchema } from "../practice/journal/events.ts";
import { repSchema } from "@overcue/shared-geometry/wire/rep";

const trajectorySchema = z.object({
  repId: z.uuid(),
  golferId: z.string(),
  /** Relay clock ms, grip x y z (m), azimuth, elevation (rad). */
  trajectory: repSchema.shape.trajectory,
});

/** The whole book as JSON: what export writes and import reads. Checked beyond shapes: order, and that everything speaks of something that is there. */
export const bookFileSchema = z
  .object({
    format: z.literal("overcue-book/1"),
    /** Everything that happened, in order. Lengths in metres, times in milliseconds since the epoch. */
    journal: z.array(journalEntrySchema),
    trajectories: z.array(trajectorySchema),
  })
  .superRefine(({ journal, trajectories }, context) => {
    const fault = (message: string, ...path: (string | number)[]): void => {
      context.addIssue({ code: "custom", message, path });
    };
    const golfers = new Set<string>();
    const reps = new Set<string>();
    let last = 0;
    for (const [index, { sequence, golferId, event }] of journal.entries()) {
      if (sequence <= last) fault("entries must rise in number", "journal", index, "sequence");
      last = sequence;
      if (event.type === "golfer-added") {
        if (event.golfer.id !== golferId) fault("must be the golfer that is added", "journal", index, "golferId");
        if (golfers.has(event.golfer.id))
          fault("this golfer was added before", "journal", index, "event", "golfer", "id");
        golfers.add(event.golfer.id);
      }
      if (golferId !== null && !golfers.has(golferId))
        fault("no such golfer was added before", "journal", index, "golferId");
      if (event.type === "rep-recorded") {
        if (reps.has(event.rep.id)) fault("this rep was recorded before", "journal", index, "event", "rep", "id");
        if (golferId === null) fault("a rep belongs to a golfer", "journal", index, "golferId");
        reps.add(event.rep.id);
      }
      if ("repId" in event && !reps.has(event.repId))
        fault("no such rep was recorded before", "journal", index, "event", "repId");
    }
    const paths = new Set<string>();
    for (const [index, { repId }] of trajectories.entries()) {
      if (!reps.has(repId)) fault("no such rep is in the journal", "trajectories", index, "repId");
      if (paths.has(repId)) fault("this rep has a trajectory already", "trajectories", index, "repId");
      paths.add(repId);
    }
  });

export type BookFile = z.infer<typeof bookFileSchema>;
