import { secretFromFragment } from "@overcue/shared-geometry/wire/pairing";

const key = "overcue.pairing";

/**
 * The secret that this phone was paired with: the address's, else the last one that it had. A page opened from the home screen has no
 * fragment; the secret lives as long as the relay's run, and a later run refuses it with a sentence.
 */
export function pairingSecret(fragment: string): string | null {
  const scanned = secretFromFragment(fragment);
  try {
    if (scanned === null) return localStorage.getItem(key);
    localStorage.setItem(key, scanned);
  } catch {
    // A private window: the code is scanned each time.
  }
  return scanned;
}
