import { useEffect, useMemo, useRef } from "react";
import type { GroundLayers } from "../ground-view/ground-layers.ts";
import { fitSizes } from "../sizes/fit-sizes.ts";
import { layoutPractice } from "../sizes/layout-practice.ts";
import { viewingOf } from "../store/display-settings.ts";
import { GroundCanvas } from "./ground-canvas.tsx";
import { useParts, useSettings } from "./parts.ts";
import { place } from "./place-rect.ts";
import { runLive } from "./run-live.ts";
import { useElementSize } from "./use-element-size.ts";
import { useGroundScene } from "./use-ground-scene.ts";

/** The ground as the golfer looks down on it, and one big word. */
export function PracticeScreen() {
  const parts = useParts();
  const settings = useSettings((all) => all);
  const root = useRef<HTMLElement>(null);
  const words = useRef<HTMLDivElement>(null);
  const layers = useRef<GroundLayers | null>(null);
  const size = useElementSize(root);
  const sizes = useMemo(() => (size === null ? null : fitSizes(size, viewingOf(settings))), [size, settings]);
  const layout = size === null || sizes === null ? null : layoutPractice(size, sizes.keyWord, sizes.mustRead);
  const scene = useGroundScene(sizes);

  useEffect(() => {
    if (words.current === null) return;
    return runLive({ parts, words: words.current, layers: () => layers.current });
  }, [parts]);

  return (
    <main className="practice" data-screen="practice" data-sizes-met={sizes?.meetsRule} ref={root}>
      <h1 className="unseen">Practice</h1>
      <div className="ground" style={place(layout?.ground)}>
        <GroundCanvas
          scene={scene}
          size={layout?.ground ?? null}
          layers={layers}
          label="The ground from above, with the band to be felt and the band that is wanted"
        />
      </div>
      <div
        className="words"
        style={{ ...place(layout?.words), fontSize: sizes?.mustRead ?? 16 }}
        ref={words}
        data-side={layout?.side}
      >
        <p className="word-moment" data-part="moment" />
        <p className="word-heading" data-part="heading" />
        <p className="key-word" data-part="key-word" style={{ fontSize: sizes?.keyWord ?? 32 }} />
        <p className="caution" data-part="calibration" />
        <div className="corner">
          <button
            type="button"
            className="menu-button"
            onClick={() => {
              parts.ui.setState({ overlay: "menu" });
            }}
          >
            Menu
          </button>
          <p className="small-status" data-part="status" />
        </div>
      </div>
    </main>
  );
}
