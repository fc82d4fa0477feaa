import { defaultStation } from "@overcue/shared-geometry/default-station";
import type { Point } from "@overcue/shared-geometry/point";
import type { StationSettings } from "@overcue/shared-geometry/station";
import type { PracticeState } from "@overcue/shared-geometry/wire/practice";
import { cameraView } from "../checks/camera-view.ts";
import type { RodChoice } from "../checks/rod-check.ts";
import type { CameraSource } from "../frames/camera-source.ts";
import type { CapturedFrame, FrameSource, SourceInfo } from "../frames/frame-source.ts";
import type { Uplink } from "../link/open-uplink.ts";
import type { RepBox } from "../link/rep-box.ts";
import { startMeasureClient } from "../measuring/measure-client.ts";
import type { Configuration } from "../pipeline/configuration.ts";
import type { StepOutput } from "../pipeline/step.ts";
import type { PoseClient } from "../pose/pose-client.ts";
import { senseGravity, type GravitySense } from "../setup/sense-gravity.ts";
import { rememberedStation, rememberStation } from "../setup/station-memory.ts";
import { startStationSetUp, type StationSetUp } from "../setup/station-set-up.ts";
import { createStationStore, type StationStore } from "../setup/station-store.ts";
import { focalHint } from "../station/focal-hint.ts";
import { startWatchClient } from "../watching/watch-client.ts";
import { configurationFor, type SolvedStation } from "./configuration-for.ts";
import { followRun } from "./follow-run.ts";
import { nothingFound, withoutSource, type PhoneStore, type Screen } from "./phone-store.ts";
import { recordOf, rememberPlaces, withRecord, type PlaceRecord } from "./place-memory.ts";
import { makeRepIds } from "./rep-ids.ts";
import { giveUpRep, sendMeasured } from "./send-measured.ts";
import { makeToldBands } from "./told-bands.ts";
import { makeStationTeller } from "./tell-station.ts";
import { makeStickWatch } from "./watch-sticks.ts";

/** Draws what is seen and found; called for the pictures that are painted while a live picture is on the screen. */
export interface Painter {
  picture(frame: CapturedFrame): void;
  finding(output: StepOutput): void;
}

/** A source together with the station it brings along: the demo golfer's own. */
export interface OpenedSource {
  readonly source: FrameSource;
  readonly settings: StationSettings | null;
  readonly camera: CameraSource | null;
}

export interface PhoneSession {
  /** Opens a source and runs it until it ends, breaks or another one is opened. Never rejects: trouble goes to the store. */
  open(what: string, openSource: () => Promise<OpenedSource>): Promise<void>;
  stop(): void;
  show(screen: Screen): void;
  setPainter(painter: Painter | null): void;
  setTorch(on: boolean): Promise<void>;
  /** A camera solved from the sticks; what is measured from here on goes through it. */
  setStation(solved: SolvedStation | null): void;
  /** Begins a set-up of the sticks over the newest picture. */
  startStation(): StationSetUp;
  tellPractice(practice: PracticeState): void;
  /** The practice as the relay last told it; null while not paired. */
  practice(): PracticeState | null;
  /** The next tap on the picture is on the rod, or is not. */
  askForRod(asked: boolean): void;
  /** Learns the rod's colour from where the newest picture was tapped, pixels. Never rejects: what came of it goes to the store. */
  tapRod(at: Point<"image">): Promise<void>;
  /** No rod is used, or it has no colour of its own. */
  setNoRod(): void;
  setSpaceClear(clear: boolean): void;
  /** The cautions were read at the current place. */
  readCautions(): void;
  /** Another place: what was remembered there comes back. */
  choosePlace(name: string): void;
  /** The relay can be reached (again). */
  tellConnected(): void;
}

export interface SessionParts {
  readonly store: PhoneStore;
  readonly uplink: Uplink | null;
  readonly reps: RepBox;
  readonly pose: () => PoseClient | null;
  /** Resolves when the pose model has warmed up, or never will. */
  readonly poseSettled: Promise<void>;
  readonly now: () => number;
  readonly newId: () => string;
  readonly databaseMissing: boolean;
}

interface Run {
  readonly opened: OpenedSource;
  stopped: boolean;
  configuration: Configuration;
}

export function createPhoneSession(parts: SessionParts): PhoneSession {
  const { store, uplink, reps, pose, now } = parts;
  const measure = startMeasureClient();
  const repIds = makeRepIds(parts.newId);
  const toldBands = makeToldBands();
  const station = makeStationTeller(uplink, (why) => {
    store.setState({ stationNews: `The relay did not take the station: ${why}` });
  });
  const sticks = makeStickWatch({
    client: startWatchClient(),
    // Whoever bumps the phone tilts it: gravity was sensed for the place it had before.
    hints: () => (run === null ? {} : { focal: focalHint(run.opened.source.info) }),
    newestPicture: () => measure.lend(),
    onChange: (next, stationNews) => {
      solved = next;
      if (run === null) return;
      run.configuration = configurationOf(run);
      measure.reconfigure(run.configuration);
      tellCamera(run.configuration, stationNews);
    },
  });
  let run: Run | null = null;
  let painter: Painter | null = null;
  let solved: SolvedStation | null = null;
  let solvedFor: SourceInfo["kind"] | null = null;
  let practice: PracticeState | null = null;
  let stationStore: StationStore | null = null;
  let gravity: GravitySense | null = null;
  let sequence = 0;

  const configurationOf = ({ opened: { source, settings } }: Pick<Run, "opened">): Configuration =>
    configurationFor({ source: source.info, demoSettings: settings, solved, practice, rod: store.getState().rod });
  const tellCamera = ({ camera, calibration, settings }: Configuration, stationNews: string): void => {
    store.setState({ calibration, view: camera === null ? null : cameraView(camera, settings), stationNews });
  };
  const configure = (current: Run): void => {
    current.configuration = configurationOf(current);
    sticks.use(current.opened.source.info.kind === "demo" ? null : current.configuration);
    measure.start(current.configuration, "live");
    tellCamera(current.configuration, "");
    giveUpRep({ uplink, repIds, toldBands }, null);
  };
  const reconfigure = (): void => {
    if (run !== null) configure(run);
  };

  const stop = (): void => {
    if (run === null) return;
    run.stopped = true;
    run.opened.source.close();
    run = null;
    giveUpRep({ uplink, repIds, toldBands }, null);
    listenToGravity(false);
    store.setState({ ...withoutSource, screen: "choose" });
  };

  const runUntilOver = (current: Run): Promise<void> =>
    followRun({
      store,
      pose,
      measure,
      now,
      databaseMissing: parts.databaseMissing,
      source: current.opened.source,
      camera: current.opened.camera,
      stopped: () => current.stopped,
      settingSticks: () => store.getState().screen === "station" && stationStore?.getState().picture !== null,
      onPicture: (frame) => painter?.picture(frame),
      onMeasured: (measured, clock, framesPerSecond, painted) => {
        if (painted) painter?.finding(measured.output);
        const { t, swing, hands } = measured.output;
        if (measured.rep !== null && store.getState().calibration !== "suspect") store.setState({ stationNews: "" });
        const isStill = swing.phase === "still";
        void sticks.onMeasured({ t, repEnded: measured.rep !== null, isStill, isAlone: hands === "lost" });
        const { configuration } = current;
        sendMeasured(measured, sequence++, { uplink, reps, repIds, toldBands, clock, configuration, framesPerSecond });
      },
    });

  const remember = (change: Partial<PlaceRecord>): void => {
    const places = withRecord(store.getState().places, change);
    store.setState({ places });
    rememberPlaces(places);
  };
  /** A rod belongs to the place where it was filmed, in its light; a clip's and the demo golfer's to themselves. */
  const setRod = (rod: RodChoice, rodNote: string): void => {
    store.setState({ rod, rodNote, tappingRod: false });
    if (run?.opened.source.info.kind === "camera") remember({ rod });
    reconfigure();
  };

  const listenToGravity = (wanted: boolean): void => {
    gravity?.stop();
    gravity = wanted ? senseGravity() : null;
  };

  const startingSettings = (): StationSettings =>
    run?.configuration.settings ?? defaultStation("7-iron", practice?.golfer.handed ?? "right");

  return {
    async open(what, openSource) {
      stop();
      store.setState({ opening: what, trouble: null });
      let current: Run | null = null;
      try {
        const opened = await openSource();
        const { source, camera } = opened;
        // A clip that nobody looks at yet can wait; a live picture is shown while the model warms up.
        if (source.info.kind !== "camera") await parts.poseSettled;
        // Another source may have been chosen while this one opened.
        stop();
        // A camera on a tripod stays where it is; a clip and the demo golfer have places of their own.
        if (solvedFor !== source.info.kind || source.info.kind !== "camera") solved = null;
        const place = recordOf(store.getState().places);
        const rod: RodChoice = source.info.kind === "camera" ? place.rod : { is: "not-said" };
        store.setState({ rod });
        current = { opened, stopped: false, configuration: configurationOf({ opened }) };
        run = current;
        configure(current);
        store.setState({
          opening: null,
          source: source.info,
          // Only where somebody is going to swing, and only the first time at a place.
          screen: source.info.kind === "camera" && !place.cautionsRead ? "cautions" : "live",
          finding: nothingFound,
          hasTorch: camera?.hasTorch ?? false,
        });
        await runUntilOver(current);
        if (run === current) stop();
      } catch (error) {
        if (current === null || run === current) {
          stop();
          store.setState({ opening: null, trouble: error instanceof Error ? error.message : String(error) });
        }
      }
    },
    stop,
    show(screen) {
      listenToGravity(screen === "station" && run?.opened.camera?.looksAhead === true);
      const needsNoSource = screen === "help";
      store.setState({ screen: run === null && !needsNoSource ? "choose" : screen });
    },
    setPainter(next) {
      painter = next;
    },
    async setTorch(on) {
      await run?.opened.camera?.setTorch(on);
      store.setState({ torchOn: on });
    },
    setStation(next) {
      solved = next;
      solvedFor = run?.opened.source.info.kind ?? null;
      reconfigure();
      // The demo golfer's sticks are nobody's station.
      if (next !== null && solvedFor !== "demo") station.set(next.settings);
    },
    startStation() {
      const info = run?.opened.source.info ?? null;
      const remembered = info?.kind === "demo" ? null : rememberedStation();
      stationStore = createStationStore(solved?.settings ?? remembered?.settings ?? startingSettings());
      const guessed = { placed: "guessed" } as const;
      const ball = remembered?.ball;
      stationStore.setState({
        sticks: remembered?.sticks.map((stick) => ({ stick, movedEnds: [], ...guessed })) ?? [],
        ball: ball === undefined ? null : { at: ball, ...guessed },
        shutter: solved?.shutter ?? remembered?.rollingShutter ?? null,
      });
      return startStationSetUp(stationStore, {
        measure,
        pace: info?.kind === "clip" ? "clip" : "live",
        hints: () => ({ ...(info === null ? {} : { focal: focalHint(info) }), gravity: gravity?.read() ?? null }),
        remember: (file) => {
          if (info?.kind !== "demo") rememberStation(file);
        },
      });
    },
    tellConnected() {
      station.connected();
    },
    practice: () => practice,
    tellPractice(next) {
      const before = practice;
      practice = next;
      const { stage, rodOn, mode, paused, repsInBlock, blockSize, golfer } = next;
      store.setState({ practice: { stage, rodOn, mode, paused, repsInBlock, blockSize, golfer } });
      const same =
        before?.golfer.handed === next.golfer.handed &&
        before.layout.toeLine === next.layout.toeLine &&
        before.layout.heelLine === next.layout.heelLine &&
        before.layout.tolerance === next.layout.tolerance;
      if (!same) reconfigure();
    },
    askForRod(tappingRod) {
      store.setState({ tappingRod, rodNote: "" });
    },
    async tapRod(at) {
      try {
        const colour = await measure.learnRod(at);
        if (colour !== null) setRod({ is: "known", colour }, "");
        else store.setState({ rodNote: noColourThere });
      } catch (error) {
        store.setState({ rodNote: error instanceof Error ? error.message : String(error) });
      }
    },
    setNoRod() {
      setRod({ is: "none" }, "");
    },
    setSpaceClear(spaceClear) {
      store.setState({ spaceClear });
    },
    readCautions() {
      remember({ cautionsRead: true });
      store.setState({ screen: run === null ? "choose" : "live" });
    },
    choosePlace(name) {
      const current = name.trim().slice(0, 40);
      if (current === "") return;
      const places = { ...store.getState().places, current };
      store.setState({ places, spaceClear: false });
      rememberPlaces(places);
      if (run?.opened.source.info.kind === "camera") {
        store.setState({ rod: recordOf(places).rod });
        reconfigure();
      }
    },
  };
}

const noColourThere =
  "Nothing there has a colour of its own: tap the middle of the rod once more, or choose “No coloured rod”.";
