/** Gives the rep under way one id from its first checkpoint on, and the finished rep the same one. */
export interface RepIds {
  /** The id of the rep under way; made at its first use. */
  current(): string;
  /** The id for a rep that has just ended, or was none; the next one gets a new id. */
  finish(): string;
}

export function makeRepIds(makeId: () => string): RepIds {
  let id: string | null = null;
  const current = (): string => {
    id ??= makeId();
    return id;
  };
  return {
    current,
    finish() {
      const finished = current();
      id = null;
      return finished;
    },
  };
}
