import { spreadCamera } from "@overcue/shared-geometry/camera-spread";
import { imagePoint, type Point } from "@overcue/shared-geometry/point";
import { solveStation } from "@overcue/shared-geometry/solve-station";
import { stationLines, type StationLine, type StationSettings } from "@overcue/shared-geometry/station";
import type { StickInImage } from "@overcue/shared-geometry/stick-in-image";
import { pixels } from "@overcue/shared-geometry/units";
import type { MeasureClient } from "../measuring/measure-client.ts";
import type { SolvedStation } from "../session/configuration-for.ts";
import { guessStick } from "./guess-sticks.ts";
import { windowAround } from "./window-around.ts";
import { rememberStation, stationFile } from "./station-memory.ts";
import type { MarkedStick, StationState, StationStore, StickEndName } from "./station-store.ts";
import { searchWords, snapWords } from "./station-words.ts";

export interface StationSetUp {
  readonly store: StationStore;
  /** Freezes the newest picture and looks for the sticks in it. */
  takePicture(): Promise<void>;
  drag(line: StationLine, end: StickEndName, at: Point<"image">): void;
  /** The thumb is off: the stick is snapped to what lies under its marks. */
  drop(): Promise<void>;
  changeSettings(change: Partial<StationSettings>): void;
  /** Shows the whole picture, or what lies about the marks. */
  showWhole(whole: boolean): void;
  /** The solved station, remembered on this phone; null where there is none. */
  use(): SolvedStation | null;
}

type Parts = Pick<MeasureClient, "freeze" | "findSticks" | "snapStick">;

/** Marks on a frozen picture, snapped to the sticks and solved after each change. */
export function startStationSetUp(store: StationStore, { freeze, findSticks, snapStick }: Parts): StationSetUp {
  const markAs = (stick: StickInImage, placed: MarkedStick["placed"]): void => {
    const { sticks } = store.getState();
    store.setState({ sticks: sticks.map((one) => (one.stick.line === stick.line ? { stick, placed } : one)) });
  };
  const solve = (): void => {
    store.setState((state) => ({ solution: solved(state) }));
  };

  return {
    store,
    async takePicture() {
      store.setState({ note: "Looking for the sticks…" });
      try {
        const picture = await freeze();
        const { settings, sticks } = store.getState();
        const found = await findSticks(settings);
        const marked = found.found
          ? found.sticks.map((stick): MarkedStick => ({ stick, placed: "snapped" }))
          : settings.sticksPresent.map((line) => keptOrGuessed(line, sticks, settings, picture));
        const window = windowAround(
          marked.map(({ stick }) => stick),
          picture,
        );
        store.setState({ picture, sticks: marked, window, note: found.found ? "" : searchWords[found.reason] });
        solve();
      } catch (error) {
        store.setState({ note: error instanceof Error ? error.message : String(error) });
      }
    },
    drag(line, end, at) {
      const { sticks, picture } = store.getState();
      const marked = sticks.find(({ stick }) => stick.line === line);
      if (marked === undefined || picture === null) return;
      const inside = imagePoint(
        Math.min(picture.width, Math.max(0, at.x)),
        Math.min(picture.height, Math.max(0, at.y)),
      );
      const { stick } = marked;
      const moved = { at: inside, isEnd: true, acrossSd: thumbSd, alongSd: thumbSd };
      markAs(end === "near" ? { ...stick, near: moved } : { ...stick, far: moved }, "by-hand");
      store.setState({ dragged: { line, end, at: inside } });
    },
    async drop() {
      const { dragged, sticks } = store.getState();
      store.setState({ dragged: null });
      const marked = sticks.find(({ stick }) => stick.line === dragged?.line);
      if (marked === undefined) return;
      try {
        const { line, near, far } = marked.stick;
        const snapped = await snapStick(line, near.at, far.at);
        if (snapped.ok) markAs(snapped.stick, "snapped");
        store.setState({ note: snapped.ok ? "" : snapWords[snapped.reason] });
      } catch (error) {
        store.setState({ note: error instanceof Error ? error.message : String(error) });
      }
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
      rememberStation(stationFile(state));
      const { camera, covariance } = solution;
      const sticks = state.sticks.map(({ stick }) => stick);
      return { settings, camera, calibration: "station", spread: spreadCamera(camera, covariance), sticks };
    },
  };
}

/** How well a thumb under the magnifier places a mark, pixels. */
const thumbSd = pixels(1.5);

function keptOrGuessed(
  line: StationLine,
  sticks: readonly MarkedStick[],
  settings: StationSettings,
  picture: { readonly width: number; readonly height: number },
): MarkedStick {
  const kept = sticks.find(({ stick }) => stick.line === line);
  return kept ?? { stick: guessStick(line, settings, picture), placed: "guessed" };
}

/** Nothing is solved of a guess: it would fit itself and look like a good station. */
function solved({ sticks, settings, picture }: StationState): StationState["solution"] {
  if (picture === null || sticks.length < 2 || sticks.some(({ placed }) => placed === "guessed")) return null;
  const { width, height } = picture;
  return solveStation({
    sticks: sticks.map(({ stick }) => stick),
    settings,
    width: pixels(width),
    height: pixels(height),
  });
}
