import { metres } from "@overcue/shared-geometry/units";
import { z } from "zod";
import { screenPlaces } from "../ground-view/draw-list/ground-frame.ts";
import { assumedPixelsPerMillimetre, type ViewingSettings } from "../sizes/viewing-sizes.ts";
import { themeIds } from "../theme/palette.ts";

/** What differs from place to place: how the screen lies there, how far away, how bright it is, whether sound is fine. */
const placeSchema = z.object({
  theme: z.enum(themeIds).default("sun"),
  screenPlace: z.enum(screenPlaces).default("in-front"),
  /** Eye to screen in metres. */
  viewingDistance: z.number().min(0.4).max(8).default(3),
  tones: z.boolean().default(false),
  speech: z.boolean().default(false),
  cautionsRead: z.boolean().default(false),
  /** Set up here before: the checks are shown, the explanations are not. */
  knownPlace: z.boolean().default(false),
});

/** What belongs to this screen and not to the practice; kept in the browser. The place's own part is on top. */
export const displaySettingsSchema = placeSchema.extend({
  placeName: z.string().min(1).max(40).default("Range"),
  otherPlaces: z.record(z.string().max(40), placeSchema).default({}),
  /** Null until a bank card was held against the screen: 96 to the inch are assumed and said to be. */
  pixelsPerMillimetre: z.number().min(1).max(30).nullable().default(null),
  /** How long the answer to a rep stays where no new rep begins. */
  verdictSeconds: z.number().min(4).max(600).default(12),
  /** What the others read beside a change made here; empty for the page's own name. */
  personName: z.string().max(40).default(""),
  letterKeys: z.boolean().default(true),
  /** One button only: the highlight moves by itself and the button chooses. */
  oneButton: z.boolean().default(false),
});

export type PlaceSettings = z.infer<typeof placeSchema>;
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

/** The same screen at another place: what was set there before comes back, what is set here is kept for the next time. */
export function moveToPlace(settings: DisplaySettings, placeName: string): DisplaySettings {
  const name = placeName.trim();
  if (name === "" || name === settings.placeName) return settings;
  const { [name]: there, ...others } = settings.otherPlaces;
  return {
    ...settings,
    ...(there ?? placeSchema.parse({ theme: settings.theme })),
    placeName: name,
    otherPlaces: { ...others, [settings.placeName]: placeSchema.parse(settings) },
  };
}

export const viewingOf = (settings: DisplaySettings): ViewingSettings => ({
  distance: metres(settings.viewingDistance),
  pixelsPerMillimetre: settings.pixelsPerMillimetre ?? assumedPixelsPerMillimetre,
});
