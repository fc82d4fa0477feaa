import { useEffect, useRef, type RefObject } from "react";
import { groundLayers, type GroundLayers, type GroundScene } from "../ground-view/ground-layers.ts";
import type { ScreenSize } from "../sizes/viewing-sizes.ts";

export interface GroundCanvasProps {
  readonly scene: GroundScene | null;
  readonly size: ScreenSize | null;
  readonly layers: RefObject<GroundLayers | null>;
  readonly label: string;
}

/** The two canvases of the ground; `layers` is filled once they can be painted on. */
export function GroundCanvas({ scene, size, layers, label }: GroundCanvasProps) {
  const still = useRef<HTMLCanvasElement>(null);
  const moving = useRef<HTMLCanvasElement>(null);
  const width = size?.width ?? 0;
  const height = size?.height ?? 0;
  useEffect(() => {
    if (still.current === null || moving.current === null || width === 0 || height === 0) return;
    layers.current ??= groundLayers(still.current, moving.current);
    layers.current.resize(width, height, window.devicePixelRatio);
  }, [layers, width, height]);
  useEffect(() => {
    if (scene === null) return;
    layers.current?.setScene(scene);
    // The canvas cannot wait for a typeface by itself.
    let gone = false;
    void document.fonts.ready.then(() => {
      if (!gone) layers.current?.setScene(scene);
    });
    return () => {
      gone = true;
    };
  }, [layers, scene, width, height]);
  return (
    <>
      <canvas ref={still} className="layer" role="img" aria-label={label} />
      <canvas ref={moving} className="layer" aria-hidden="true" />
    </>
  );
}
