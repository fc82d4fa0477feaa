import { bandSubjectAt } from "@overcue/shared-geometry/checkpoints";
import type { Aim, PracticeState, SessionView } from "@overcue/shared-geometry/wire/practice";
import { useEffect, useRef } from "react";
import { drawAimBands, drawAimTags } from "../ground-view/draw-list/draw-aim.ts";
import { drawStation, drawStrips } from "../ground-view/draw-list/draw-ground.ts";
import { drawHistory, type PastPlace } from "../ground-view/draw-list/draw-history.ts";
import { groundFrame } from "../ground-view/draw-list/ground-frame.ts";
import { paint } from "../ground-view/paint.ts";
import { useSettings } from "../screens/parts.ts";
import { useElementSize } from "../screens/use-element-size.ts";
import { layoutOf } from "../screens/use-ground-scene.ts";
import { palettes } from "../theme/palette.ts";

export interface ReviewGroundProps {
  readonly practice: PracticeState;
  readonly aim: Aim;
  readonly reps: SessionView["reps"];
}

const repsDrawn = 8;
const textSize = 20;
const markSize = 17;

/** The ground with one checkpoint's bands and where the last reps came to lie. */
export function ReviewGround({ practice, aim, reps }: ReviewGroundProps) {
  const host = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const size = useElementSize(host);
  const colours = palettes[useSettings((settings) => settings.theme)];
  useEffect(() => {
    const context = canvas.current?.getContext("2d");
    if (canvas.current === null || context === undefined || context === null || size === null) return;
    const ratio = window.devicePixelRatio;
    canvas.current.width = Math.round(size.width * ratio);
    canvas.current.height = Math.round(size.height * ratio);
    context.setTransform(ratio, 0, 0, ratio, 0, 0);
    const layout = layoutOf(practice);
    const frame = groundFrame({ x: 0, y: 0, ...size }, layout, practice.golfer.handed, "in-front");
    const painter = { context, colours, fontFamily: '"Barlow Semi Condensed", sans-serif' };
    const bands = { felt: aim.felt, wanted: aim.wanted, strength: 1 };
    paint(painter, drawStrips(frame, layout));
    paint(painter, drawAimBands(frame, bands, textSize));
    paint(painter, drawStation(frame, layout, 3));
    paint(painter, drawHistory(frame, pastPlaces(aim, reps), markSize));
    paint(painter, drawAimTags(frame, bands, textSize));
  }, [size, colours, practice, aim, reps]);
  return (
    <div className="review-ground" ref={host}>
      <canvas
        ref={canvas}
        role="img"
        aria-label={`The ground with the last ${Math.min(repsDrawn, reps.length)} reps`}
      />
    </div>
  );
}

function pastPlaces({ checkpoint }: Aim, reps: SessionView["reps"]): readonly PastPlace[] {
  const newestFirst = reps.filter(({ voided }) => !voided).toSorted((a, b) => b.at - a.at);
  return newestFirst.slice(0, repsDrawn).flatMap(({ places }, age) => {
    const place = places.find((read) => read.checkpoint === checkpoint);
    return place === undefined
      ? []
      : [{ subject: bandSubjectAt[checkpoint] ?? "butt-point", y: place.y, sd: place.sd, age }];
  });
}
