import { isIP } from "node:net";

/** The names a leaf certificate carries. Sorted, so that two lists of the same machine are equal. */
export interface SubjectNames {
  readonly dns: readonly string[];
  readonly ip: readonly string[];
}

/**
 * Every name under which a browser may reach the relay: its addresses, the machine itself and its multicast DNS name.
 * A host name that is no valid DNS label ("Anna's laptop") is left out; the addresses remain.
 */
export function subjectNames(addresses: readonly string[], hostName: string): SubjectNames {
  const label = hostName.split(".")[0]?.toLowerCase() ?? "";
  const dns = new Set(["localhost"]);
  if (/^[a-z0-9]([a-z0-9-]{0,61}[a-z0-9])?$/.test(label) && label !== "localhost") dns.add(`${label}.local`);
  const ip = new Set(["127.0.0.1", "::1", ...addresses.filter((address) => isIP(address) !== 0)]);
  return { dns: [...dns].sort(), ip: [...ip].sort() };
}
