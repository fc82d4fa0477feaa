import { X509Certificate, createPrivateKey } from "node:crypto";
import { daysLater } from "./days-later.ts";
import type { KeyedCertificate } from "./make-authority.ts";
import type { SubjectNames } from "./subject-names.ts";

/** A leaf with fewer days than this is renewed, so that a phone left open over a season never sees it end. */
export const renewWhenDaysLeft = 30;

/**
 * Whether a stored leaf can still be shown: signed by this authority, with its own key, covering every name, begun and
 * not near its end. Anything unreadable is a no.
 */
export function leafServes(leaf: KeyedCertificate, authority: string, names: SubjectNames, today: Date): boolean {
  try {
    const certificate = new X509Certificate(leaf.certificate);
    const issuer = new X509Certificate(authority);
    return (
      certificate.checkIssued(issuer) &&
      certificate.verify(issuer.publicKey) &&
      certificate.checkPrivateKey(createPrivateKey(leaf.key)) &&
      names.dns.every((name) => certificate.checkHost(name) !== undefined) &&
      names.ip.every((address) => certificate.checkIP(address) !== undefined) &&
      certificate.validFromDate <= today &&
      certificate.validToDate > daysLater(today, renewWhenDaysLeft)
    );
  } catch {
    return false;
  }
}
