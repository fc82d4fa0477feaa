/** Raised whenever a message changes shape; both sides of every socket must speak the same one. */
export const protocolVersion = 2;

/** What a refused client is told: which side is old and what to do about it. */
export function versionRefusal(clientVersion: number): string | null {
  if (clientVersion === protocolVersion) return null;
  return clientVersion < protocolVersion
    ? `This page is older (protocol ${String(clientVersion)}) than the relay (protocol ${String(protocolVersion)}): reload the page.`
    : `The relay is older (protocol ${String(protocolVersion)}) than this page (protocol ${String(clientVersion)}): stop the relay and run npm start again.`;
}
