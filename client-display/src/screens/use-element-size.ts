import { useLayoutEffect, useState, type RefObject } from "react";
import type { ScreenSize } from "../sizes/viewing-sizes.ts";

/** The element's size in CSS pixels, kept up to date; null until it is laid out. */
export function useElementSize(element: RefObject<HTMLElement | null>): ScreenSize | null {
  const [size, setSize] = useState<ScreenSize | null>(null);
  useLayoutEffect(() => {
    if (element.current === null) return;
    const target = element.current;
    const measure = (): void => {
      setSize((known) => {
        const { clientWidth: width, clientHeight: height } = target;
        return known !== null && known.width === width && known.height === height ? known : { width, height };
      });
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(target);
    return () => {
      observer.disconnect();
    };
  }, [element]);
  return size;
}
