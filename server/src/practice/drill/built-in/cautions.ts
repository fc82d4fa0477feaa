/** Said with every drill: about the place. */
export const spaceCautions: string[] = [
  "Clear space all round and overhead, nobody near.",
  "Stop on pain. Keep to the rules of the range.",
];

/** Said with every drill that may use the rod: about the rod, then about the place. */
export const rodCautions: string[] = [
  "A rod beyond the grip can strike ribs, arm or face: slow rehearsals only, no full follow-through with it.",
  "Never hit a ball with the rod on.",
  ...spaceCautions,
];
