import type { Camera } from "@overcue/shared-geometry/camera";
import { milliseconds } from "@overcue/shared-geometry/units";
import { ballLiesAt } from "../../demo-motion/ball-lies-at.ts";
import type { DemoPlan } from "../../demo-motion/demo-golfer-settings.ts";
import { demoMotion, type DemoMotion } from "../../demo-motion/demo-motion.ts";
import type { DemoCheckpoint, DemoTruth } from "../../demo-motion/demo-truth.ts";
import { truthAt } from "../../demo-motion/truth-at.ts";
import type { CapturedFrame, FrameSource, SourceInfo } from "../frame-source.ts";
import type { RodColour } from "./demo-colours.ts";
import { DemoScene } from "./demo-scene.ts";
import { movingWindow } from "./picture-window.ts";

/** The source's clock for a live show. */
export interface DemoPace {
  /** Milliseconds. */
  now(): number;
  wait(ms: number): Promise<void>;
}

export interface DemoGolferOptions {
  readonly camera: Camera;
  readonly framesPerSecond: number;
  /** Live: pictures come when they are due and late ones are skipped. Null: as fast as they are asked for, none skipped. */
  readonly pace: DemoPace | null;
  readonly rodColour: RodColour;
  /** In [0, 1): grows grass and trees. */
  readonly random: () => number;
  /** What to show next, asked at the start and whenever a plan has been shown; null ends the show. All of one golfer. */
  readonly nextPlan: () => DemoPlan | null;
}

/** A plan on the stage, and how it fits into what was shown before. */
interface Act {
  readonly motion: DemoMotion;
  /** Seconds of show before it. */
  readonly from: number;
  readonly repsBefore: number;
}

/**
 * The demonstrated golfer as a source of pictures, with the truth beside each. The pictures go the way of any camera's.
 * @throws Error with a sentence where this browser cannot draw it.
 */
export class DemoGolferSource implements FrameSource {
  readonly info: SourceInfo;
  readonly #options: DemoGolferOptions;
  readonly #scene: DemoScene;
  readonly #checkpoints: DemoCheckpoint[] = [];
  #act: Act | null;
  #index = -1;
  #startedAt: number | null = null;

  constructor(options: DemoGolferOptions) {
    this.#options = options;
    const { camera, framesPerSecond, rodColour, random } = options;
    if (!(framesPerSecond > 0)) throw new RangeError("DemoGolferSource: frames a second must be more than 0");
    const plan = options.nextPlan();
    if (!plan) throw new RangeError("DemoGolferSource: needs a first plan");
    const motion = demoMotion(plan);
    this.#scene = new DemoScene({
      golfer: plan.golfer,
      camera,
      rodColour,
      random,
      window: movingWindow(motion, camera),
    });
    this.#act = { motion, from: 0, repsBefore: 0 };
    this.info = {
      kind: "demo",
      width: camera.width,
      height: camera.height,
      nominalFramesPerSecond: framesPerSecond,
      zoom: 1,
      knownCamera: camera,
    };
  }

  /** The checkpoints of every plan begun so far, on the capture clock. */
  get checkpoints(): readonly DemoCheckpoint[] {
    return this.#checkpoints;
  }

  /** A picture of the place before the golfer steps onto it: the sticks lie there, nothing else. Whoever receives it closes it. */
  async emptyPlace(): Promise<ImageBitmap> {
    this.#scene.drawEmpty();
    return await createImageBitmap(this.#scene.canvas);
  }

  async next(): Promise<CapturedFrame | null> {
    if (this.#startedAt === null) {
      this.#startedAt = this.#options.pace?.now() ?? 0;
      if (this.#act) this.#enter(this.#act);
    }
    await this.#waitForNext();
    const shown = this.#index / this.#options.framesPerSecond;
    const act = this.#actAt(shown);
    if (!act) return null;
    const t = shown - act.from;
    this.#scene.draw(act.motion.at(t), ballLiesAt(act.motion, t));
    return {
      image: await createImageBitmap(this.#scene.canvas),
      rotation: 0,
      captureTime: milliseconds(this.#startedAt + shown * 1000),
      index: this.#index,
      truth: this.#truth(act, t),
    };
  }

  close(): void {
    this.#act = null;
    this.#scene.close();
  }

  /** Moves on to the next picture that is not over yet, and to its time. */
  async #waitForNext(): Promise<void> {
    const { pace, framesPerSecond } = this.#options;
    this.#index++;
    if (!pace) return;
    const passed = pace.now() - (this.#startedAt ?? 0);
    this.#index = Math.max(this.#index, Math.floor((passed * framesPerSecond) / 1000));
    const early = (this.#index * 1000) / framesPerSecond - passed;
    if (early > 0) await pace.wait(early);
  }

  #actAt(shown: number): Act | null {
    while (this.#act && shown - this.#act.from >= this.#act.motion.duration) {
      const { motion, from, repsBefore } = this.#act;
      const plan = this.#options.nextPlan();
      this.#act = plan && {
        motion: demoMotion(plan),
        from: from + motion.duration,
        repsBefore: repsBefore + motion.reps.length,
      };
      if (!this.#act) return null;
      this.#scene.makeRoom(movingWindow(this.#act.motion, this.#options.camera));
      this.#enter(this.#act);
    }
    return this.#act;
  }

  #enter({ motion, from, repsBefore }: Act): void {
    const offset = (this.#startedAt ?? 0) + from * 1000;
    for (const { rep, checkpoint, t } of motion.checkpoints)
      this.#checkpoints.push({ rep: rep + repsBefore, checkpoint, t: milliseconds(t + offset) });
  }

  #truth(act: Act, t: number): DemoTruth | null {
    const truth = truthAt(act.motion, this.#options.camera, t);
    return (
      truth && {
        ...truth,
        t: milliseconds((this.#startedAt ?? 0) + (act.from + t) * 1000),
        rep: truth.rep === null ? null : truth.rep + act.repsBefore,
      }
    );
  }
}
