import { parseArgs } from "node:util";
import { loadFaults, loadTable } from "./print-load.ts";
import { killRelays } from "./relay-kills.ts";
import { runRelayLoad } from "./relay-load.ts";

/** `npm run load:relay -- [--seconds 60] [--kills 20]`: latency under load, then kills with reps on their way. */
const { values } = parseArgs({
  options: { seconds: { type: "string", default: "60" }, kills: { type: "string", default: "20" } },
});
const seconds = Math.min(600, Number(values.seconds));
const kills = Math.min(200, Number(values.kills));

const load = await runRelayLoad({
  seconds,
  estimatesPerSecond: 60,
  displays: 4,
  coaches: 2,
  secondsPerRep: 0.5,
  secondsPerCut: 5,
});
console.log(`60 estimates/s from one phone to 4 ground screens and 2 coaches for ${seconds} s, loopback\n`);
console.log(loadTable(load));
console.log(`\nestimates delivered: ${(100 * load.deliveredShare).toFixed(2)} % of ${load.estimatesSent * 6}`);
console.log(`connection cuts: ${load.cuts}; reps sent ${load.repsSent}, acknowledged ${load.repsAcknowledged}`);
console.log(`reps missing from the book: ${load.repsMissing} (goal 0), doubled: ${load.repsDoubled} (goal 0)`);
console.log(`estimates echoed to the phone: ${load.echoed} (goal 0)`);

// Spread evenly over the time that a handful of reps takes from the phone to the disk, and beyond it.
const delays = Array.from({ length: kills }, (_, index) => index * 10);
const killed = await killRelays(delays, 5);
console.log(`\n${killed.kills} kills (SIGKILL) 0 to ${10 * (kills - 1)} ms after 5 reps were handed over`);
console.log(`reps sent ${killed.repsSent}, acknowledged before the last kill ${killed.acknowledgedBeforeAKill}`);
console.log(`acknowledged but lost: ${killed.acknowledgedButLost} (goal 0)`);
console.log(`written, the kill came before the acknowledgement: ${killed.writtenButNotAcknowledged}`);
console.log(`missing at the end: ${killed.missingAtTheEnd} (goal 0), doubled: ${killed.doubledAtTheEnd} (goal 0)`);

const faults = [
  ...loadFaults(load),
  ...(killed.acknowledgedButLost > 0 ? ["Acknowledged reps were lost in a kill."] : []),
  ...(killed.missingAtTheEnd > 0 ? ["Reps are missing after the kills."] : []),
  ...(killed.doubledAtTheEnd > 0 ? ["Reps are doubled after the kills."] : []),
];
console.log(`\n${faults.length === 0 ? "load:relay: every goal met" : `load:relay: ${faults.join(" ")}`}`);
process.exitCode = faults.length === 0 ? 0 : 1;
