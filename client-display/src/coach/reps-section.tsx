import type { PracticeCommand, SessionView } from "@overcue/shared-geometry/wire/practice";
import { shortCheckpoint } from "../words/heading.ts";

export interface RepsSectionProps {
  readonly reps: SessionView["reps"];
  readonly ask: (command: PracticeCommand) => void;
}

const repsListed = 8;

/** The last reps, newest first: void what was no rep, star what is worth coming back to. */
export function RepsSection({ reps, ask }: RepsSectionProps) {
  const newest = reps.toSorted((a, b) => b.at - a.at).slice(0, repsListed);
  return (
    <section>
      <h2>Last reps</h2>
      {newest.length === 0 && <p className="coach-status">No rep yet.</p>}
      <ul className="rep-list">
        {newest.map((rep) => {
          const name = new Date(rep.at).toLocaleTimeString([], {
            hour: "2-digit",
            minute: "2-digit",
            second: "2-digit",
          });
          return (
            <li key={rep.repId} data-voided={rep.voided}>
              <span className="rep-places">
                {name}
                <br />
                {rep.places.map((place) => inWords(place.checkpoint, place.y, place.sd)).join(", ")}
                {rep.leftOut !== null && ` (left out: ${rep.leftOut})`}
              </span>
              <button
                type="button"
                aria-pressed={rep.starred}
                aria-label={`${rep.starred ? "Unstar" : "Star"} the rep of ${name}`}
                onClick={() => {
                  ask({ do: "star-rep", repId: rep.repId, starred: !rep.starred });
                }}
              >
                {rep.starred ? "Starred" : "Star"}
              </button>
              <button
                type="button"
                aria-label={`${rep.voided ? "Take back in" : "Void"} the rep of ${name}`}
                onClick={() => {
                  ask(rep.voided ? { do: "restore-rep", repId: rep.repId } : { do: "void-rep", repId: rep.repId });
                }}
              >
                {rep.voided ? "Back in" : "Void"}
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

/** Distance from the ball line with its error, in centimetres: minus is beyond the ball. */
function inWords(
  checkpoint: SessionView["reps"][number]["places"][number]["checkpoint"],
  y: number,
  sd: number,
): string {
  return `${shortCheckpoint[checkpoint]} ${Math.round(y * 100)} ± ${Math.max(1, Math.round(sd * 100))} cm`;
}
