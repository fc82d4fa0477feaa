import { useEffect } from "react";
import { useParts, useScreen, useUi } from "./parts.ts";

const noticeStays = 6_000;

export interface NoticeProps {
  /** The font for a sentence of so many letters, CSS pixels; the page's own where it is left out. */
  readonly fontFor?: (letters: number) => number;
}

/** One sentence at the edge of the page: what was done or refused, what somebody else changed, or what the relay could not do. */
export function Notice({ fontFor }: NoticeProps) {
  const { ui, store } = useParts();
  const notice = useUi((state) => state.notice);
  const trouble = useScreen((state) => state.trouble);
  const badMessages = useScreen((state) => state.badMessages);
  useEffect(() => {
    if (notice === null && trouble === null) return;
    const timer = setTimeout(() => {
      ui.setState({ notice: null });
      store.setState({ trouble: null });
    }, noticeStays);
    return () => {
      clearTimeout(timer);
    };
  }, [notice, trouble, ui, store]);
  const sentence =
    notice ??
    trouble ??
    (badMessages > 0
      ? `${badMessages} message${badMessages === 1 ? "" : "s"} from the relay could not be read and were left out: reload this page if the picture looks wrong.`
      : null);
  if (sentence === null) return null;
  return (
    <p className="notice" role="status" style={{ fontSize: fontFor?.(sentence.length) }}>
      {sentence}
    </p>
  );
}
