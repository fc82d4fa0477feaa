import type { NetworkInterfaceInfo } from "node:os";

/**
 * The addresses under which another device may reach this machine, likeliest first: private IPv4 before the rest, IPv6
 * last. Loopback is left out, and so is link-local IPv6, which no browser accepts in an address line.
 */
export function lanAddresses(
  interfaces: Readonly<Record<string, readonly NetworkInterfaceInfo[] | undefined>>,
): string[] {
  const outside = Object.values(interfaces).flatMap((list) => list?.filter((entry) => !entry.internal) ?? []);
  const usable = outside.filter((entry) => entry.family === "IPv4" || !/^fe[89ab]/i.test(entry.address));
  const rank = new Map(usable.map((entry) => [entry.address, rankOf(entry)]));
  return [...rank].sort((a, b) => a[1] - b[1] || a[0].localeCompare(b[0])).map(([address]) => address);
}

function rankOf(entry: NetworkInterfaceInfo): number {
  if (entry.family === "IPv6") return 4;
  if (entry.address.startsWith("192.168.")) return 0;
  // Container bridges sit in 172.16/12 by default: after the others.
  if (/^172\.(1[6-9]|2\d|3[01])\./.test(entry.address)) return 2;
  return entry.address.startsWith("169.254.") ? 3 : 1;
}
