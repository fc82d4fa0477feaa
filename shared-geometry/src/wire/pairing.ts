import { z } from "zod";

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
