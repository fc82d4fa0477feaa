import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { drawnGripToHead } from "../ground-view/default-layout.ts";
import type { GroundLayers } from "../ground-view/ground-layers.ts";
import { liveOnGround, stalePicture } from "../ground-view/live-on-ground.ts";
import { keyWordOf } from "../words/key-word.ts";
import { noWordYet, steadyWord } from "../words/steady-word.ts";
import type { Parts } from "./parts.ts";
import { wordWriter } from "./word-writer.ts";

export interface LiveParts {
  readonly parts: Parts;
  readonly words: HTMLElement;
  readonly layers: () => GroundLayers | null;
  readonly aimedAt: CheckpointId | null;
}

/** Paints and writes what moves, once a paint of the browser, past React. Answers how to stop. */
export function runLive({ parts, words, layers, aimedAt }: LiveParts): () => void {
  const { feed, link } = parts;
  const write = wordWriter(words);
  let steady = noWordYet;
  let request = 0;
  const step = (time: number): void => {
    request = requestAnimationFrame(step);
    const estimate = feed.latest();
    const relayNow = link.clock.relayNow();
    const age = estimate === null || relayNow === null ? null : relayNow - estimate.capturedAt;
    layers()?.paintLive(liveOnGround(estimate, age, aimedAt, drawnGripToHead));
    steady = steadyWord(steady, keyWordOf(estimate, age, aimedAt), time);
    write({ word: steady.shown, estimate, age: age !== null && age > stalePicture ? null : age, aimedAt });
  };
  request = requestAnimationFrame(step);
  return () => {
    cancelAnimationFrame(request);
  };
}
