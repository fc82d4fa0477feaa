import type { Channel, KeyPose } from "./key-pose.ts";

/** The posture `share` of the way from one to the other, channel by channel. */
export function blendPoses(from: KeyPose, to: KeyPose, share: number): KeyPose {
  const channels = Object.keys(from) as Channel[];
  return Object.fromEntries(
    channels.map((channel) => [channel, from[channel] + share * (to[channel] - from[channel])]),
  ) as unknown as KeyPose;
}
