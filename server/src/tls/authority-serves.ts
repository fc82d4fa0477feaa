import { X509Certificate, createPrivateKey } from "node:crypto";
import { daysLater } from "./days-later.ts";
import type { KeyedCertificate } from "./make-authority.ts";

/** Whether a stored authority can still sign a leaf that lives its full time. Anything unreadable is a no. */
export function authorityServes(authority: KeyedCertificate, today: Date): boolean {
  try {
    const certificate = new X509Certificate(authority.certificate);
    return (
      certificate.ca &&
      certificate.checkPrivateKey(createPrivateKey(authority.key)) &&
      certificate.validFromDate <= today &&
      certificate.validToDate > daysLater(today, 400)
    );
  } catch {
    return false;
  }
}
