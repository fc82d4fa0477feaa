import type { ClipReport } from "@overcue/client-capture/pipeline/clip-report";

/** A shaft read by eye from a frame; degrees as atan2(dy, dx) from grip to head, y down. */
export interface ShaftLabel {
  readonly frame: number;
  readonly angle_deg: number;
}

export interface LabelledFrame {
  readonly frame: number;
  /** Measured less read by eye, degrees in (-180, 180]; null where no shaft was reported. */
  readonly missDegrees: number | null;
  readonly stated: { readonly status: string; readonly sdDegrees: number } | null;
  readonly hit: boolean;
}

/** Each labelled frame, and whether the report has it within `within` degrees. */
export function countLabels(report: ClipReport, labels: readonly ShaftLabel[], within: number): LabelledFrame[] {
  return labels.map(({ frame, angle_deg }) => {
    const shaft = report.frames[frame]?.shaft ?? null;
    if (shaft === null) return { frame, missDegrees: null, stated: null, hit: false };
    const turn = (shaft.angleDeg - angle_deg) % 360;
    const miss = turn > 180 ? turn - 360 : turn <= -180 ? turn + 360 : turn;
    return {
      frame,
      missDegrees: miss,
      stated: { status: shaft.status, sdDegrees: shaft.sdDeg },
      hit: Math.abs(miss) <= within,
    };
  });
}
