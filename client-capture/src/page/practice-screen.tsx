import { Mark } from "./mark.tsx";
import { usePhoneState, useSession } from "./use-phone.ts";
import { linkWords, repKindWords, shaftWords } from "./words.ts";

/** Dark, to spare the battery; read from a few steps away. The ground screen has the rest. */
export function PracticeScreen() {
  const session = useSession();
  const finding = usePhoneState((state) => state.finding);
  const reps = usePhoneState((state) => state.reps);
  const lastRep = usePhoneState((state) => state.lastRep);
  const unsent = usePhoneState((state) => state.unsentReps);
  const link = usePhoneState((state) => state.link);
  const peers = usePhoneState((state) => state.peers);
  const warnings = usePhoneState((state) => state.warnings);
  const told = shaftWords({ finding });
  return (
    <main className="practice">
      <div className="big" role="status">
        <Mark told={told.standing === "good" ? { standing: "good", words: "Sees the club" } : told} />
      </div>
      <p className="count">
        <b>{reps}</b> {reps === 1 ? "rep" : "reps"}
        {lastRep !== null && `, last: ${repKindWords[lastRep.kind]}${lastRep.complete ? "" : " (incomplete)"}`}
      </p>
      {unsent > 0 && <p className="count">{unsent} kept here until the relay takes them</p>}
      {link.is !== "connected" && <Mark told={linkWords({ link, peers })} />}
      {warnings.slice(0, 1).map((warning) => (
        <p key={warning} className="warning">
          {warning}
        </p>
      ))}
      <button
        type="button"
        onClick={() => {
          session.show("live");
        }}
      >
        Show the picture
      </button>
    </main>
  );
}
