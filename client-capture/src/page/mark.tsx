import type { ReactNode } from "react";
import type { Standing, Told } from "./words.ts";

/** A shape for each standing, so that colour never speaks alone: a tick, an open ring, a triangle, a bar. */
const shapes: Readonly<Record<Standing, ReactNode>> = {
  good: <path d="M3 9.5 7.5 14 15 4" fill="none" strokeWidth="3.4" />,
  waiting: <circle cx="9" cy="9" r="5.6" fill="none" strokeWidth="3" />,
  bad: <path d="M9 2.2 16.6 15.6H1.4Z" strokeWidth="1" fill="currentColor" />,
  open: <path d="M3.5 9h11" fill="none" strokeWidth="3" />,
};

export function StandingShape({ standing }: { readonly standing: Standing }) {
  return (
    <svg viewBox="0 0 18 18" aria-hidden="true" stroke="currentColor">
      {shapes[standing]}
    </svg>
  );
}

export function Mark({ told }: { readonly told: Told }) {
  return (
    <p className={`mark mark-${told.standing}`}>
      <StandingShape standing={told.standing} />
      <span>{told.words}</span>
    </p>
  );
}
