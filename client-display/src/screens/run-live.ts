import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { placeReadAt } from "@overcue/shared-geometry/place-read-at";
import type { LiveCheckpoint } from "@overcue/shared-geometry/wire/rep";
import { currentAim } from "../ground-view/current-aim.ts";
import { drawnGripToHead } from "../ground-view/default-layout.ts";
import type { GroundLayers } from "../ground-view/ground-layers.ts";
import { liveOnGround, stalePicture } from "../ground-view/live-on-ground.ts";
import type { ScreenState } from "../store/screen-store.ts";
import { heldWords } from "../words/held-words.ts";
import { decidedWord, keyWordOf, noWord, type KeyWord } from "../words/key-word.ts";
import { noWordYet, steadyWord } from "../words/steady-word.ts";
import type { Parts } from "./parts.ts";
import { wordWriter } from "./word-writer.ts";

export interface LiveParts {
  readonly parts: Pick<Parts, "feed" | "link" | "store">;
  readonly words: HTMLElement;
  readonly layers: () => GroundLayers | null;
}

/** A checkpoint's word stays up this long, so that it can be read after the club has moved on. Milliseconds. */
const checkpointHold = 1500;

const nothing = { shaft: null, place: null };

/** Paints and writes what moves, once a paint of the browser, past React. Answers how to stop. */
export function runLive({ parts, words, layers }: LiveParts): () => void {
  const { feed, link, store } = parts;
  const write = wordWriter(words);
  const aimedAtIn = rememberAim();
  let steady = noWordYet;
  let held: { readonly word: KeyWord; readonly checkpoint: CheckpointId; readonly until: number } | null = null;
  let request = 0;

  const stopListening = store.subscribe((state, before) => {
    const told = state.checkpoints.at(-1);
    if (told === undefined || state.checkpoints === before.checkpoints) return;
    const word = wordAt(told);
    if (word !== null) {
      held = { word, checkpoint: told.reading.checkpoint, until: performance.now() + checkpointHold };
    }
  });

  const step = (time: number): void => {
    request = requestAnimationFrame(step);
    const state = store.getState();
    const estimate = feed.latest();
    const relayNow = link.clock.relayNow();
    const age = estimate === null || relayNow === null ? null : relayNow - estimate.capturedAt;
    const aimedAt = aimedAtIn(state);
    const withheld = heldWords(state.practice, state.peers?.capture ?? 0);
    layers()?.paintLive(withheld === null ? liveOnGround(estimate, age, aimedAt, drawnGripToHead) : nothing);
    if (held !== null && (time > held.until || withheld !== null)) held = null;
    const word = withheld === null ? (held?.word ?? keyWordOf(estimate, age, aimedAt)) : noWord(withheld);
    steady = steadyWord(steady, word, time);
    write({
      word: steady.shown,
      estimate,
      age: age !== null && age > stalePicture ? null : age,
      moment: withheld === null ? (held?.checkpoint ?? aimedAt) : null,
      passed: held !== null,
      withheld: withheld !== null,
      practice: state.practice,
    });
  };
  request = requestAnimationFrame(step);
  return () => {
    cancelAnimationFrame(request);
    stopListening();
  };
}

function wordAt({ reading }: LiveCheckpoint): KeyWord | null {
  const place = placeReadAt(reading.readOuts, reading.checkpoint);
  return place?.defined === true ? decidedWord(place.band) : null;
}

/** The aim looked up once a change, not once a paint. */
function rememberAim(): (state: ScreenState) => CheckpointId | null {
  let practice: ScreenState["practice"] = null;
  let passed: CheckpointId | null = null;
  let held: CheckpointId | null = null;
  let aimedAt: CheckpointId | null = null;
  return (state) => {
    if (state.practice !== practice || state.passed !== passed || state.held !== held) {
      ({ practice, passed, held } = state);
      aimedAt = currentAim(practice?.aims ?? [], { passed, held })?.checkpoint ?? null;
    }
    return aimedAt;
  };
}
