import type { Peers } from "@overcue/shared-geometry/wire/hello";

/** Who is connected, in a sentence. */
export function peersSentence(peers: Peers | null): string {
  if (peers === null) return "Connecting to the relay…";
  const phone =
    peers.capture === 0
      ? "No phone yet"
      : peers.capture === 1
        ? "Phone connected"
        : `${peers.capture} phones connected`;
  const coach = peers.coach === 0 ? "" : peers.coach === 1 ? ", one coach" : `, ${peers.coach} coaches`;
  const screens = peers.display > 1 ? `, ${peers.display} ground screens` : "";
  return `${phone}${coach}${screens}.`;
}
