import { daysLater } from "./days-later.ts";
import { keyAlgorithm, makeKeyPair, privateKeyToPem } from "./key-pair.ts";
import { nameConstraints } from "./name-constraints.ts";
import {
  BasicConstraintsExtension,
  KeyUsageFlags,
  KeyUsagesExtension,
  SubjectKeyIdentifierExtension,
  X509CertificateGenerator,
} from "./x509.ts";

/** A certificate with its private key, both PEM. */
export interface KeyedCertificate {
  readonly certificate: string;
  readonly key: string;
}

const authorityDays = 3650;
/** "home.arpa" is the home network's own domain (RFC 8375), "local" is multicast DNS (RFC 6762). */
const localNames = ["localhost", "local", "home.arpa"];

/**
 * An authority for this installation alone. It may sign leaves only (path length 0), for local names only, and its key
 * never leaves the data folder. `label` tells two laptops apart in a phone's list of certificates.
 */
export async function makeAuthority(label: string, today: Date): Promise<KeyedCertificate> {
  const pair = await makeKeyPair();
  const certificate = await X509CertificateGenerator.createSelfSigned({
    name: [{ O: ["Overcue"] }, { CN: [`Overcue on ${label}`] }],
    notBefore: daysLater(today, -1),
    notAfter: daysLater(today, authorityDays),
    signingAlgorithm: keyAlgorithm,
    keys: pair,
    extensions: [
      new BasicConstraintsExtension(true, 0, true),
      new KeyUsagesExtension(KeyUsageFlags.keyCertSign | KeyUsageFlags.cRLSign, true),
      await SubjectKeyIdentifierExtension.create(pair.publicKey),
      nameConstraints(localNames),
    ],
  });
  return { certificate: certificate.toString("pem"), key: await privateKeyToPem(pair.privateKey) };
}
