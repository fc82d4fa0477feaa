/** Plain colours of the demonstrated scene, sRGB. */
export const demoColours = {
  skin: 0xd2a07c,
  hair: 0x3a2c22,
  shirt: 0x47739f,
  trousers: 0x33383f,
  belt: 0x1c1a18,
  shoe: 0xe4e4e0,
  sole: 0x2a2a2a,
  cap: 0xe9e7e1,
  glove: 0xf1f0ec,
  grip: 0x1b1c1e,
  steel: 0xd7dce1,
  blade: 0xb3b9bf,
  ball: 0xffffff,
  stick: 0xf2ead0,
  lawn: 0x5f9440,
} as const;

/** Colours of a practice rod. */
export const rodColours = { yellow: 0xf5d90a, orange: 0xff6a13, white: 0xf6f6f2, green: 0x5be04a } as const;
export type RodColour = keyof typeof rodColours;
