import { Mark, StandingShape } from "./mark.tsx";
import { practiceStatus } from "./practice-status.ts";
import { usePhoneState, useSession } from "./use-phone.ts";
import { linkWords, repKindWords } from "./words.ts";

/** Dark, to spare the battery. One shape and one word are read from the ball; the rest is for whoever comes nearer. */
export function PracticeScreen() {
  const session = useSession();
  const finding = usePhoneState((state) => state.finding);
  const calibration = usePhoneState((state) => state.calibration);
  const practice = usePhoneState((state) => state.practice);
  const reps = usePhoneState((state) => state.reps);
  const lastRep = usePhoneState((state) => state.lastRep);
  const unsent = usePhoneState((state) => state.unsentReps);
  const link = usePhoneState((state) => state.link);
  const peers = usePhoneState((state) => state.peers);
  const warnings = usePhoneState((state) => state.warnings);
  const status = practiceStatus({ finding, calibration, link, practice });
  return (
    <main className="practice" data-screen="practice">
      <h1 className="unseen">Practice</h1>
      <div className={`status mark-${status.standing}`} role="status">
        <StandingShape standing={status.standing} />
        <p className="word">{status.word}</p>
      </div>
      <section className="rest">
        {status.sentence !== "" && <p className="sentence">{status.sentence}</p>}
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
      </section>
    </main>
  );
}
