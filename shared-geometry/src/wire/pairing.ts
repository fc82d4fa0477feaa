import { z } from "zod";
import type { Role } from "./hello.ts";

/**
 * Where the other pages are opened from another device on the same network; told to ground screens as they connect.
 * `phone` and `coach` are complete addresses with the secret in the fragment, `trust` is the plain page that offers the
 * certificate. Told again where the network address changes, so that the screen draws its codes anew.
 */
export const pairingSchema = z.object({
  phone: z.url().max(500),
  coach: z.url().max(500),
  trust: z.url().max(500).nullable(),
});

export type Pairing = z.infer<typeof pairingSchema>;

/** The page that each role opens on the relay. */
export const pagePaths: Readonly<Record<Role, string>> = { capture: "/phone/", display: "/ground/", coach: "/coach/" };

/** The address that a QR code holds. The secret sits in the fragment, which browsers never send anywhere. */
export function pairingAddress(origin: string, role: Role, secret: string): string {
  return `${origin}${pagePaths[role]}#pair=${secret}`;
}

/** The secret in a page's fragment (`location.hash`), or null where there is none. */
export function secretFromFragment(fragment: string): string | null {
  return /(?:^#?|&)pair=([A-Za-z0-9_-]+)/.exec(fragment)?.[1] ?? null;
}
