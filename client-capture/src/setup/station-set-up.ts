import { spreadCamera } from "@overcue/shared-geometry/camera-spread";
import { imagePoint, type Point } from "@overcue/shared-geometry/point";
import { stationLines, type StationLine, type StationSettings } from "@overcue/shared-geometry/station";
import type { StickInImage } from "@overcue/shared-geometry/stick-in-image";
import type { MeasureClient } from "../measuring/measure-client.ts";
import type { SolvedStation } from "../session/configuration-for.ts";
import type { CameraHints, FoundStation } from "../station/find-sticks.ts";
import { gatherPictures } from "./gather-pictures.ts";
import { guessBall } from "./guess-ball.ts";
import { guessStick } from "./guess-sticks.ts";
import { ballHint, solveMarks, thumbSd } from "./solve-marks.ts";
import { stationFile } from "./station-memory.ts";
import type { StationFile } from "./station-file.ts";
import type { MarkedStick, MarkName, StationStore } from "./station-store.ts";
import { gatherWords, searchWords, snapWords } from "./station-words.ts";
import { windowAround } from "./window-around.ts";

export interface StationSetUp {
  readonly store: StationStore;
  /** Hears of every measured picture, by its time: some are gathered, made one of, and the sticks looked for in that. */
  onPicture(t: number): Promise<void>;
  /** Gathers pictures anew; marks that nobody moved are found anew too. */
  lookAgain(): void;
  drag(mark: MarkName, at: Point<"image">): void;
  /** The thumb is off: a stick is snapped to what lies under its marks. */
  drop(): Promise<void>;
  /** Whether the ball lies where it will be hit and is marked. */
  markBall(marked: boolean): void;
  changeSettings(change: Partial<StationSettings>): void;
  /** Shows the whole picture, or what lies about the marks. */
  showWhole(whole: boolean): void;
  /** The solved station; null where there is none. */
  use(): SolvedStation | null;
}

export interface StationSetUpParts {
  readonly measure: Pick<MeasureClient, "keep" | "freeze" | "findSticks" | "snapStick">;
  /** A recorded clip, or pictures as they are taken. */
  readonly pace: "clip" | "live";
  /** What lens and motion sensor say of the camera at this moment. */
  readonly hints: () => CameraHints;
  /** Told of a station that is going to be used. */
  readonly remember: (file: StationFile) => void;
}

/** Marks on a still picture, snapped to the sticks and solved after each change. */
export function startStationSetUp(store: StationStore, parts: StationSetUpParts): StationSetUp {
  const { measure, pace } = parts;
  let hints: CameraHints = {};
  const gather = () =>
    gatherPictures(pace, measure.keep, (kept, of) => {
      store.setState({ note: gatherWords(kept, of) });
    });
  let gathering = gather();

  const markAs = (stick: StickInImage, placed: MarkedStick["placed"]): void => {
    const { sticks } = store.getState();
    store.setState({ sticks: sticks.map((one) => (one.stick.line === stick.line ? { stick, placed } : one)) });
  };
  const solve = (): void => {
    store.setState((state) => ({ solution: solveMarks(state, hints) }));
  };
  const tellTrouble = (error: unknown): void => {
    store.setState({ note: error instanceof Error ? error.message : String(error) });
  };

  const find = async (): Promise<FoundStation> => {
    const { settings, ball } = store.getState();
    const known = { ...hints, ball: ballHint(ball) };
    const found = await measure.findSticks(settings, known);
    // A sensor that counts otherwise than is thought here must not hide the sticks.
    return found.found || known.gravity == null
      ? found
      : await measure.findSticks(settings, { ...known, gravity: null });
  };
  const lookForSticks = async (): Promise<void> => {
    hints = parts.hints();
    const picture = await measure.freeze();
    const found = await find();
    const { settings, sticks } = store.getState();
    const marked = found.found
      ? found.sticks.map((stick): MarkedStick => ({ stick, placed: "snapped" }))
      : settings.sticksPresent.map((line): MarkedStick => {
          // What was marked on another picture need not lie there on this one.
          return { ...keptOrGuessed(line, sticks, settings, picture), placed: "guessed" };
        });
    const window = windowAround(
      marked.map(({ stick }) => stick),
      picture,
    );
    store.setState({ picture, sticks: marked, window, note: found.found ? "" : searchWords[found.reason] });
    solve();
  };

  const dragTo = (mark: MarkName, at: Point<"image">): void => {
    const { sticks } = store.getState();
    if (mark === "ball") {
      store.setState({ ball: { at, placed: "by-hand" } });
      return;
    }
    const stick = sticks.find((one) => one.stick.line === mark.line)?.stick;
    if (stick === undefined) return;
    const moved = { at, isEnd: true, acrossSd: thumbSd, alongSd: thumbSd };
    markAs(mark.end === "near" ? { ...stick, near: moved } : { ...stick, far: moved }, "by-hand");
  };

  return {
    store,
    async onPicture(t) {
      if (store.getState().picture !== null) return;
      try {
        if (await gathering.onPicture(t)) await lookForSticks();
      } catch (error) {
        gathering = gather();
        tellTrouble(error);
      }
    },
    lookAgain() {
      gathering = gather();
      store.setState({ picture: null, solution: null, window: null, dragged: null, note: "" });
    },
    drag(mark, at) {
      const { picture } = store.getState();
      if (picture === null) return;
      const inside = imagePoint(
        Math.min(picture.width, Math.max(0, at.x)),
        Math.min(picture.height, Math.max(0, at.y)),
      );
      dragTo(mark, inside);
      store.setState({ dragged: { mark, at: inside } });
    },
    async drop() {
      const { dragged, sticks } = store.getState();
      store.setState({ dragged: null });
      const mark = dragged?.mark;
      const marked =
        mark === undefined || mark === "ball" ? null : sticks.find(({ stick }) => stick.line === mark.line);
      if (marked != null) {
        try {
          const { line, near, far } = marked.stick;
          const snapped = await measure.snapStick(line, near.at, far.at);
          if (snapped.ok) markAs(snapped.stick, "snapped");
          store.setState({ note: snapped.ok ? "" : snapWords[snapped.reason] });
        } catch (error) {
          tellTrouble(error);
        }
      }
      solve();
    },
    markBall(marked) {
      store.setState(({ picture, settings, solution }) => {
        if (!marked || picture === null) return { ball: null };
        const camera = solution === null || solution.verdict === "refused" ? null : solution.camera;
        return { ball: { at: guessBall(camera, settings.handed, picture), placed: "guessed" } };
      });
      solve();
    },
    changeSettings(change) {
      store.setState(({ settings, sticks, picture }) => {
        const next = { ...settings, ...change };
        const present = stationLines.filter((line) => next.sticksPresent.includes(line));
        const marked = picture === null ? [] : present.map((line) => keptOrGuessed(line, sticks, next, picture));
        return { settings: next, sticks: marked };
      });
      solve();
    },
    showWhole(whole) {
      const { picture, sticks } = store.getState();
      const marks = sticks.map(({ stick }) => stick);
      store.setState({ window: whole || picture === null ? null : windowAround(marks, picture) });
    },
    use() {
      const state = store.getState();
      const { solution, settings } = state;
      if (solution === null || solution.verdict === "refused") return null;
      parts.remember(stationFile(state));
      const { camera, covariance } = solution;
      const sticks = state.sticks.map(({ stick }) => stick);
      return { settings, camera, calibration: "station", spread: spreadCamera(camera, covariance), sticks };
    },
  };
}

function keptOrGuessed(
  line: StationLine,
  sticks: readonly MarkedStick[],
  settings: StationSettings,
  picture: { readonly width: number; readonly height: number },
): MarkedStick {
  const kept = sticks.find(({ stick }) => stick.line === line);
  return kept ?? { stick: guessStick(line, settings, picture), placed: "guessed" };
}
