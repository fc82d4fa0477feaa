import { describe, expect, it } from "vitest";
import { makeToldBands } from "@overcue/client-capture/session/told-bands";
import type { ReadCheckpoint } from "@overcue/client-capture/pipeline/rep-readings";
import { defaultStation } from "@overcue/shared-geometry/default-station";
import { readingAt } from "../../fakes/golfer-model.ts";

const layout = defaultStation("7-iron", "right");

function read(checkpoint: ReadCheckpoint["checkpoint"], y: number, sd = 0.005): ReadCheckpoint {
  const { at, ...rest } = readingAt(checkpoint, y, sd, 1000, { layout });
  return { ...rest, t: at };
}

describe("bands told while a rep happens", () => {
  it("K4.3 are taken back by a finished rep that decides otherwise, and not by one that agrees", () => {
    const told = makeToldBands();
    told.tell(read("arm-level-back", 0));
    told.tell(read("arm-level-down", 0.2));
    const finished = [read("arm-level-back", -0.3), read("arm-level-down", 0.22)];
    expect(
      told
        .finish()(finished)
        .map(({ checkpoint }) => checkpoint),
    ).toEqual(["arm-level-back"]);
  });

  it("K4.3 are taken back by a finished rep that is not sure", () => {
    const told = makeToldBands();
    told.tell(read("arm-level-back", 0));
    expect(told.finish()([read("arm-level-back", 0.05, 0.1)])).toHaveLength(1);
  });

  it("K4.3 are taken back by a finished rep that does not have the checkpoint", () => {
    const told = makeToldBands();
    told.tell(read("arm-level-down", 0));
    const [taken, ...others] = told.finish()([read("arm-level-back", 0)]);
    expect(others).toEqual([]);
    expect(taken?.checkpoint).toBe("arm-level-down");
    expect(taken?.readOuts.buttPoint.defined).toBe(false);
  });

  it("K4.3 what the next rep is told meanwhile is not held against a rep that has ended", () => {
    const told = makeToldBands();
    told.tell(read("arm-level-back", 0));
    const corrections = told.finish();
    told.tell(read("arm-level-down", 0));
    const finished = [read("arm-level-back", -0.3), read("arm-level-down", -0.3)];
    expect(corrections(finished).map(({ checkpoint }) => checkpoint)).toEqual(["arm-level-back"]);
    expect(
      told
        .finish()(finished)
        .map(({ checkpoint }) => checkpoint),
    ).toEqual(["arm-level-down"]);
  });

  it("K4.3 an answer that was open is none to be taken back, and each is taken back once", () => {
    const told = makeToldBands();
    told.tell(read("arm-level-back", 0.05, 0.1));
    expect(told.finish()([read("arm-level-back", -0.3)])).toEqual([]);
    told.tell(read("arm-level-back", 0));
    told.forget();
    expect(told.finish()([read("arm-level-back", -0.3)])).toEqual([]);
  });
});
