/** What a golfer is told where the camera does not open. */
export function cameraTrouble(error: unknown): string {
  const name = error instanceof DOMException ? error.name : "";
  switch (name) {
    case "NotAllowedError":
      return "The camera was not allowed: allow it for this page in the browser's site settings, then try again.";
    case "NotFoundError":
      return "No camera was found on this device: choose a recorded clip or the demo golfer.";
    case "NotReadableError":
    case "AbortError":
      return "The camera is in use by another program: close that one, then try again.";
    case "SecurityError":
      return "This browser's settings forbid cameras: choose a recorded clip or the demo golfer.";
    default:
      return `The camera did not open (${error instanceof Error ? error.message : String(error)}): try again or choose a recorded clip.`;
  }
}
