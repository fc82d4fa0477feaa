import { useMemo, useRef } from "react";
import { fitSizes } from "../sizes/fit-sizes.ts";
import { readableAt } from "../sizes/readable-from.ts";
import { viewingOf } from "../store/display-settings.ts";
import { useParts, useScreen, useSettings, useUi } from "./parts.ts";
import { PlaceChoice } from "./place-choice.tsx";
import { setUpList, type SetUpItem } from "./set-up-list.ts";
import { useElementSize } from "./use-element-size.ts";

/** The checklist that checks itself, and one sentence on what to do next. */
export function SetUpScreen() {
  const parts = useParts();
  const capture = useScreen((state) => state.capture);
  const phones = useScreen((state) => state.peers?.capture ?? 0);
  const spaceClear = useUi((state) => state.spaceClear);
  const settings = useSettings((all) => all);
  const root = useRef<HTMLElement>(null);
  const size = useElementSize(root);
  const sizes = useMemo(() => fitSizes(size ?? { width: 1280, height: 800 }, viewingOf(settings)), [size, settings]);
  const { items, next } = setUpList({
    phones,
    capture,
    spaceClear,
    readable: {
      ...readableAt(size ?? { width: 1280, height: 800 }, viewingOf(settings)),
      viewingDistance: settings.viewingDistance,
    },
  });
  const start = (): void => {
    parts.ui.setState({ setUpDone: true, overlay: "none" });
    parts.settings.setState({ knownPlace: true });
  };
  return (
    <main className="set-up" data-screen="set-up" ref={root}>
      <section className="set-up-next" style={{ fontSize: sizes.mustRead }}>
        <h1 className="small-title">{next === null ? "All set" : "Next"}</h1>
        <p role="status" data-part="next">
          {next ?? "Ready. Take your stance."}
        </p>
      </section>
      <section className="set-up-checks">
        <h2>Set-up at: {settings.placeName}</h2>
        <ul className="checks">
          {items.map((item) => (
            <CheckLine key={item.id} item={item} explain={!settings.knownPlace && item.state === "problem"} />
          ))}
        </ul>
        <label className="chip">
          <input
            type="checkbox"
            checked={spaceClear}
            onChange={(event) => {
              parts.ui.setState({ spaceClear: event.target.checked });
            }}
          />
          Space clear
        </label>
        <div className="buttons">
          <button type="button" className="main-button" data-main autoFocus onClick={start}>
            {next === null ? "Start" : "Start anyway"}
          </button>
          <button
            type="button"
            onClick={() => {
              parts.ui.setState({ overlay: "settings" });
            }}
          >
            Screen and sound
          </button>
        </div>
      </section>
      <section className="set-up-place">
        <PlaceChoice />
      </section>
    </main>
  );
}

const stateWords: Readonly<Record<SetUpItem["state"], string>> = {
  ok: "done",
  "not-yet": "not yet",
  problem: "to put right",
  unknown: "cannot tell",
};

function CheckLine({ item, explain }: { readonly item: SetUpItem; readonly explain: boolean }) {
  return (
    <li data-state={item.state}>
      <svg viewBox="-12 -12 24 24" aria-hidden="true">
        {checkShapes[item.state]}
      </svg>
      <span>
        {item.words}
        <span className="check-state">{` · ${stateWords[item.state]}`}</span>
        {explain && <span className="check-todo">{item.todo}</span>}
      </span>
    </li>
  );
}

const checkShapes: Readonly<Record<SetUpItem["state"], React.ReactNode>> = {
  ok: (
    <>
      <circle r="10" className="mark-good" />
      <path d="M-5 0L-1 5L6 -5" className="mark-tick" />
    </>
  ),
  "not-yet": <circle r="9" className="mark-open" />,
  problem: <path d="M0 -10L11 9H-11Z" className="mark-off" />,
  unknown: <path d="M-8 0H8" className="mark-tick" />,
};
