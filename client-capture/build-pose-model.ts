import { copyFile, mkdir, readFile, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { createRequire } from "node:module";
import { assembleBundle } from "./pose-model/assemble-bundle.ts";

/**
 * Writes what the pose worker loads at run time to build/capture-public/pose: the model bundles, assembled offline from
 * npm packages, their licence, and the WebAssembly runtime. Nothing comes from the network.
 */
const require = createRequire(import.meta.url);
const models = dirname(require.resolve("@mediapipe/pose/package.json"));
const runtime = join(dirname(require.resolve("@mediapipe/tasks-vision")), "wasm");
const root = join(import.meta.dirname, "..");
const out = join(root, "build/capture-public/pose");

const runtimeFiles = ["vision_wasm_module_internal.js", "vision_wasm_module_internal.wasm"];

const notice = `The pose models in this folder come from the npm package @mediapipe/pose 0.5.1675469404
(Copyright The MediaPipe Authors), licensed under the Apache License, Version 2.0 (see LICENSE).

They are MODIFIED: a TFLITE_METADATA buffer with the input's normalisation was added to each model, and the detector and
one landmark model are stored together in a zip archive named .task. The weights are unchanged.

The files vision_wasm_* come unmodified from the npm package @mediapipe/tasks-vision 0.10.35
(Copyright The MediaPipe Authors), licensed under the Apache License, Version 2.0.
`;

await mkdir(out, { recursive: true });
const detector = await readFile(join(models, "pose_solution_packed_assets.data"));
for (const size of ["lite", "full"]) {
  const landmarks = await readFile(join(models, `pose_landmark_${size}.tflite`));
  await writeFile(join(out, `pose-landmarker-${size}.task`), assembleBundle(detector, landmarks));
}
for (const file of runtimeFiles) await copyFile(join(runtime, file), join(out, file));
await copyFile(join(root, "LICENSE"), join(out, "LICENSE"));
await writeFile(join(out, "NOTICE"), notice);
