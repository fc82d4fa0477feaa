/** How the phone turns light into a picture. */
export interface SensorSettings {
  /** Gain on linear light before the tone curve; 1 puts a white sheet in full light just under white. */
  readonly gain: number;
  /** Share of light spread evenly over the picture by glare on the lens (against the sun: 0.03-0.1). */
  readonly veil: number;
  /** Standard deviation of the lens's blur in pixels. */
  readonly blur: number;
  /** Strength and reach of the sharpening that phones add: the halo along edges. */
  readonly sharpen: number;
  /** Noise at mid grey in grey levels of 255, and how much the noise filter smears it over neighbours (0-0.3). */
  readonly grain: number;
  readonly grainSpread: number;
  /** JPEG quality 1-100 of the 8x8 quantisation; 0 for none. */
  readonly quality: number;
  /** Lamps flickering at twice the mains' frequency (hertz, 0: none), and how deep, 0-1. */
  readonly mains: 0 | 50 | 60;
  readonly flicker: number;
}
