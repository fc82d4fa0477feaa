import { useEffect, useRef, type PointerEvent } from "react";
import { imagePoint } from "@overcue/shared-geometry/point";
import { makePainter } from "./make-painter.ts";
import { usePhoneState, useSession } from "./use-phone.ts";

/** The pictures as they come, with what is found drawn over them. React only puts the two canvases there. */
export function LivePicture() {
  const session = useSession();
  const source = usePhoneState((state) => state.source);
  const tapping = usePhoneState((state) => state.tappingRod);
  const picture = useRef<HTMLCanvasElement>(null);
  const overlay = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    if (picture.current === null || overlay.current === null) return;
    session.setPainter(makePainter(picture.current, overlay.current));
    return () => {
      session.setPainter(null);
    };
  }, [session]);
  useEffect(() => {
    // The button that asks for the tap may lie a screen below the picture.
    if (tapping) picture.current?.scrollIntoView({ block: "center" });
  }, [tapping]);
  const { width, height } = source ?? { width: 9, height: 16 };
  const onTap = (event: PointerEvent<HTMLElement>): void => {
    if (!tapping) return;
    const box = event.currentTarget.getBoundingClientRect();
    const across = (event.clientX - box.left) / box.width;
    const down = (event.clientY - box.top) / box.height;
    void session.tapRod(imagePoint(across * width, down * height));
  };
  return (
    <div
      className={tapping ? "picture tapping" : "picture"}
      role="img"
      aria-label="Live picture with the found shaft and body drawn over it"
    >
      <div
        className="frame"
        style={{ aspectRatio: `${width} / ${height}`, ["--shape" as string]: width / height }}
        onPointerDown={onTap}
      >
        <canvas ref={picture} />
        <canvas ref={overlay} />
      </div>
    </div>
  );
}
