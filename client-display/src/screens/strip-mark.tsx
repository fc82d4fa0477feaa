import type { StripMark } from "./verdict-marks.ts";

/** One checkpoint's mark: the shape says it, the colour only repeats it. */
export function StripMarkPicture({ mark }: { readonly mark: StripMark }) {
  return (
    <svg className="strip-mark" viewBox="-50 -50 100 100" aria-hidden="true" data-mark={mark}>
      {shapes[mark]}
    </svg>
  );
}

const shapes: Readonly<Record<StripMark, React.ReactNode>> = {
  in: (
    <>
      <circle r="44" className="mark-good" />
      <path d="M-22 2L-6 20L24 -20" className="mark-tick" />
    </>
  ),
  beyond: <path d="M0 -42L44 34H-44Z" className="mark-off" />,
  short: <path d="M0 42L44 -34H-44Z" className="mark-off" />,
  unsure: (
    <>
      <circle r="44" className="mark-open" />
      <path d="M-14 -12A15 15 0 1 1 4 7Q0 9 0 17M0 28V30" className="mark-tick" />
    </>
  ),
  "not-read": <path d="M-36 0H36" className="mark-tick" />,
};
