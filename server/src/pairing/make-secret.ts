import { Buffer } from "node:buffer";

/** A pairing secret: 256 random bits in base64url, 43 characters. */
export function makeSecret(randomBytes: (length: number) => Uint8Array): string {
  return Buffer.from(randomBytes(32)).toString("base64url");
}
