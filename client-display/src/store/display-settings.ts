import { metres } from "@overcue/shared-geometry/units";
import { z } from "zod";
import { screenPlaces } from "../ground-view/draw-list/ground-frame.ts";
import { assumedPixelsPerMillimetre, type ViewingSettings } from "../sizes/viewing-sizes.ts";
import { themeIds } from "../theme/palette.ts";

/** What belongs to this screen and not to the practice; kept in the browser. */
export const displaySettingsSchema = z.object({
  theme: z.enum(themeIds).default("sun"),
  screenPlace: z.enum(screenPlaces).default("in-front"),
  /** Eye to screen in metres. */
  viewingDistance: z.number().min(0.4).max(8).default(3),
  /** Null until a bank card was held against the screen: 96 to the inch are assumed and said to be. */
  pixelsPerMillimetre: z.number().min(1).max(30).nullable().default(null),
});

export type DisplaySettings = z.infer<typeof displaySettingsSchema>;

export const defaultDisplaySettings: DisplaySettings = displaySettingsSchema.parse({});

/** Stored text to settings; anything that is not whole and sound gives the defaults. */
export function readDisplaySettings(stored: string | null): DisplaySettings {
  if (stored === null) return defaultDisplaySettings;
  try {
    const parsed = displaySettingsSchema.safeParse(JSON.parse(stored));
    return parsed.success ? parsed.data : defaultDisplaySettings;
  } catch {
    return defaultDisplaySettings;
  }
}

export const viewingOf = (settings: DisplaySettings): ViewingSettings => ({
  distance: metres(settings.viewingDistance),
  pixelsPerMillimetre: settings.pixelsPerMillimetre ?? assumedPixelsPerMillimetre,
});
