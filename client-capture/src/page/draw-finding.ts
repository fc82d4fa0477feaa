import { landmarkIndex, type Body } from "../pipeline/body.ts";
import type { StepOutput } from "../pipeline/step.ts";

/** Okabe and Ito's colours; a dark edge keeps each line visible on grass and on sky. */
const colours = { shaft: "#f0e442", predicted: "#ffffff", body: "#56b4e9", edge: "#000000" } as const;

/** Pairs of landmarks that are joined when the body is drawn. */
const bones: readonly (readonly [keyof typeof landmarkIndex, keyof typeof landmarkIndex])[] = [
  ["leftShoulder", "rightShoulder"],
  ["leftHip", "rightHip"],
  ["leftShoulder", "leftHip"],
  ["rightShoulder", "rightHip"],
  ["leftShoulder", "leftElbow"],
  ["leftElbow", "leftWrist"],
  ["rightShoulder", "rightElbow"],
  ["rightElbow", "rightWrist"],
  ["leftHip", "leftKnee"],
  ["leftKnee", "leftAnkle"],
  ["rightHip", "rightKnee"],
  ["rightKnee", "rightAnkle"],
  ["leftHeel", "leftToe"],
  ["rightHeel", "rightToe"],
];

const leastVisibility = 0.3;

/** The found body and shaft, in pixels of the picture. A predicted shaft is dashed. */
export function drawFinding(context: CanvasRenderingContext2D, { picture, body, hands, shaft }: StepOutput): void {
  const unit = Math.max(picture.width, picture.height) / 400;
  context.lineCap = "round";
  if (body !== null && hands !== "lost") drawBody(context, body, unit);
  const found = shaft.now;
  if (found.status === "lost") return;
  const { grip, head, angle } = found;
  const reach = picture.height / 4;
  const end = head ?? { x: grip.x + reach * Math.cos(angle), y: grip.y + reach * Math.sin(angle) };
  const tracked = found.status === "tracked";
  const path = (): void => {
    context.beginPath();
    context.moveTo(grip.x, grip.y);
    context.lineTo(end.x, end.y);
  };
  context.setLineDash(tracked ? [] : [4 * unit, 4 * unit]);
  path();
  edged(context, tracked ? colours.shaft : colours.predicted, 2.2 * unit, unit);
  context.setLineDash([]);
  context.beginPath();
  context.arc(grip.x, grip.y, 3.2 * unit, 0, 2 * Math.PI);
  edged(context, tracked ? colours.shaft : colours.predicted, 1.8 * unit, unit);
}

function drawBody(context: CanvasRenderingContext2D, body: Body, unit: number): void {
  for (const [from, to] of bones) {
    const a = body.landmarks[landmarkIndex[from]];
    const b = body.landmarks[landmarkIndex[to]];
    if (a === undefined || b === undefined || Math.min(a.visibility, b.visibility) < leastVisibility) continue;
    context.beginPath();
    context.moveTo(a.x, a.y);
    context.lineTo(b.x, b.y);
    edged(context, colours.body, 1.4 * unit, 0.7 * unit);
  }
}

function edged(context: CanvasRenderingContext2D, colour: string, width: number, edge: number): void {
  context.strokeStyle = colours.edge;
  context.lineWidth = width + 2 * edge;
  context.stroke();
  context.strokeStyle = colour;
  context.lineWidth = width;
  context.stroke();
}
