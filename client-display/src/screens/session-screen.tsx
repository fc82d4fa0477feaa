import "uplot/dist/uPlot.min.css";
import { useMemo, useRef } from "react";
import { runCommand } from "../actions/run-command.ts";
import { blockPlots, feltPlot } from "../history/plots-of.ts";
import { Plot } from "../history/plot.tsx";
import { stageRuns } from "../history/block-columns.ts";
import { fitSizes } from "../sizes/fit-sizes.ts";
import { viewingOf } from "../store/display-settings.ts";
import { palettes } from "../theme/palette.ts";
import { stageNames } from "../words/stage-names.ts";
import { useParts, useScreen, useSettings } from "./parts.ts";
import { RetentionTests } from "./retention-tests.tsx";
import { useElementSize } from "./use-element-size.ts";
import { useSessionView } from "./use-session-view.ts";

/** Between blocks: what the books say. One sentence can be read from the ball, the rest from nearby. */
export function SessionScreen() {
  const parts = useParts();
  const practice = useScreen((state) => state.practice);
  const settings = useSettings((all) => all);
  const view = useSessionView();
  const root = useRef<HTMLElement>(null);
  const size = useElementSize(root);
  const sizes = fitSizes(size ?? { width: 1280, height: 800 }, viewingOf(settings));
  const colours = palettes[settings.theme];
  const plots = useMemo(() => {
    if (view === null || view.blocks.length === 0) return [];
    const felt = feltPlot(view, colours);
    return [...blockPlots(view, colours), ...(felt === null ? [] : [felt])].map((plot) => ({
      ...plot,
      fontSize: 17,
      height: 230,
    }));
  }, [view, colours]);
  return (
    <main className="panel session" data-screen="session" ref={root}>
      <header className="panel-head">
        <h1>Session{practice === null ? "" : `: ${practice.golfer.name}, ${practice.drill.name}`}</h1>
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
      </header>
      {practice?.advice[0] !== undefined && (
        <p className="headline" style={{ fontSize: Math.min(sizes.mustRead, 64) }}>
          {practice.advice[0]}
        </p>
      )}
      {view !== null && view.blocks.length === 0 && (
        <p className="hint">No finished block yet: the plots begin with the first.</p>
      )}
      {view !== null && view.blocks.length > 0 && (
        <ol className="stage-runs" aria-label="Stages by block">
          {stageRuns(view).map(({ stage, firstBlock, lastBlock }) => (
            <li key={firstBlock}>
              <b>{stageNames[stage]}</b> block
              {firstBlock === lastBlock ? ` ${firstBlock}` : `s ${firstBlock} to ${lastBlock}`}
            </li>
          ))}
        </ol>
      )}
      <div className="plots">
        {plots.map((plot) => (
          <Plot key={plot.title} {...plot} />
        ))}
      </div>
      {view !== null && <RetentionTests tests={view.retentionTests} />}
      {(practice?.advice.length ?? 0) > 1 && (
        <ul className="advice">
          {practice?.advice.slice(1).map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
    </main>
  );
}
