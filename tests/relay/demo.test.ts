import { afterEach, beforeEach, expect, it } from "vitest";
import { fakeBook, fakeEffects, type FakeBook } from "./fakes.ts";
import { joinRelay, settle, type Joined } from "./join-relay.ts";
import { sampleCaptureState } from "./sample-messages.ts";
import { startRelay, type RunningRelay } from "./start-relay.ts";

let book: FakeBook;
let relay: RunningRelay;
let phone: Joined;

beforeEach(async () => {
  book = fakeBook();
  relay = await startRelay(fakeEffects(), book);
  phone = await join();
});
afterEach(async () => {
  phone.socket.disconnect();
  await relay.close();
});

const join = (): Promise<Joined> => joinRelay(relay.origin, "capture", { secret: relay.application.secret });

async function tell(page: Joined, source: "none" | "camera" | "demo"): Promise<void> {
  page.socket.emit("captureState", { ...sampleCaptureState(), source });
  await settle(page.socket);
}

it("R14 the book hears once that the demo golfer is shown, and once that it is not any more", async () => {
  for (const source of ["none", "demo", "demo", "demo", "camera", "camera"] as const) await tell(phone, source);
  expect(book.demos).toEqual([false, true, false]);
});

it("R14 of two phones the newest one says whether the demo golfer is shown", async () => {
  await tell(phone, "demo");
  const newer = await join();
  await tell(newer, "camera");
  await tell(phone, "demo");
  newer.socket.disconnect();
  expect(book.demos).toEqual([true, false]);
});
