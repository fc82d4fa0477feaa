import { afterEach, beforeEach, expect, it } from "vitest";
import WebSocket from "ws";
import type { FromRelay } from "@overcue/shared-geometry/wire/events";
import type { Role } from "@overcue/shared-geometry/wire/hello";
import { protocolVersion } from "@overcue/shared-geometry/wire/version";
import { fakeBook, fakeEffects, type FakeBook, type FakeEffects } from "./fakes.ts";
import { heardOf, joinRelay, settle, type Joined, type Joining } from "./join-relay.ts";
import { sampleCaptureState, sampleEstimate, sampleRep } from "./sample-messages.ts";
import { startRelay, type RunningRelay } from "./start-relay.ts";

let effects: FakeEffects;
let book: FakeBook;
let relay: RunningRelay;
let pages: Joined[];

beforeEach(async () => {
  effects = fakeEffects();
  book = fakeBook();
  relay = await startRelay(effects, book);
  pages = [];
});
afterEach(async () => {
  for (const page of pages) page.socket.disconnect();
  await relay.close();
});

async function join(role: Role, joining: Partial<Joining> = {}): Promise<Joined> {
  const page = await joinRelay(relay.origin, role, { secret: relay.application.secret, ...joining });
  pages.push(page);
  return page;
}

/** Sends what no typed page would. */
function sendAnything(page: Joined, event: string, ...args: readonly unknown[]): void {
  const socket: { emit(event: string, ...args: readonly unknown[]): unknown } = page.socket;
  socket.emit(event, ...args);
}

async function nextOf(page: Joined, event: keyof FromRelay): Promise<unknown> {
  return new Promise((resolve) => page.socket.once(event, resolve));
}

const estimate = sampleEstimate(1);
const badEstimates: readonly (readonly [string, unknown])[] = [
  ["nothing", undefined],
  ["a word", "estimate"],
  ["a list", [estimate]],
  ["bytes", new Uint8Array([1, 2, 3])],
  ["an angle that is no number", { ...estimate, shaft: { ...estimate.shaft, angle: NaN } }],
  ["an endless time", { ...estimate, capturedAt: Infinity }],
  [
    "odds over one",
    { ...estimate, readOuts: { ...estimate.readOuts, elevation: { defined: true, value: 0, sd: -1 } } },
  ],
  ["an unknown status", { ...estimate, shaft: { status: "guessed" } }],
  ["a missing field", { ...estimate, hands: undefined }],
];

it.each(badEstimates)("R2 %s instead of an estimate is dropped, counted and told", async (_what, message) => {
  const phone = await join("capture");
  const ground = await join("display");
  const coach = await join("coach");
  sendAnything(phone, "estimate", message);
  await settle(phone.socket);
  await settle(ground.socket);
  expect(heardOf(ground, "estimate")).toEqual([]);
  expect(relay.application.drops().malformed).toBe(1);
  expect(heardOf(ground, "trouble")).toEqual([
    expect.stringMatching(/^The relay dropped a message.*estimate.*malformed/),
  ]);
  expect(heardOf(coach, "trouble")).toEqual([]);

  phone.socket.emit("estimate", estimate);
  await settle(phone.socket);
  await settle(ground.socket);
  expect(heardOf(ground, "estimate")).toEqual([estimate]);
});

it("R2 the sentence names the place of the fault", async () => {
  const phone = await join("capture");
  const ground = await join("display");
  sendAnything(phone, "captureState", { ...sampleCaptureState(), battery: 3 });
  await settle(phone.socket);
  await settle(ground.socket);
  expect(heardOf(ground, "trouble")[0]).toContain("battery");
});

it("R2 a malformed rep or request is answered with the fault", async () => {
  const phone = await join("capture");
  const ground = await join("display");
  const rep: unknown = await new Promise((resolve) => {
    sendAnything(phone, "rep", { ...sampleRep(), id: "1" }, resolve);
  });
  expect(JSON.stringify(rep)).toMatch(/"ok":false.*could not read this rep: id: /);
  const request: unknown = await new Promise((resolve) => {
    sendAnything(ground, "practice", { do: "teleport" }, resolve);
  });
  expect(JSON.stringify(request)).toMatch(/"ok":false.*could not read this request: do: /);
  expect(book.reps.size).toBe(0);
  expect(book.commands).toEqual([]);
});

it("R2 an unknown event is counted", async () => {
  const phone = await join("capture");
  sendAnything(phone, "format-disk", 1);
  await settle(phone.socket);
  expect(relay.application.drops()["unknown-event"]).toBe(1);
});

it("R3 a number written too large for a double is refused", async () => {
  const ground = await join("display");
  const raw = await openRawPhone(relay);
  const text = JSON.stringify(["estimate", estimate]).replace('"capturedAt":0', '"capturedAt":1e999');
  const told = nextOf(ground, "trouble");
  raw.send(`42${text}`);
  expect(await told).toMatch(/malformed.*capturedAt/);
  expect(heardOf(ground, "estimate")).toEqual([]);
  raw.close();
});

it("R4 an oversized message over websocket is counted and told, and the others go on", async () => {
  const phone = await join("capture");
  const ground = await join("display");
  const told = nextOf(ground, "trouble");
  sendAnything(phone, "rep", "x".repeat(1_000_001));
  expect(await told).toMatch(/oversized.*over 1000000 bytes/);
  expect(relay.application.drops().oversized).toBe(1);
  const again = await join("capture");
  expect(await again.socket.emitWithAck("rep", sampleRep())).toEqual({ ok: true });
});

it("R4 the same over long polling", async () => {
  const phone = await join("capture", { transports: ["polling"] });
  const ground = await join("display");
  const told = nextOf(ground, "trouble");
  sendAnything(phone, "rep", "x".repeat(1_000_001));
  expect(await told).toMatch(/oversized/);
  expect(relay.application.drops().oversized).toBe(1);
});

it("R5 a page may not send another role's messages", async () => {
  const phone = await join("capture");
  const ground = await join("display");
  const coach = await join("coach");
  sendAnything(ground, "estimate", estimate);
  sendAnything(coach, "rep", sampleRep(), () => undefined);
  sendAnything(phone, "practice", { do: "pause", paused: true }, () => undefined);
  for (const page of pages) await settle(page.socket);
  expect(relay.application.drops()["not-for-this-role"]).toBe(3);
  expect(heardOf(coach, "estimate")).toEqual([]);
  expect(book.reps.size).toBe(0);
  expect(book.commands).toEqual([]);
});

it("R12 a flood of bad messages makes one sentence each five seconds, with the number", async () => {
  const phone = await join("capture");
  const ground = await join("display");
  for (let i = 0; i < 100; i += 1) sendAnything(phone, "estimate", i);
  await settle(phone.socket);
  effects.time += 5_000;
  sendAnything(phone, "estimate", null);
  await settle(phone.socket);
  await settle(ground.socket);
  expect(relay.application.drops().malformed).toBe(101);
  expect(heardOf(ground, "trouble")).toEqual([
    expect.stringContaining("dropped a message"),
    expect.stringContaining("dropped 100 messages"),
  ]);
});

/** A phone that speaks the wire's own text, so that it can send what a JSON writer would not. */
async function openRawPhone({ origin, application }: RunningRelay): Promise<WebSocket> {
  const socket = new WebSocket(`${origin.replace("https", "wss")}/socket.io/?EIO=4&transport=websocket`, {
    rejectUnauthorized: false,
  });
  await new Promise<void>((resolve, reject) => {
    socket.once("error", reject);
    socket.on("message", (data) => {
      const text = data instanceof Uint8Array ? new TextDecoder().decode(data) : "";
      const auth = { role: "capture", secret: application.secret, protocol: protocolVersion };
      if (text.startsWith("0")) socket.send(`40${JSON.stringify(auth)}`);
      if (text.startsWith("40")) resolve();
    });
  });
  return socket;
}
