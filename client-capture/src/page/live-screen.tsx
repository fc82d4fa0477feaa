import { nextCheck } from "../checks/set-up-checks.ts";
import { LivePicture } from "./live-picture.tsx";
import { Mark } from "./mark.tsx";
import { RodButtons } from "./next-action.tsx";
import { SetUpList } from "./set-up-list.tsx";
import { useChecks } from "./use-checks.ts";
import { usePhoneState, useSession } from "./use-phone.ts";
import { linkWords, shaftWords } from "./words.ts";

const sourceWords = { camera: "Camera", clip: "Clip", demo: "Demo golfer (invented)" } as const;

/** The picture, what is found in it, and what to do next. */
export function LiveScreen() {
  const session = useSession();
  const warnings = usePhoneState((state) => state.warnings);
  return (
    <main className="live" data-screen="live">
      <h1 className="unseen">Set up the phone</h1>
      <LivePicture />
      <section className="beside">
        <Findings />
        {warnings.slice(0, 1).map((warning) => (
          <p key={warning} className="warning" role="alert">
            {warning}
          </p>
        ))}
        <SetUpList />
        <nav className="actions">
          <button
            type="button"
            className="main-action"
            onClick={() => {
              session.show("practice");
            }}
          >
            Practise
          </button>
          <button
            type="button"
            onClick={() => {
              session.show("station");
            }}
          >
            Set the sticks
          </button>
          <button
            type="button"
            onClick={() => {
              session.stop();
            }}
          >
            Stop
          </button>
        </nav>
        <More />
      </section>
    </main>
  );
}

/** What is done seldom, and the numbers. */
function More() {
  const session = useSession();
  const hasTorch = usePhoneState((state) => state.hasTorch);
  const torchOn = usePhoneState((state) => state.torchOn);
  const next = nextCheck(useChecks());
  return (
    <details className="more">
      <summary>More</summary>
      <div className="more-parts">
        {next?.id !== "rod-colour" && <RodButtons />}
        <div className="pair">
          {hasTorch && (
            <button type="button" aria-pressed={torchOn} onClick={() => void session.setTorch(!torchOn)}>
              {torchOn ? "Light off" : "Light on"}
            </button>
          )}
          <button
            type="button"
            onClick={() => {
              session.show("help");
            }}
          >
            Help and cautions
          </button>
        </div>
        <Numbers />
      </div>
    </details>
  );
}

function Findings() {
  const finding = usePhoneState((state) => state.finding);
  const pose = usePhoneState((state) => state.pose);
  const link = usePhoneState((state) => state.link);
  const peers = usePhoneState((state) => state.peers);
  return (
    <div className="findings" role="status">
      {pose === null ? (
        <Mark told={{ standing: "waiting", words: "Pose model is warming up" }} />
      ) : (
        <Mark told={shaftWords({ finding })} />
      )}
      <Mark told={linkWords({ link, peers })} />
    </div>
  );
}

function Numbers() {
  const source = usePhoneState((state) => state.source);
  const frames = usePhoneState((state) => state.framesPerSecond);
  const poses = usePhoneState((state) => state.posesPerSecond);
  const failed = usePhoneState((state) => state.failedFrames);
  const looked = usePhoneState((state) => state.lookedFrames);
  const missed = usePhoneState((state) => state.missedFrames);
  const reps = usePhoneState((state) => state.reps);
  const unsent = usePhoneState((state) => state.unsentReps);
  if (source === null) return null;
  return (
    <p className="numbers">
      {sourceWords[source.kind]} {source.width} × {source.height}, pictures a second {Math.round(frames)}, poses{" "}
      {Math.round(poses)}
      <br />
      {looked} of {looked + missed} pictures looked at{failed > 0 && `, ${failed} failed`}, {reps} reps
      {unsent > 0 && `, ${unsent} not sent yet`}
    </p>
  );
}
