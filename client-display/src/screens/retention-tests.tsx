import type { SessionView } from "@overcue/shared-geometry/wire/practice";
import { briefCheckpoint } from "../words/heading.ts";

/** Tests without feedback, days later: the real score. */
export function RetentionTests({ tests }: { readonly tests: SessionView["retentionTests"] }) {
  if (tests.length === 0) return null;
  return (
    <section className="sheet">
      <h2>Tests without answers</h2>
      <ul>
        {tests.map(({ kind, at, places }) => (
          <li key={at}>
            {new Date(at).toLocaleDateString()} · {kind === "next-day" ? "next day" : "after weeks"}:{" "}
            {places
              .map(
                ({ checkpoint, carryOver }) =>
                  `${briefCheckpoint(checkpoint)} ${carryOver === null ? "not counted" : `${Math.round(carryOver * 100)} %`}`,
              )
              .join(", ")}
          </li>
        ))}
      </ul>
    </section>
  );
}
