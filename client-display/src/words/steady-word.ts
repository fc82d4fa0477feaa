import { sameWord, type KeyWord } from "./key-word.ts";

/**
 * Keeps the big word from flickering without ever leaving a wrong one up: a word that is no longer true goes at once, a
 * new one comes only after it has stood for `settle` and no sooner than `apart` after the last one came. With 400 ms
 * apart the word changes at most 2.5 times a second, under the three flashes of WCAG 2.2, 2.3.1.
 */
export const settle = 100;
export const apart = 400;

export interface SteadyWord {
  /** What is on the screen; null while nothing can be said. */
  readonly shown: KeyWord | null;
  readonly shownAt: number;
  readonly candidate: KeyWord | null;
  readonly candidateSince: number;
}

export const noWordYet: SteadyWord = {
  shown: null,
  shownAt: -Infinity,
  candidate: null,
  candidateSince: -Infinity,
};

/** The next state at time `now` (milliseconds, never falling) with `word` true at this moment. */
export function steadyWord(state: SteadyWord, word: KeyWord, now: number): SteadyWord {
  if (state.shown !== null && sameWord(state.shown, word)) {
    return { ...state, candidate: null, candidateSince: -Infinity };
  }
  const known = state.candidate !== null && sameWord(state.candidate, word);
  const candidateSince = known ? state.candidateSince : now;
  if (now - candidateSince >= settle && now - state.shownAt >= apart) {
    return { shown: word, shownAt: now, candidate: null, candidateSince: -Infinity };
  }
  return { shown: null, shownAt: state.shownAt, candidate: word, candidateSince };
}
