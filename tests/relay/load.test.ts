import { describe, expect, it } from "vitest";
import { loadFaults } from "../load/print-load.ts";
import { killRelays } from "../load/relay-kills.ts";
import { runRelayLoad } from "../load/relay-load.ts";

/** Short forms of `npm run load:relay` and `npm run soak:relay`: what is lost counts here, how fast it goes does not. */
describe("under load", { timeout: 240_000 }, () => {
  it("R1 R6 cut connections lose no rep, and no estimate comes back to the phone", async () => {
    const result = await runRelayLoad({
      seconds: 4,
      estimatesPerSecond: 60,
      displays: 4,
      coaches: 2,
      secondsPerRep: 0.2,
      secondsPerCut: 0.9,
    });
    expect(loadFaults(result)).toEqual([]);
    expect(result.relay.count).toBeGreaterThan(0);
    expect(result.bare.count).toBeGreaterThan(0);
  });

  it("R6 a relay that is killed between a rep and its acknowledgement has every rep that it acknowledged", async () => {
    const result = await killRelays([0, 20], 5);
    expect(result).toMatchObject({ kills: 2, repsSent: 10, acknowledgedButLost: 0 });
    expect(result).toMatchObject({ missingAtTheEnd: 0, doubledAtTheEnd: 0 });
  });
});
