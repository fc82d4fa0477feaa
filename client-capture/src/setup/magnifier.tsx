import { useEffect, useRef, type RefObject } from "react";
import type { StationStore } from "./station-store.ts";

/** Pixels of the picture across the glass, and how many times larger they are shown. */
const across = 60;
const times = 3;

/** What lies under the thumb, larger, in the corner away from it; only while a mark is dragged. */
export function Magnifier({
  store,
  picture,
}: {
  readonly store: StationStore;
  readonly picture: RefObject<HTMLCanvasElement | null>;
}) {
  const glass = useRef<HTMLCanvasElement>(null);
  useEffect(
    () =>
      store.subscribe(({ dragged }) => {
        const canvas = glass.current;
        const from = picture.current;
        const context = canvas?.getContext("2d") ?? null;
        if (canvas === null || from === null || context === null) return;
        canvas.hidden = dragged === null;
        if (dragged === null) return;
        const { x, y } = dragged.at;
        canvas.dataset["side"] = x > from.width / 2 ? "left" : "right";
        const size = across * times;
        context.imageSmoothingEnabled = false;
        context.fillStyle = "#000000";
        context.fillRect(0, 0, size, size);
        context.drawImage(from, x - across / 2, y - across / 2, across, across, 0, 0, size, size);
        for (const [colour, width] of [
          ["#000000", 5],
          ["#ffffff", 2],
        ] as const) {
          context.strokeStyle = colour;
          context.lineWidth = width;
          context.beginPath();
          context.moveTo(size / 2, size * 0.25);
          context.lineTo(size / 2, size * 0.45);
          context.moveTo(size / 2, size * 0.55);
          context.lineTo(size / 2, size * 0.75);
          context.moveTo(size * 0.25, size / 2);
          context.lineTo(size * 0.45, size / 2);
          context.moveTo(size * 0.55, size / 2);
          context.lineTo(size * 0.75, size / 2);
          context.stroke();
        }
      }),
    [store, picture],
  );
  return <canvas ref={glass} className="magnifier" width={across * times} height={across * times} hidden />;
}
