/** How the service worker answers for a file: out of what it keeps, from the relay while it is there, or not at all. */
export type FileWay = "kept" | "relay-first" | "relay-only";

const page = "/phone/";

/**
 * A name with a content's hash never means anything else, so what is kept of it is right. Everything else is the relay's to say while it can be
 * reached: a page or a model that was kept never stands in for a newer one. What names the build, and what is not this page's, is left alone.
 */
export function fileWay(method: string, path: string): FileWay {
  if (method !== "GET" || !path.startsWith(page)) return "relay-only";
  if (path === `${page}build.json` || path === `${page}service-worker.js`) return "relay-only";
  return path.startsWith(`${page}assets/`) ? "kept" : "relay-first";
}
