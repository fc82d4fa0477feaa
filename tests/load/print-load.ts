import type { LoadResult } from "./relay-load.ts";
import type { Percentiles } from "./percentiles.ts";

/** The table of a load run, Markdown, latencies beside the bare fan-out's. */
export function loadTable({ relay, bare }: LoadResult): string {
  const row = (name: string, p: Percentiles): string =>
    `| ${name} | ${p.p50.toFixed(2)} | ${p.p95.toFixed(2)} | ${p.p99.toFixed(2)} | ${p.count} |`;
  const ratio = `| relay / bare | ${(relay.p50 / bare.p50).toFixed(2)} | ${(relay.p95 / bare.p95).toFixed(2)} | ${(relay.p99 / bare.p99).toFixed(2)} | |`;
  return [
    "| sending to arrival, ms | p50 | p95 | p99 | arrivals |",
    "|---|---|---|---|---|",
    row("relay (parsed, by role, TLS)", relay),
    row("bare ws fan-out (TLS)", bare),
    ratio,
  ].join("\n");
}

/** What was wrong with a load run, a sentence each; empty where nothing was. */
export function loadFaults(result: LoadResult): string[] {
  const { repsSent, repsAcknowledged, repsMissing, repsDoubled, echoed, cuts } = result;
  return [
    ...(repsSent === 0 ? ["No rep was sent."] : []),
    ...(cuts === 0 ? ["The connection was never cut."] : []),
    ...(repsAcknowledged < repsSent ? [`${repsSent - repsAcknowledged} reps were never acknowledged.`] : []),
    ...(repsMissing > 0 ? [`${repsMissing} reps are not in the book.`] : []),
    ...(repsDoubled > 0 ? [`${repsDoubled} reps are in the book twice.`] : []),
    ...(echoed > 0 ? [`${echoed} estimates came back to the phone.`] : []),
  ];
}
