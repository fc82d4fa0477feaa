/** How far the picture is moved by the phone's sway at a moment, pixels: two slow swings that do not keep step, and a tremble. */
export function swayAt(tMs: number, pixels: number, seed: number): readonly [number, number] {
  if (pixels === 0) return [0, 0];
  const turn = (hertz: number, start: number): number => Math.sin((2 * Math.PI * hertz * tMs) / 1000 + start + seed);
  return [
    pixels * (0.62 * turn(0.41, 0) + 0.28 * turn(1.3, 2) + 0.08 * turn(7.7, 1)),
    pixels * 0.6 * (0.6 * turn(0.53, 3) + 0.3 * turn(1.7, 5) + 0.08 * turn(8.9, 4)),
  ];
}
