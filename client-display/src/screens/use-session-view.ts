import type { SessionView } from "@overcue/shared-geometry/wire/practice";
import { useEffect, useState } from "react";
import { useParts, useScreen } from "./parts.ts";

/** The books, asked for anew whenever the practice moves on; null until the relay has answered. */
export function useSessionView(): SessionView | null {
  const { link } = useParts();
  const revision = useScreen((state) => state.practice?.revision ?? null);
  const [view, setView] = useState<SessionView | null>(null);
  useEffect(() => {
    let gone = false;
    void link.sessionView().then((answer) => {
      if (!gone && answer !== null) setView(answer);
    });
    return () => {
      gone = true;
    };
  }, [link, revision]);
  return view;
}
