import { z } from "zod";
import { colourCells, type RodColour } from "../shaft/rod-likeness.ts";
import type { RodChoice } from "../checks/rod-check.ts";

/** What this phone remembers of a place. */
export interface PlaceRecord {
  readonly cautionsRead: boolean;
  readonly rod: RodChoice;
}

export interface Places {
  readonly current: string;
  readonly records: Readonly<Record<string, PlaceRecord>>;
}

const key = "overcue.places";
/** The places that the ground screen offers as well. */
export const usualPlaces = ["Range", "Home mat"] as const;

export const newPlace: PlaceRecord = { cautionsRead: false, rod: { is: "not-said" } };
const noPlaces: Places = { current: usualPlaces[0], records: {} };

const likenessSchema = z
  .base64()
  .transform((text): Uint8Array => Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0)))
  .refine((bytes) => bytes.length === colourCells * colourCells);

const rodSchema = z.discriminatedUnion("is", [
  z.object({ is: z.literal("not-said") }),
  z.object({ is: z.literal("none") }),
  z.object({
    is: z.literal("known"),
    colour: z.object({ likeness: likenessSchema, blue: z.number(), red: z.number() }),
  }),
]);

const placesSchema = z.object({
  current: z.string().min(1).max(40),
  records: z.record(z.string().max(40), z.object({ cautionsRead: z.boolean(), rod: rodSchema })),
});

export const recordOf = ({ current, records }: Places): PlaceRecord => records[current] ?? newPlace;

export const withRecord = (places: Places, change: Partial<PlaceRecord>): Places => ({
  ...places,
  records: { ...places.records, [places.current]: { ...recordOf(places), ...change } },
});

/** What the browser kept; no places yet where it kept nothing, or nothing that can be read. */
export function rememberedPlaces(): Places {
  try {
    const kept = placesSchema.safeParse(JSON.parse(localStorage.getItem(key) ?? "null"));
    return kept.success ? kept.data : noPlaces;
  } catch {
    return noPlaces;
  }
}

export function rememberPlaces({ current, records }: Places): void {
  const plain = Object.fromEntries(
    Object.entries(records).map(([name, { cautionsRead, rod }]) => [name, { cautionsRead, rod: plainRod(rod) }]),
  );
  try {
    localStorage.setItem(key, JSON.stringify({ current, records: plain }));
  } catch {
    // A private window: everything is asked anew next time.
  }
}

/** The name under which something of the current place is kept; the first usual place has the plain one. */
export function placeKey(name: string): string {
  const { current } = rememberedPlaces();
  return current === usualPlaces[0] ? name : `${name}.${current}`;
}

const plainRod = (rod: RodChoice) => (rod.is === "known" ? { is: rod.is, colour: plainColour(rod.colour) } : rod);

const plainColour = ({ likeness, blue, red }: RodColour) => ({
  likeness: btoa(String.fromCharCode(...likeness)),
  blue,
  red,
});
