/**
 * The model steadies its landmarks by the time that passes, by a filter whose cut-off rises with speed (Casiez, Roussel and Vogel 2012): while a body rests so strongly that what begins to move is
 * shown late. Told that this many times as much time passes it steadies less. DEVELOPERS.md has what that changed.
 */
const quickened = 5;
/** A longer step than this is another clip or a pause, milliseconds. */
const longestStep = 10_000;

/** Gives the pose model its times, which must rise strictly: the model dies of an equal one, and a clip that is opened anew starts at 0 again. */
export class ModelClock {
  #given = 0;
  #told = 0;

  /** The model's time for a picture of the time `t`, milliseconds. */
  at(t: number): number {
    const step = t - this.#given;
    this.#given = t;
    this.#told += quickened * (step > 0 && step < longestStep ? step : 1);
    return this.#told;
  }
}
