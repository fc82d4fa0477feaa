import { createRequire } from "node:module";

/** A matrix of OpenCV's JS build. */
interface Mat {
  readonly data64F: Float64Array;
  delete(): void;
}

/** The part of OpenCV's JS build (@techstark/opencv-js 4.5.2) that the geometry is checked against. It has no projectPoints. */
export interface OpenCv {
  readonly Mat: new () => Mat;
  readonly CV_64FC1: number;
  readonly CV_64FC2: number;
  readonly CV_64FC3: number;
  readonly SOLVEPNP_ITERATIVE: number;
  matFromArray(rows: number, columns: number, type: number, data: readonly number[]): Mat;
  Rodrigues(from: Mat, to: Mat): void;
  perspectiveTransform(from: Mat, to: Mat, matrix: Mat): void;
  findHomography(from: Mat, to: Mat): Mat;
  solvePnP(
    object: Mat,
    image: Mat,
    lens: Mat,
    distortion: Mat,
    turn: Mat,
    shift: Mat,
    useGuess: boolean,
    method: number,
  ): boolean;
  onRuntimeInitialized: (() => void) | undefined;
}

/** Handed over in a box: the build has a `then` of its own that never ends, so it must not be what a promise resolves to. */
export async function loadOpenCv(): Promise<{ readonly cv: OpenCv }> {
  const loaded: unknown = createRequire(import.meta.url)("@techstark/opencv-js");
  const cv = loaded as OpenCv;
  if (!Object.hasOwn(cv, "Mat")) {
    await new Promise<void>((resolve) => {
      cv.onRuntimeInitialized = resolve;
    });
  }
  return { cv };
}
