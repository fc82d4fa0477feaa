import { useSyncExternalStore } from "react";
import type { ScreenSize } from "../sizes/viewing-sizes.ts";

const hear = (changed: () => void): (() => void) => {
  window.addEventListener("resize", changed);
  return () => {
    window.removeEventListener("resize", changed);
  };
};

/** The window's size in CSS pixels, kept up to date. */
export function useWindowSize(): ScreenSize {
  const width = useSyncExternalStore(hear, () => window.innerWidth);
  const height = useSyncExternalStore(hear, () => window.innerHeight);
  return { width, height };
}
