import { ground } from "./icon-shapes.ts";

/** Where the phone's page lives on the relay. */
export const base = "/phone/";

/** The files of the mark, beside the manifest, and the sizes that phones ask for. */
export const iconFiles = [
  { name: "icon-192.png", size: 192 },
  { name: "icon-512.png", size: 512 },
  { name: "apple-touch-icon.png", size: 180 },
] as const;

/** The web app manifest (W3C) of the phone's page. */
export function manifest(): string {
  const png = (size: 192 | 512, purpose: "any" | "maskable") => ({
    src: `${base}icon-${size}.png`,
    sizes: `${size}x${size}`,
    type: "image/png",
    purpose,
  });
  return JSON.stringify(
    {
      id: base,
      name: "Overcue phone",
      short_name: "Overcue",
      description: "Finds the club in this phone's pictures and tells the ground screen where it points.",
      start_url: base,
      scope: base,
      display: "standalone",
      orientation: "any",
      background_color: ground,
      theme_color: ground,
      icons: [
        { src: `${base}icon.svg`, sizes: "any", type: "image/svg+xml", purpose: "any" },
        png(192, "any"),
        png(512, "any"),
        png(512, "maskable"),
      ],
    },
    null,
    2,
  );
}
