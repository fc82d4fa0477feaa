import { daysLater } from "./days-later.ts";
import { keyAlgorithm, makeKeyPair, privateKeyFromPem, privateKeyToPem } from "./key-pair.ts";
import type { KeyedCertificate } from "./make-authority.ts";
import type { SubjectNames } from "./subject-names.ts";
import {
  AuthorityKeyIdentifierExtension,
  BasicConstraintsExtension,
  ExtendedKeyUsage,
  ExtendedKeyUsageExtension,
  KeyUsageFlags,
  KeyUsagesExtension,
  SubjectAlternativeNameExtension,
  SubjectKeyIdentifierExtension,
  X509Certificate,
  X509CertificateGenerator,
} from "./x509.ts";

/** Browsers refuse a leaf that lives longer than 398 days; a day before today allows for a phone's slow clock. */
const leafDays = 395;

/** The certificate that the relay shows, signed by this installation's authority for exactly `names`. */
export async function makeLeaf(
  authority: KeyedCertificate,
  names: SubjectNames,
  today: Date,
): Promise<KeyedCertificate> {
  const issuer = new X509Certificate(authority.certificate);
  const pair = await makeKeyPair();
  const certificate = await X509CertificateGenerator.create({
    subject: [{ O: ["Overcue"] }, { CN: ["Overcue relay"] }],
    issuer: issuer.subjectName,
    notBefore: daysLater(today, -1),
    notAfter: daysLater(today, leafDays),
    signingAlgorithm: keyAlgorithm,
    publicKey: pair.publicKey,
    signingKey: await privateKeyFromPem(authority.key),
    extensions: [
      new BasicConstraintsExtension(false, undefined, true),
      new KeyUsagesExtension(KeyUsageFlags.digitalSignature, true),
      new ExtendedKeyUsageExtension([ExtendedKeyUsage.serverAuth]),
      new SubjectAlternativeNameExtension([
        ...names.dns.map((value) => ({ type: "dns" as const, value })),
        ...names.ip.map((value) => ({ type: "ip" as const, value })),
      ]),
      await SubjectKeyIdentifierExtension.create(pair.publicKey),
      await AuthorityKeyIdentifierExtension.create(issuer.publicKey),
    ],
  });
  return { certificate: certificate.toString("pem"), key: await privateKeyToPem(pair.privateKey) };
}
