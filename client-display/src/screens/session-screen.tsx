import "uplot/dist/uPlot.min.css";
import { useMemo, useRef } from "react";
import { runCommand } from "../actions/run-command.ts";
import { stageRuns } from "../history/block-columns.ts";
import { Plot } from "../history/plot.tsx";
import { blockPlots, feltPlot } from "../history/plots-of.ts";
import { fitSizes } from "../sizes/fit-sizes.ts";
import { plotHeight } from "../sizes/plot-height.ts";
import { viewingOf } from "../store/display-settings.ts";
import { palettes } from "../theme/palette.ts";
import { stageNames } from "../words/stage-names.ts";
import { useParts, useScreen, useSettings } from "./parts.ts";
import { RetentionTests } from "./retention-tests.tsx";
import { useElementSize } from "./use-element-size.ts";
import { useSessionView } from "./use-session-view.ts";

/** Between blocks: what the books say, one thing a sheet, each to be read from where the golfer stands. Turned by scrolling or by a remote's forward key. */
export function SessionScreen() {
  const parts = useParts();
  const practice = useScreen((state) => state.practice);
  const settings = useSettings((all) => all);
  const view = useSessionView();
  const root = useRef<HTMLElement>(null);
  const size = useElementSize(root);
  const { mustRead } = fitSizes(size ?? { width: 1280, height: 800 }, viewingOf(settings));
  const colours = palettes[settings.theme];
  const plots = useMemo(() => {
    if (view === null || size === null || view.blocks.length === 0) return [];
    const felt = feltPlot(view, colours);
    return [...blockPlots(view, colours), ...(felt === null ? [] : [felt])].map((plot) => ({
      ...plot,
      fontSize: mustRead,
      height: plotHeight(size, mustRead, plot),
    }));
  }, [view, colours, size, mustRead]);
  return (
    <main className="session" data-screen="session" data-sheets ref={root} style={{ fontSize: mustRead }} tabIndex={-1}>
      <button
        type="button"
        className="close"
        data-close
        onClick={() => {
          void runCommand({ do: "view", view: "live" }, parts);
        }}
      >
        To the ground
      </button>
      <section className="sheet">
        <h1>Session</h1>
        {practice !== null && (
          <p>
            {stageNames[practice.stage]}: {practice.repsInStage} reps, {practice.repsInSession} today
          </p>
        )}
        {practice?.advice[0] !== undefined && <p className="headline">{practice.advice[0]}</p>}
        {view !== null && view.blocks.length === 0 && <p>No finished block yet: the plots begin with the first.</p>}
      </section>
      {plots.map((plot) => (
        <section className="sheet" key={plot.title}>
          <Plot {...plot} />
        </section>
      ))}
      {view !== null && view.blocks.length > 0 && (
        <section className="sheet">
          <h2>Stages</h2>
          <ol className="stage-runs">
            {stageRuns(view).map(({ stage, firstBlock, lastBlock }) => (
              <li key={firstBlock}>
                <b>{stageNames[stage]}</b>
                {firstBlock === lastBlock ? `, block ${firstBlock}` : `, blocks ${firstBlock} to ${lastBlock}`}
              </li>
            ))}
          </ol>
        </section>
      )}
      {view !== null && <RetentionTests tests={view.retentionTests} />}
      {(practice?.advice.length ?? 0) > 1 && (
        <section className="sheet">
          <h2>Advice</h2>
          <ul>
            {practice?.advice.slice(1).map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </section>
      )}
    </main>
  );
}
