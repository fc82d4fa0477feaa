import { useEffect, useMemo, useRef } from "react";
import { useStore } from "zustand";
import { Mark } from "../page/mark.tsx";
import { usePhoneState, useSession } from "../page/use-phone.ts";
import { drawUpright, fitCanvas } from "../page/draw-upright.ts";
import { Magnifier } from "./magnifier.tsx";
import { StationForm } from "./station-form.tsx";
import { StickMarks } from "./stick-marks.tsx";
import { lookingWords, verdictWords } from "./station-words.ts";

/** The frozen picture with a mark on each end of each stick, what the user says of the station, and the verdict. */
export function StationScreen() {
  const session = useSession();
  const setUp = useMemo(() => session.startStation(), [session]);
  const canvas = useRef<HTMLCanvasElement>(null);
  const source = usePhoneState((state) => state.source);
  const solution = useStore(setUp.store, (state) => state.solution);
  const note = useStore(setUp.store, (state) => state.note);
  const picture = useStore(setUp.store, (state) => state.picture);
  const frozen = picture !== null;
  const window = useStore(setUp.store, (state) => state.window);
  const { width, height } = source ?? { width: 9, height: 16 };
  const part = window ?? { x: 0, y: 0, width, height };
  const percent = (share: number): string => `${100 * share}%`;

  useEffect(() => {
    session.setPainter({
      picture(frame) {
        const context = canvas.current?.getContext("2d", { alpha: false }) ?? null;
        if (context !== null && setUp.store.getState().picture === null) drawUpright(context, frame);
      },
      finding({ t }) {
        void setUp.onPicture(t);
      },
    });
    return () => {
      session.setPainter(null);
    };
  }, [session, setUp]);

  useEffect(() => {
    const context = canvas.current?.getContext("2d", { alpha: false }) ?? null;
    if (context === null || picture === null) return;
    fitCanvas(context.canvas, picture.width, picture.height);
    context.putImageData(new ImageData(picture.rgba, picture.width, picture.height), 0, 0);
  }, [picture]);

  const verdict = verdictWords(solution);
  const usable = solution !== null && solution.verdict !== "refused";
  return (
    <main className="live station">
      <h1 className="unseen">Set the sticks</h1>
      <div className="picture">
        <div
          className="frame"
          style={{ aspectRatio: `${part.width} / ${part.height}`, ["--shape" as string]: part.width / part.height }}
        >
          <div
            className="sheet"
            style={{
              width: percent(width / part.width),
              height: percent(height / part.height),
              left: percent(-part.x / part.width),
              top: percent(-part.y / part.height),
            }}
          >
            <canvas ref={canvas} role="img" aria-label="Picture of the station" />
            {frozen && <StickMarks setUp={setUp} width={width} height={height} />}
          </div>
          <Magnifier store={setUp.store} picture={canvas} />
        </div>
      </div>
      <section className="beside">
        <div role="status" className="findings">
          {frozen ? (
            <>
              <Mark told={verdict} />
              {verdict.todo !== "" && <p>{verdict.todo}</p>}
              {note !== "" && <p className="note">{note}</p>}
            </>
          ) : (
            <Mark told={{ standing: "waiting", words: note === "" ? lookingWords : note }} />
          )}
        </div>
        <StationForm setUp={setUp} />
        <nav className="actions">
          <button
            type="button"
            className="main-action"
            disabled={!usable}
            onClick={() => {
              session.setStation(setUp.use());
              session.show("live");
            }}
          >
            Use these sticks
          </button>
          <button
            type="button"
            disabled={!frozen}
            onClick={() => {
              setUp.showWhole(window !== null);
            }}
          >
            {window === null ? "Closer" : "Whole picture"}
          </button>
          <button
            type="button"
            disabled={!frozen}
            onClick={() => {
              setUp.lookAgain();
            }}
          >
            Look again
          </button>
          <button
            type="button"
            onClick={() => {
              session.show("live");
            }}
          >
            Back
          </button>
        </nav>
      </section>
    </main>
  );
}
