const steps = 2048;
const whitest = 4;

/**
 * From linear light to the 0-255 scale of the picture, before sharpening and noise: the curve of IEC 61966-2-1 with a soft
 * shoulder, so that highlights run out gently as a phone's do.
 */
export type ToneCurve = Float32Array;

export function makeToneCurve(): ToneCurve {
  return Float32Array.from({ length: steps + 2 }, (_, step) => {
    const light = (step / steps) ** 2 * whitest;
    const soft = light < 0.6 ? light : 0.6 + 0.45 * (1 - Math.exp(-(light - 0.6) / 0.45));
    const coded = soft <= 0.0031308 ? soft * 12.92 : 1.055 * Math.min(1, soft) ** (1 / 2.4) - 0.055;
    return 255 * coded;
  });
}

export function toneOf(curve: ToneCurve, light: number): number {
  const place = Math.min(steps, Math.sqrt(Math.max(0, light) / whitest) * steps);
  const below = Math.floor(place);
  const low = curve[below] ?? 0;
  return low + ((curve[below + 1] ?? 0) - low) * (place - below);
}
