import { open } from "node:fs/promises";
import { join } from "node:path";
import type { Camera } from "@overcue/shared-geometry/camera";
import { usualShow, type DemoShow } from "../demo-golfer/demo-show.ts";
import { openDemoPage } from "../demo-golfer/open-demo-page.ts";
import { playShow } from "../demo-golfer/play-show.ts";
import { y4mHeader } from "../demo-golfer/y4m-header.ts";

export type Stand = DemoShow["camera"];

/** A golfer who stands over the sticks, walks off and comes back, filmed from several places of the phone. */
export interface StationFilm {
  /** A .y4m file for Chromium's fake camera, which plays over and over what was put on last. */
  readonly file: string;
  readonly cameras: ReadonlyMap<Stand, Camera>;
  /** Puts all pictures from there on, or one of them over and over. */
  put(stand: Stand, only?: number): Promise<void>;
}

export const pictureSize = { width: 720, height: 1280 } as const;

/** One picture a second of the show, played at two a second. */
export async function stationFilm(folder: string, stands: readonly Stand[]): Promise<StationFilm> {
  const pictures = new Map<Stand, Buffer[]>();
  const cameras = new Map<Stand, Camera>();
  let filming: Buffer[] = [];
  const demo = await openDemoPage((picture) => {
    filming.push(picture);
  });
  try {
    for (const camera of stands) {
      filming = [];
      const show = { ...usualShow, ...pictureSize, framesPerSecond: 1, camera, walksFirst: true, reps: 0 };
      const played = await playShow(demo.page, show);
      pictures.set(camera, filming);
      cameras.set(camera, played.camera);
    }
  } finally {
    await demo.close();
  }

  const file = join(folder, "station.y4m");
  const count = Math.min(...[...pictures.values()].map(({ length }) => length));
  const put = async (stand: Stand, only?: number): Promise<void> => {
    const from = pictures.get(stand) ?? [];
    const frames = Array.from({ length: count }, (_, index) => from[only ?? index] ?? Buffer.alloc(0));
    const bytes = Buffer.concat([
      Buffer.from(y4mHeader(pictureSize, 2)),
      ...frames.flatMap((frame) => [Buffer.from("FRAME\n"), frame]),
    ]);
    // Written over what is there: Chromium reads on in the file that it has open.
    const out = await open(file, "r+").catch(() => open(file, "w"));
    await out.write(bytes, 0, bytes.length, 0);
    await out.close();
  };
  const [first] = stands;
  if (first !== undefined) await put(first);
  return { file, cameras, put };
}
