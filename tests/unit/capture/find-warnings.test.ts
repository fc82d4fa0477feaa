import { describe, expect, it, test } from "vitest";
import { findWarnings } from "@overcue/client-capture/session/find-warnings";
import { practiceStatus } from "@overcue/client-capture/page/practice-status";
import type { SourceInfo } from "@overcue/client-capture/frames/frame-source";

const camera: SourceInfo = {
  kind: "camera",
  width: 720,
  height: 1280,
  nominalFramesPerSecond: 60,
  zoom: 1,
  knownCamera: null,
};

const fine = {
  source: camera,
  framesPerSecond: 60,
  bestFramesPerSecond: 60,
  posesPerSecond: 15,
  missedShare: 0.02,
  battery: 0.8,
  repTrouble: null,
  databaseMissing: false,
  failedFrames: 0,
  brightness: 120,
  torchWaits: true,
  newerPage: false,
  stationNews: "",
};

describe("S11 what is said while a source runs", () => {
  test("S11 nothing where all is well, or where nothing is known", () => {
    expect(findWarnings(fine)).toEqual([]);
    expect(findWarnings({ ...fine, battery: null, brightness: null, framesPerSecond: 0 })).toEqual([]);
  });

  it.each([
    { what: "a low battery", now: { battery: 0.19 }, says: ["19 %", "plug the phone in"] },
    { what: "heat", now: { framesPerSecond: 30 }, says: ["heat", "shade"] },
    { what: "pictures that are missed", now: { missedShare: 0.21 }, says: ["79 of 100", "close other programs"] },
    { what: "darkness", now: { brightness: 20 }, says: ["too dark", "phone's light on"] },
    {
      what: "darkness without a light",
      now: { brightness: 20, torchWaits: false },
      says: ["give the place more light"],
    },
    { what: "few pictures", now: { framesPerSecond: 20, bestFramesPerSecond: 20 }, says: ["Only 20", "slowly"] },
    { what: "a private window", now: { databaseMissing: true }, says: ["keeps nothing"] },
    { what: "a refused rep", now: { repTrouble: "disk full" }, says: ["disk full", "kept on this phone"] },
    { what: "a newer page", now: { newerPage: true }, says: ["newer page", "press Stop"] },
  ])("S11 says $what and what to do", ({ now, says }) => {
    const warnings = findWarnings({ ...fine, ...now });
    expect(warnings).toHaveLength(1);
    for (const part of says) expect(warnings[0]).toContain(part);
  });

  test("S11 a clip and the demo golfer are never told of heat or light", () => {
    const source = { ...camera, kind: "demo" as const };
    expect(findWarnings({ ...fine, source, framesPerSecond: 5, brightness: 3 })).toEqual([]);
  });
});

describe("S13 the word that is read from the ball", () => {
  const seen = { shaft: "tracked", reason: null, hands: "seen" } as const;
  const usual = { finding: seen, calibration: "station", link: { is: "connected" }, practice: null } as const;

  test("S13 is never longer than a narrow phone is wide", () => {
    const words = [
      practiceStatus(usual),
      practiceStatus({ ...usual, calibration: "suspect" }),
      practiceStatus({ ...usual, finding: { ...seen, shaft: "nothing-yet" } }),
      practiceStatus({ ...usual, finding: { ...seen, shaft: "lost", reason: "no-hands" } }),
    ].map(({ word }) => word);
    expect(words).toEqual(["Seen", "Look", "Wait", "Lost"]);
  });

  test("S13 whoever walks to the ball is waited for: nothing is lost", () => {
    const walking = practiceStatus({ ...usual, finding: { ...seen, shaft: "lost", reason: "walking" } });
    expect(walking).toMatchObject({ standing: "waiting", word: "Wait" });
    expect(walking.sentence).toContain("step to the ball");
  });

  test("S13 a moved camera is never hidden by a shaft that is seen", () => {
    const moved = practiceStatus({ ...usual, calibration: "suspect" });
    expect(moved).toMatchObject({ standing: "bad" });
    expect(moved.sentence).toContain("set the sticks again");
  });
});
