import { parseArgs } from "node:util";
import { loadFaults, loadTable } from "./print-load.ts";
import { runRelayLoad } from "./relay-load.ts";

/** `npm run soak:relay -- [--seconds 300]`: whether the relay's memory settles under steady load. */
const { values } = parseArgs({ options: { seconds: { type: "string", default: "300" } } });
const seconds = Math.min(3600, Number(values.seconds));
/** Growth from the middle of the run to its end, MiB: the first half is the engine's own warming up. */
const goalMebibytes = 20;

const load = await runRelayLoad({
  seconds,
  estimatesPerSecond: 60,
  displays: 4,
  coaches: 2,
  secondsPerRep: 5,
  secondsPerCut: 20,
});
console.log(`60 estimates/s from one phone to 4 ground screens and 2 coaches for ${seconds} s, loopback\n`);
console.log(loadTable(load));
const memory = load.residentMebibytes;
console.log(`\nrelay's resident memory each 10 s, MiB: ${memory.map((value) => value.toFixed(0)).join(" ")}`);
const faults = loadFaults(load);
const middle = memory[Math.floor(memory.length / 2)];
const end = memory.at(-1);
if (middle === undefined || end === undefined) console.log("This system does not tell a process's memory.");
else {
  const growth = end - middle;
  console.log(`growth from the middle to the end: ${growth.toFixed(1)} MiB (goal at most ${goalMebibytes})`);
  if (growth > goalMebibytes) faults.push("The memory grew.");
}
console.log(`connection cuts: ${load.cuts}; reps missing: ${load.repsMissing} of ${load.repsSent} (goal 0)`);
console.log(`\n${faults.length === 0 ? "soak:relay: every goal met" : `soak:relay: ${faults.join(" ")}`}`);
process.exitCode = faults.length === 0 ? 0 : 1;
