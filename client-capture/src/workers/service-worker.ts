/// <reference lib="webworker" />
import { fileWay } from "./file-way.ts";

declare const self: ServiceWorkerGlobalScope;

interface KeptFiles {
  readonly build: string;
  readonly files: readonly string[];
}

/** What this build's page consists of: the build puts it before this script. */
declare const overcueKeptFiles: KeptFiles;

const { build, files } = overcueKeptFiles;
const prefix = "overcue-phone-";
const cacheName = prefix + build;
/** A relay that has not begun to answer for the page after this long, milliseconds, is taken for gone. */
const patience = 4000;

self.addEventListener("install", (event) => {
  event.waitUntil(keepAll());
});
self.addEventListener("activate", (event) => {
  event.waitUntil(takeOver());
});
self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (url.origin !== self.location.origin) return;
  switch (fileWay(request.method, url.pathname)) {
    case "kept":
      event.respondWith(keptFirst(request));
      return;
    case "relay-first":
      event.respondWith(relayFirst(request));
      return;
    case "relay-only":
      return;
  }
});

/** All of it or nothing: half an app is none. Asked of the relay itself, never of the browser's older copies. */
async function keepAll(): Promise<void> {
  const cache = await caches.open(cacheName);
  await cache.addAll(files.map((file) => new Request(file, { cache: "no-cache" })));
  await self.skipWaiting();
}

async function takeOver(): Promise<void> {
  for (const name of await caches.keys()) {
    if (name.startsWith(prefix) && name !== cacheName) await caches.delete(name);
  }
  await self.clients.claim();
}

async function keptFirst(request: Request): Promise<Response> {
  return (await caches.match(request)) ?? (await fetch(request));
}

async function relayFirst(request: Request): Promise<Response> {
  const giveUp = new AbortController();
  const timer = setTimeout(() => {
    giveUp.abort();
  }, patience);
  try {
    return await fetch(request, { cache: "no-cache", signal: giveUp.signal });
  } catch (error) {
    const kept = await caches.match(request, { ignoreSearch: true });
    if (kept !== undefined) return kept;
    throw error;
  } finally {
    // Only the answer's beginning is waited for: a large file may take its time.
    clearTimeout(timer);
  }
}
