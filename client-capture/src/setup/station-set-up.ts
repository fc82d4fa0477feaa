import { spreadCamera } from "@overcue/shared-geometry/camera-spread";
import { imagePoint, type Point } from "@overcue/shared-geometry/point";
import type { RollingShutter } from "@overcue/shared-geometry/rolling-shutter";
import { stationLines, type StationLine, type StationSettings } from "@overcue/shared-geometry/station";
import type { StickEndName, StickInImage } from "@overcue/shared-geometry/stick-in-image";
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
  /** How the camera reads its picture; null: not known. */
  changeShutter(shutter: RollingShutter | null): void;
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

  const mark = (marked: MarkedStick): void => {
    const { line } = marked.stick;
    store.setState(({ sticks }) => ({ sticks: sticks.map((one) => (one.stick.line === line ? marked : one)) }));
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
    const alone = !found.found && (known.gravity ?? null) !== null;
    return alone ? await measure.findSticks(settings, { ...known, gravity: null }) : found;
  };
  const lookForSticks = async (): Promise<void> => {
    hints = parts.hints();
    const picture = await measure.freeze();
    const found = await find();
    const { settings, sticks } = store.getState();
    const marked = found.found
      ? found.sticks.map((stick) => snappedStick(stick))
      : settings.sticksPresent.map((line): MarkedStick => {
          // What was marked on another picture need not lie there on this one.
          return { ...keptOrGuessed(line, sticks, settings, picture), placed: "guessed", movedEnds: [] };
        });
    const window = windowAround(found.found ? found.sticks : [], picture);
    store.setState({ picture, sticks: marked, window, note: found.found ? "" : searchWords[found.reason] });
    solve();
  };

  const dragTo = (name: MarkName, at: Point<"image">): void => {
    const { sticks } = store.getState();
    if (name === "ball") {
      store.setState({ ball: { at, placed: "by-hand" } });
      return;
    }
    const marked = sticks.find((one) => one.stick.line === name.line);
    if (marked !== undefined) mark(withEnd(marked, name.end, at));
  };

  /** A stick of which one end is a guess still is snapped only where the bar is seen nearly all along: the guess was a good one. */
  const snap = async (marked: MarkedStick): Promise<void> => {
    const { line, near, far } = marked.stick;
    try {
      const snapped = await measure.snapStick(line, near.at, far.at);
      // The thumb has it again: what it does now counts.
      if (!store.getState().sticks.includes(marked)) return;
      const isGuess = marked.placed === "guessed";
      if (snapped.ok && (!isGuess || snapped.seenShare >= plainlySeen)) mark(snappedStick(snapped.stick));
      store.setState({ note: snapped.ok || isGuess ? "" : snapWords[snapped.reason] });
    } catch (error) {
      tellTrouble(error);
    }
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
    drag(name, at) {
      const { picture } = store.getState();
      if (picture === null) return;
      const inside = imagePoint(
        Math.min(picture.width, Math.max(0, at.x)),
        Math.min(picture.height, Math.max(0, at.y)),
      );
      dragTo(name, inside);
      store.setState({ dragged: { mark: name, at: inside } });
    },
    async drop() {
      const { dragged, sticks } = store.getState();
      store.setState({ dragged: null });
      const name = dragged?.mark;
      const line = name === undefined || name === "ball" ? null : name.line;
      const marked = sticks.find(({ stick }) => stick.line === line);
      if (marked !== undefined) await snap(marked);
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
    changeShutter(shutter) {
      store.setState({ shutter });
    },
    showWhole(whole) {
      const { picture, sticks } = store.getState();
      const marks = sticks.map(({ stick }) => stick);
      store.setState({ window: whole || picture === null ? null : windowAround(marks, picture) });
    },
    use() {
      const state = store.getState();
      const { solution, settings, shutter } = state;
      if (solution === null || solution.verdict === "refused") return null;
      parts.remember(stationFile(state));
      const { camera, covariance } = solution;
      const sticks = state.sticks.map(({ stick }) => stick);
      const spread = spreadCamera(camera, covariance);
      return { settings, camera, calibration: "station", spread, sticks, ...(shutter === null ? {} : { shutter }) };
    },
  };
}

/** Share of its length on which a stick must show for the end that nobody placed to be believed. */
const plainlySeen = 0.6;

const snappedStick = (stick: StickInImage): MarkedStick => ({ stick, placed: "snapped", movedEnds: [] });

function withEnd({ stick, placed, movedEnds }: MarkedStick, end: StickEndName, at: Point<"image">): MarkedStick {
  const moved = { at, isEnd: true, acrossSd: thumbSd, alongSd: thumbSd };
  const other = end === "near" ? "far" : "near";
  return {
    stick: { ...stick, [end]: moved },
    placed: placed === "guessed" && !movedEnds.includes(other) ? "guessed" : "by-hand",
    movedEnds: [...movedEnds.filter((one) => one !== end), end],
  };
}

function keptOrGuessed(
  line: StationLine,
  sticks: readonly MarkedStick[],
  settings: StationSettings,
  picture: { readonly width: number; readonly height: number },
): MarkedStick {
  const kept = sticks.find(({ stick }) => stick.line === line);
  return kept ?? { stick: guessStick(line, settings, picture), placed: "guessed", movedEnds: [] };
}
