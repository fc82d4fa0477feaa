import type { ReactNode } from "react";
import { useParts } from "./parts.ts";

/** A page in front of the practice, to be read or changed and then closed. */
export function Panel({
  name,
  title,
  children,
}: {
  readonly name: string;
  readonly title: string;
  readonly children: ReactNode;
}) {
  const { ui } = useParts();
  return (
    <main className="panel" data-screen={name}>
      <header className="panel-head">
        <h1>{title}</h1>
        <button
          type="button"
          className="close"
          data-close
          onClick={() => {
            ui.setState({ overlay: "none" });
          }}
        >
          Close
        </button>
      </header>
      {children}
    </main>
  );
}
