import { webcrypto } from "node:crypto";
import { PemConverter } from "./x509.ts";

/** P-256 with SHA-256: the one choice that iOS, Android and every desktop browser accept. */
export const keyAlgorithm = { name: "ECDSA", namedCurve: "P-256", hash: "SHA-256" };

export async function makeKeyPair(): Promise<webcrypto.CryptoKeyPair> {
  return webcrypto.subtle.generateKey(keyAlgorithm, true, ["sign", "verify"]);
}

export async function privateKeyToPem(key: webcrypto.CryptoKey): Promise<string> {
  return PemConverter.encode(await webcrypto.subtle.exportKey("pkcs8", key), PemConverter.PrivateKeyTag);
}

/** @throws where the text holds no P-256 key. */
export async function privateKeyFromPem(pem: string): Promise<webcrypto.CryptoKey> {
  return webcrypto.subtle.importKey("pkcs8", PemConverter.decodeFirst(pem), keyAlgorithm, false, ["sign"]);
}
