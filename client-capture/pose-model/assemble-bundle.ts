import { zipSync } from "fflate";
import { addMetadata } from "./add-metadata.ts";
import { normalizationMetadata } from "./normalization-metadata.ts";

/** What each of the two models does with its picture before the first layer. */
const normalization = {
  detector: { mean: 127.5, std: 127.5 },
  landmarks: { mean: 0, std: 255 },
} as const;

/** Zip knows no year before 1980; a fixed date makes the same models give the same bytes. */
const fixedDate = new Date("1980-01-02T00:00:00Z");

/** A `.task` bundle: both models, each with its metadata, stored (not deflated) in one zip. */
export function assembleBundle(detector: Uint8Array, landmarks: Uint8Array): Uint8Array {
  const withNormalization = (model: Uint8Array, kind: keyof typeof normalization): Uint8Array =>
    addMetadata(model, "TFLITE_METADATA", normalizationMetadata(normalization[kind]));
  return zipSync(
    {
      "pose_detector.tflite": withNormalization(detector, "detector"),
      "pose_landmarks_detector.tflite": withNormalization(landmarks, "landmarks"),
    },
    { level: 0, mtime: fixedDate },
  );
}
