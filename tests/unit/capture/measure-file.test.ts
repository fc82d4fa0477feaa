import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { measureFile } from "../../../client-capture/measure/measure-file.ts";

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "overcue-measure-"));
  await writeFile(join(folder, "clip.mp4"), "no clip, but a file with something in it");
  await writeFile(join(folder, "station.json"), "{ sticks: }");
});
afterAll(() => rm(folder, { recursive: true, force: true }));

it.each([
  ["no clip", "nowhere.mp4", "station.json", /There is no file .*nowhere\.mp4: check the path\./],
  [
    "no station file",
    "clip.mp4",
    "nowhere.json",
    /There is no station file .*nowhere\.json that can be read: check the path\./,
  ],
  [
    "a station file that is not JSON",
    "clip.mp4",
    "station.json",
    /station\.json is not JSON: docs\/station-file\.md shows/,
  ],
])(
  "npm run measure says in a sentence, before any browser is started, that there is %s",
  async (_, clip, station, sentence) => {
    await expect(measureFile(join(folder, clip), join(folder, station), () => undefined)).rejects.toThrow(sentence);
  },
);
