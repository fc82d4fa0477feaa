/** Every tuning number of the relay, with its unit and which way to turn it. */
export const limits = {
  /**
   * Bytes of one message. A rep with 2000 points of trajectory is about 300 kB; socket.io's own default of 1 MB is silent,
   * so the number stands here. Larger only if reps grow: a sender over it is cut off.
   */
  messageBytes: 1_000_000,
  /** Milliseconds between two sentences about dropped messages. Lower is chattier. */
  troubleEveryMs: 5_000,
  /** Milliseconds without a sign of life until a page counts as gone: `pingEveryMs + pingPatienceMs` at the most. */
  pingEveryMs: 5_000,
  pingPatienceMs: 10_000,
  /** Reps remembered as already told to the screens, so that a resent one is not told twice. */
  toldReps: 1_000,
} as const;
