/**
 * A drawn person, so that warming up runs both models: on a picture without anybody the second one never starts.
 * Limbs as thick lines on a plain ground, in parts of the picture's height.
 */
const limbs: readonly (readonly [colour: string, width: number, ...path: number[]])[] = [
  ["#3b4a66", 0.075, 0.45, 0.52, 0.44, 0.7, 0.43, 0.88],
  ["#3b4a66", 0.075, 0.55, 0.52, 0.56, 0.7, 0.57, 0.88],
  ["#222", 0.05, 0.43, 0.9, 0.4, 0.92],
  ["#222", 0.05, 0.57, 0.9, 0.6, 0.92],
  ["#b9423a", 0.17, 0.5, 0.32, 0.5, 0.48],
  ["#b9423a", 0.065, 0.42, 0.28, 0.37, 0.4],
  ["#b9423a", 0.065, 0.58, 0.28, 0.63, 0.4],
  ["#d9a887", 0.045, 0.37, 0.4, 0.36, 0.52],
  ["#d9a887", 0.045, 0.63, 0.4, 0.64, 0.52],
  ["#d9a887", 0.06, 0.5, 0.22, 0.5, 0.24],
];

export function drawFigure(context: OffscreenCanvasRenderingContext2D, size: number): void {
  context.fillStyle = "#9db48a";
  context.fillRect(0, 0, size, size);
  context.lineCap = "round";
  context.lineJoin = "round";
  for (const [colour, width, ...path] of limbs) {
    context.strokeStyle = colour;
    context.lineWidth = width * size;
    context.beginPath();
    for (let i = 0; i + 1 < path.length; i += 2) context.lineTo((path[i] ?? 0) * size, (path[i + 1] ?? 0) * size);
    context.stroke();
  }
  const face = (colour: string, x: number, y: number, radiusX: number, radiusY: number): void => {
    context.fillStyle = colour;
    context.beginPath();
    context.ellipse(x * size, y * size, radiusX * size, radiusY * size, 0, 0, 2 * Math.PI);
    context.fill();
  };
  face("#d9a887", 0.5, 0.15, 0.055, 0.07);
  face("#4a3526", 0.5, 0.1, 0.056, 0.04);
  for (const x of [0.48, 0.52]) face("#222", x, 0.145, 0.008, 0.006);
  face("#a8574f", 0.5, 0.185, 0.018, 0.006);
}
