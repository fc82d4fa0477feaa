import type { CapturedFrame } from "../frames/frame-source.ts";
import { findRepeat, startRepeats } from "../picture/find-repeats.ts";
import { PictureReader } from "../workers/picture-reader.ts";

/** Looks through a clip's frames, in order, for those that only show the frame before them again. */
export class RepeatFinder {
  readonly #reader = new PictureReader();
  #state = startRepeats;

  /** Whether this frame repeats the one before; one that can't be read does not. The image stays the caller's to close. */
  async repeats({ image, rotation }: CapturedFrame): Promise<boolean> {
    try {
      const { state, output } = findRepeat(this.#state, await this.#reader.read(image, rotation));
      this.#state = state;
      return output;
    } catch {
      return false;
    }
  }
}
