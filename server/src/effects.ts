/** What the relay takes from the machine around it. Stand-ins for tests live in tests/relay/fakes.ts. */
export interface Effects {
  /** The relay's clock in milliseconds since the epoch: never steps back while the relay runs. */
  relayTime(): number;
  /** The calendar's time, for certificates. */
  today(): Date;
  randomBytes(length: number): Uint8Array;
  /** Addresses under which other devices may reach this machine. */
  addresses(): readonly string[];
  hostName(): string;
}
