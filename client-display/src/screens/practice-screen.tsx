import { useEffect, useMemo, useRef } from "react";
import { currentAim } from "../ground-view/current-aim.ts";
import { defaultLayout } from "../ground-view/default-layout.ts";
import { groundLayers, type GroundLayers, type GroundScene } from "../ground-view/ground-layers.ts";
import { metres } from "@overcue/shared-geometry/units";
import { fitSizes } from "../sizes/fit-sizes.ts";
import { layoutPractice } from "../sizes/layout-practice.ts";
import { viewingOf } from "../store/display-settings.ts";
import { palettes } from "../theme/palette.ts";
import { useParts, useScreen, useSettings } from "./parts.ts";
import { place } from "./place-rect.ts";
import { runLive } from "./run-live.ts";
import { useElementSize } from "./use-element-size.ts";

/** The ground as the golfer looks down on it, and one big word. */
export function PracticeScreen() {
  const parts = useParts();
  const practice = useScreen((state) => state.practice);
  const passed = useScreen((state) => state.passed);
  const settings = useSettings((all) => all);
  const root = useRef<HTMLElement>(null);
  const still = useRef<HTMLCanvasElement>(null);
  const moving = useRef<HTMLCanvasElement>(null);
  const words = useRef<HTMLDivElement>(null);
  const layers = useRef<GroundLayers | null>(null);
  const size = useElementSize(root);

  const aim = useMemo(() => currentAim(practice?.aims ?? [], passed), [practice, passed]);
  const sizes = useMemo(() => (size === null ? null : fitSizes(size, viewingOf(settings))), [size, settings]);
  const layout = size === null || sizes === null ? null : layoutPractice(size, sizes.keyWord, sizes.mustRead);
  const scene = useMemo<GroundScene | null>(
    () =>
      sizes === null
        ? null
        : {
            layout: practice === null ? defaultLayout : toLayout(practice.layout),
            handed: practice?.golfer.handed ?? "right",
            place: settings.screenPlace,
            aim: aim === null ? null : { felt: aim.felt, wanted: aim.wanted, strength: 1 },
            textSize: sizes.mustRead,
            markSize: sizes.mark,
            colours: palettes[settings.theme],
          },
    [sizes, practice, settings, aim],
  );

  const groundWidth = layout?.ground.width ?? 0;
  const groundHeight = layout?.ground.height ?? 0;
  useEffect(() => {
    if (still.current === null || moving.current === null || scene === null || groundWidth === 0) return;
    layers.current ??= groundLayers(still.current, moving.current);
    layers.current.resize(groundWidth, groundHeight, window.devicePixelRatio);
    layers.current.setScene(scene);
  }, [scene, groundWidth, groundHeight]);

  const aimedAt = aim?.checkpoint ?? null;
  useEffect(() => {
    if (words.current === null) return;
    return runLive({ parts, words: words.current, layers: () => layers.current, aimedAt });
  }, [parts, aimedAt]);

  return (
    <main className="practice" data-screen="practice" ref={root}>
      <h1 className="unseen">Practice</h1>
      <div className="ground" style={place(layout?.ground)}>
        <canvas ref={still} className="layer" role="img" aria-label="The ground from above, with the bands to aim at" />
        <canvas ref={moving} className="layer" aria-hidden="true" />
      </div>
      <div
        className="words"
        style={{ ...place(layout?.words), fontSize: sizes?.mustRead ?? 16 }}
        ref={words}
        data-side={layout?.side}
      >
        <p className="word-heading" data-part="heading" />
        <p className="key-word" data-part="key-word" style={{ fontSize: sizes?.keyWord ?? 32 }} />
        <p className="caution" data-part="calibration" />
        <p className="small-status" data-part="status" />
      </div>
    </main>
  );
}

const toLayout = ({ toeLine, heelLine, tolerance }: { toeLine: number; heelLine: number; tolerance: number }) => ({
  toeLine: metres(toeLine),
  heelLine: metres(heelLine),
  tolerance: metres(tolerance),
});
