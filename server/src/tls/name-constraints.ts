import { Buffer } from "node:buffer";
import { Extension } from "./x509.ts";

const nameConstraintsId = "2.5.29.30";
const sequence = 0x30;
const permittedSubtrees = 0xa0;
const dnsName = 0x82;

/**
 * Limits an authority to names of the local network, so that a stolen key cannot speak for a web site (RFC 5280,
 * section 4.2.1.10). Addresses stay free: they change from place to place, and no site is known by one.
 * Not marked critical: a device that does not know the extension then still accepts the authority.
 */
export function nameConstraints(dnsSubtrees: readonly string[]): Extension {
  const subtrees = dnsSubtrees.map((name) => encode(sequence, encode(dnsName, Buffer.from(name, "ascii"))));
  const value = encode(sequence, encode(permittedSubtrees, Buffer.concat(subtrees)));
  return new Extension(nameConstraintsId, false, value);
}

/** DER with a one-byte length: enough for the few short names here. @throws RangeError over 127 bytes. */
function encode(tag: number, content: Uint8Array): Buffer<ArrayBuffer> {
  if (content.length > 127) throw new RangeError("Name constraints over 127 bytes need long-form lengths.");
  return Buffer.from([tag, content.length, ...content]);
}
