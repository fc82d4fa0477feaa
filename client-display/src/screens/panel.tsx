import type { CSSProperties, ReactNode } from "react";
import { useParts } from "./parts.ts";

/** A page in front of the practice, to be read or changed and then closed. */
export function Panel({
  name,
  title,
  choiceSize,
  children,
}: {
  readonly name: string;
  readonly title: string;
  /** The font of its list of choices, CSS pixels; the panel's own where it is left out. */
  readonly choiceSize?: number;
  readonly children: ReactNode;
}) {
  const { ui } = useParts();
  return (
    <main
      className="panel"
      data-screen={name}
      style={choiceSize === undefined ? {} : ({ "--choice": `${choiceSize}px` } as CSSProperties)}
    >
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
