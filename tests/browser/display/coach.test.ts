import { randomUUID } from "node:crypto";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { openPracticeBook } from "@overcue/server/book/open-practice-book";
import { machineEffects } from "@overcue/server/machine-effects";
import type { PracticeState } from "@overcue/shared-geometry/wire/practice";
import { captureState, repOf } from "../../fakes/practice-scenes.ts";
import { joinRelay, type Joined } from "../../relay/join-relay.ts";
import { startRelay, type RunningRelay } from "../../relay/start-relay.ts";
import { launchChromium } from "../chromium.ts";

/** The true relay and the true book, a phone's socket that sends reps, two coaches' pages and a ground screen. */
const robin = "Robin (invented)";
const alex = "Alex (invented)";
const patience = { timeout: 20_000 };

let browser: Browser;
let relay: RunningRelay;
let book: ReturnType<typeof openPracticeBook>;
let folder: string;
let phone: Joined;
let opened: Page[];
let relayRuns: boolean;

beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(async () => {
  await browser.close();
});
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "overcue-coaches-"));
  book = openPracticeBook(join(folder, "practice.book"), { now: () => machineEffects.relayTime(), newId: randomUUID });
  relay = await startRelay(machineEffects, book);
  book.command({ do: "start-practice" }, "test");
  phone = await joinRelay(relay.origin, "capture", { secret: relay.application.secret });
  phone.socket.emit("captureState", captureState());
  opened = [];
  relayRuns = true;
});
afterEach(async () => {
  phone.socket.close();
  for (const page of opened) await page.context().close();
  if (relayRuns) await relay.close();
  book.close();
  await rm(folder, { recursive: true, force: true });
});

/** `lagMs`: what the relay says arrives so much later. */
async function open(role: "coach" | "display", settings: Readonly<Record<string, unknown>>, lagMs = 0): Promise<Page> {
  const size = role === "coach" ? { width: 390, height: 844 } : { width: 1280, height: 800 };
  const context = await browser.newContext({ ignoreHTTPSErrors: true, viewport: size });
  const page = await context.newPage();
  opened.push(page);
  page.setDefaultTimeout(patience.timeout);
  await page.addInitScript((stored) => {
    localStorage.setItem("overcue-screen", JSON.stringify(stored));
  }, settings);
  if (lagMs > 0) {
    await page.routeWebSocket(/socket\.io/, (socket) => {
      socket.connectToServer().onMessage((message) => {
        setTimeout(() => {
          socket.send(message);
        }, lagMs);
      });
    });
  }
  await page.goto(relay.page(role));
  return page;
}

async function openCoach(personName: string, lagMs = 0): Promise<Page> {
  const page = await open("coach", { personName }, lagMs);
  await page.waitForSelector("[data-screen=coach] select");
  return page;
}

async function openGround(): Promise<Page> {
  const page = await open("display", { cautionsRead: true });
  await page.click("[data-screen=set-up] [data-main]");
  await page.waitForSelector("[data-screen=practice]");
  return page;
}

/** Waits until the book says so: what a page shows by itself is no proof. */
async function bookSays(ask: (state: PracticeState) => unknown, answer: unknown): Promise<void> {
  await expect.poll(() => ask(book.state()), patience).toEqual(answer);
}

async function sendRep(back: number, down: number): Promise<string> {
  const rep = repOf(randomUUID(), machineEffects.relayTime(), back, down);
  expect(await phone.socket.emitWithAck("rep", rep)).toEqual({ ok: true });
  return rep.id;
}

/** What the slider's page shows, whole centimetres. */
const sliderOf = async (page: Page): Promise<number> =>
  Number(await page.locator(".aim-slider input[type=range]").inputValue());

const cueOf = (state: PracticeState): number =>
  Math.round(100 * (state.aims.find(({ exaggerateBy }) => exaggerateBy !== 0)?.exaggerateBy ?? NaN));

test("D17 drill, stage, exaggerate by, lock and note reach the book", async () => {
  const coach = await openCoach(robin);
  await coach.getByLabel("Drill").selectOption("low-road-high-road");
  await bookSays(({ drill }) => drill.id, "low-road-high-road");
  await coach.getByText("flow", { exact: true }).click();
  await bookSays(({ stage }) => stage, "flow");

  const slider = coach.locator(".aim-slider input[type=range]");
  await expect.poll(() => sliderOf(coach), patience).toBe(cueOf(book.state()));
  const before = cueOf(book.state());
  await slider.press("ArrowLeft");
  await slider.press("ArrowLeft");
  await bookSays(cueOf, before - 2);
  // Dragged with a finger: told once, when it lets go.
  const box = await slider.boundingBox();
  if (box === null) throw new Error("the slider is not laid out");
  const { revision } = book.state();
  await coach.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await coach.mouse.down();
  await coach.mouse.move(box.x + box.width * 0.6, box.y + box.height / 2, { steps: 5 });
  const dragged = await sliderOf(coach);
  expect(book.state().revision).toBe(revision);
  await coach.mouse.up();
  await bookSays(cueOf, dragged);
  expect(book.state().revision).toBe(revision + 1);

  await coach.getByText("Lock the cue").click();
  await bookSays(({ cueLocked }) => cueLocked, true);
  await expect.poll(() => slider.isDisabled(), patience).toBe(true);

  await coach.getByLabel("Note for the book").fill("Better when the first move is slow.");
  await coach.getByRole("button", { name: "Keep the note" }).click();
  await expect
    .poll(() => book.sessionView().notes, patience)
    .toMatchObject([{ by: robin, text: "Better when the first move is slow." }]);
  await expect.poll(() => coach.getByLabel("Note for the book").inputValue(), patience).toBe("");
});

test("D17 steps of exaggerate by that are taken faster than the relay answers are all kept", async () => {
  const coach = await openCoach(robin, 400);
  const slider = coach.locator(".aim-slider input[type=range]");
  await expect.poll(() => sliderOf(coach), patience).toBe(cueOf(book.state()));
  const before = cueOf(book.state());
  for (let step = 0; step < 3; step++) await slider.press("ArrowLeft");
  expect(await sliderOf(coach)).toBe(before - 3);
  await bookSays(cueOf, before - 3);
});

test("D17 a rep is voided, taken back in and starred, and its point is on the coach's ground", async () => {
  const coach = await openCoach(robin);
  const kept = await sendRep(0.3, 0.01);
  const second = await sendRep(0.1, 0.2);
  const repOfId = (id: string) => book.sessionView().reps.find(({ repId }) => repId === id);
  const newest = coach.locator(".rep-list li").first();
  await newest.getByText("arm level back 10 ± 3 cm").waitFor();
  await newest.getByRole("button", { name: "Void" }).click();
  await expect.poll(() => repOfId(second)?.voided, patience).toBe(true);
  await newest.getByRole("button", { name: "Take back in" }).click();
  await expect.poll(() => repOfId(second)?.voided, patience).toBe(false);
  await newest.getByRole("button", { name: "Star" }).click();
  await expect.poll(() => repOfId(second)?.starred, patience).toBe(true);
  expect(repOfId(kept)).toMatchObject({ starred: false, voided: false });
  expect(await coach.locator(".review-ground canvas").getAttribute("aria-label")).toContain("last 2 reps");
});

test("D17 the coach switches the ground screen between live, quiet and session", async () => {
  const ground = await openGround();
  const coach = await openCoach(robin);
  await coach.getByText("session", { exact: true }).click();
  await ground.waitForSelector("[data-screen=session]");
  await coach.getByText("quiet", { exact: true }).click();
  await ground.waitForSelector("[data-screen=practice]");
  await ground.getByText("answers only").waitFor();
  await coach.getByText("live", { exact: true }).click();
  await bookSays(({ view }) => view, "live");
  await expect.poll(() => ground.getByText("answers only").count(), patience).toBe(0);
});

test("D17 of several coaches the last change holds, and everybody reads whose it was", async () => {
  const ground = await openGround();
  const [first, second] = [await openCoach(robin), await openCoach(alex)];
  await first.getByText("2 coaches").waitFor();

  await first.getByText("flow", { exact: true }).click();
  for (const page of [first, second, ground]) await page.getByText(`${robin}: changed the stage`).waitFor();
  await second.getByText("added speed", { exact: true }).click();
  for (const page of [first, second, ground]) await page.getByText(`${alex}: changed the stage`).waitFor();
  await bookSays(({ stage }) => stage, "added-speed");
  for (const page of [first, second]) {
    const chosen = page.locator(".chip:has(input[name=stage]:checked)");
    await expect.poll(() => chosen.textContent(), patience).toBe("added speed");
  }

  // Both at the same moment: whichever the relay heard last holds, on every page alike.
  await Promise.all([
    first.locator(".aim-slider input[type=range]").press("ArrowLeft"),
    second.locator(".aim-slider input[type=range]").press("ArrowRight"),
  ]);
  await bookSays(({ lastChange }) => lastChange?.what.startsWith("set exaggerate by"), true);
  const settled = async (): Promise<boolean> =>
    (await Promise.all([first, second].map(sliderOf))).every((shown) => shown === cueOf(book.state()));
  await expect.poll(settled, patience).toBe(true);
  const { lastChange } = book.state();
  for (const page of [first, second]) {
    await page.locator(".last-change", { hasText: `${lastChange?.by}: ${lastChange?.what}` }).waitFor();
  }
});

test("D17 a refusal is told to who asked, and what was typed stays", async () => {
  const [first, second] = [await openCoach(robin), await openCoach(alex)];
  await second.getByLabel("Note for the book").fill("kept in the field");
  await relay.close();
  relayRuns = false;
  await second.getByRole("button", { name: "Keep the note" }).click();
  await second.getByText("The relay did not answer: nothing was changed.").waitFor();
  expect(await second.getByLabel("Note for the book").inputValue()).toBe("kept in the field");
  expect(await first.locator(".notice").count()).toBe(0);
  expect(book.sessionView().notes).toEqual([]);
});
