import type { RequestHandler } from "express";

const contentPolicy = [
  "default-src 'self'",
  // The pose model's runtime is WebAssembly.
  "script-src 'self' 'wasm-unsafe-eval'",
  "connect-src 'self'",
  "worker-src 'self' blob:",
  "img-src 'self' blob: data:",
  "media-src 'self' blob:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join("; ");

/**
 * Keeps the pages to themselves: nothing is loaded from or sent to another host, and no other page may look in.
 * The opener and embedder policies also give the pages exact timers and shared memory.
 */
export const securityHeaders: RequestHandler = (_request, response, next) => {
  response.set({
    "Content-Security-Policy": contentPolicy,
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Embedder-Policy": "require-corp",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Permissions-Policy":
      "camera=(self), accelerometer=(self), gyroscope=(self), screen-wake-lock=(self), microphone=(), geolocation=()",
    "Referrer-Policy": "no-referrer",
    "X-Content-Type-Options": "nosniff",
  });
  next();
};
