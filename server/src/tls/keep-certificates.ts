import { X509Certificate } from "node:crypto";
import { join } from "node:path";
import { authorityServes } from "./authority-serves.ts";
import { leafServes } from "./leaf-serves.ts";
import { makeAuthority, type KeyedCertificate } from "./make-authority.ts";
import { makeLeaf } from "./make-leaf.ts";
import { readPrivateFile, writePrivateFile } from "./private-file.ts";
import type { SubjectNames } from "./subject-names.ts";

export interface Certificates {
  /** The authority that devices may trust; its key stays on disk. */
  readonly authority: { readonly pem: string; readonly der: Uint8Array; readonly fingerprint: string };
  readonly leaf: KeyedCertificate;
  /** Which of the two had to be made now; a new authority must be trusted again on every device. */
  readonly made: { readonly authority: boolean; readonly leaf: boolean };
}

/**
 * Reads this installation's certificates from `folder` and makes what is missing, broken, near its end or lacks a name.
 * @throws where the folder cannot be written.
 */
export async function keepCertificates(
  folder: string,
  label: string,
  names: SubjectNames,
  today: Date,
): Promise<Certificates> {
  const kept = await readPair(folder, "authority");
  const authority = kept !== null && authorityServes(kept, today) ? kept : await makeAuthority(label, today);
  if (authority !== kept) await writePair(folder, "authority", authority);

  const keptLeaf = await readPair(folder, "relay");
  const serves = keptLeaf !== null && leafServes(keptLeaf, authority.certificate, names, today);
  const leaf = serves ? keptLeaf : await makeLeaf(authority, names, today);
  if (!serves) await writePair(folder, "relay", leaf);

  const read = new X509Certificate(authority.certificate);
  return {
    authority: { pem: authority.certificate, der: read.raw, fingerprint: read.fingerprint256 },
    leaf,
    made: { authority: authority !== kept, leaf: !serves },
  };
}

async function readPair(folder: string, name: string): Promise<KeyedCertificate | null> {
  const certificate = await readPrivateFile(join(folder, `${name}.crt.pem`));
  const key = await readPrivateFile(join(folder, `${name}.key.pem`));
  return certificate === null || key === null ? null : { certificate, key };
}

/** The key goes first: a kill between the two leaves a pair that does not match, which is made anew. */
async function writePair(folder: string, name: string, pair: KeyedCertificate): Promise<void> {
  await writePrivateFile(join(folder, `${name}.key.pem`), pair.key);
  await writePrivateFile(join(folder, `${name}.crt.pem`), pair.certificate);
}
