import { metres } from "@overcue/shared-geometry/units";
import type { BandLayout } from "@overcue/shared-geometry/bands";
import type { PracticeState } from "@overcue/shared-geometry/wire/practice";
import { useMemo } from "react";
import { currentAim } from "../ground-view/current-aim.ts";
import { defaultLayout } from "../ground-view/default-layout.ts";
import type { GroundScene } from "../ground-view/ground-layers.ts";
import { repMarks } from "../ground-view/rep-marks.ts";
import { targetStrength } from "../ground-view/target-strength.ts";
import type { ViewingSizes } from "../sizes/viewing-sizes.ts";
import { palettes } from "../theme/palette.ts";
import { useScreen, useSettings } from "./parts.ts";

/** What the still layer of the ground shows now; a new object only when something of it changed. */
export function useGroundScene(sizes: ViewingSizes | null): GroundScene | null {
  const practice = useScreen((state) => state.practice);
  const passed = useScreen((state) => state.passed);
  const held = useScreen((state) => state.held);
  const reps = useScreen((state) => state.reps);
  const checkpoints = useScreen((state) => state.checkpoints);
  const place = useSettings((settings) => settings.screenPlace);
  const theme = useSettings((settings) => settings.theme);
  const textSize = sizes?.mustRead ?? null;
  const markSize = sizes?.mark ?? null;
  return useMemo(() => {
    if (textSize === null || markSize === null) return null;
    const aim = practice?.mode === "practice" ? currentAim(practice.aims, { passed, held }) : null;
    return {
      layout: layoutOf(practice),
      handed: practice?.golfer.handed ?? "right",
      place,
      aim: aim === null ? null : { felt: aim.felt, wanted: aim.wanted, strength: targetStrength(aim, reps) },
      marks: repMarks({ practice, checkpoints, lastRep: reps.at(-1) ?? null }),
      textSize,
      markSize,
      colours: palettes[theme],
    };
  }, [practice, passed, held, reps, checkpoints, place, theme, textSize, markSize]);
}

export function layoutOf(practice: PracticeState | null): BandLayout {
  if (practice === null) return defaultLayout;
  const { toeLine, heelLine, tolerance } = practice.layout;
  return { toeLine: metres(toeLine), heelLine: metres(heelLine), tolerance: metres(tolerance) };
}
