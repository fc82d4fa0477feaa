import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Role } from "@overcue/shared-geometry/wire/hello";
import { fakeBook, fakeEffects, type FakeBook, type FakeEffects } from "./fakes.ts";
import { heardOf, joinRelay, settle, type Joined, type Joining } from "./join-relay.ts";
import { sampleCaptureState, sampleCheckpoint, sampleEstimate, sampleRep } from "./sample-messages.ts";
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

async function settleAll(): Promise<void> {
  for (const page of pages) await settle(page.socket);
}

describe("live messages", () => {
  it("R1 an estimate reaches screens and coaches and no phone", async () => {
    const phone = await join("capture");
    const ground = await join("display");
    const coach = await join("coach");
    phone.socket.emit("estimate", sampleEstimate(7));
    await settleAll();
    expect(heardOf(ground, "estimate")).toEqual([sampleEstimate(7)]);
    expect(heardOf(coach, "estimate")).toEqual([sampleEstimate(7)]);
    expect(heardOf(phone, "estimate")).toEqual([]);
  });

  it("R1 checkpoints and the phone's state take the same way", async () => {
    const phone = await join("capture");
    const ground = await join("display");
    const checkpoint = sampleCheckpoint();
    phone.socket.emit("checkpoint", checkpoint);
    phone.socket.emit("captureState", sampleCaptureState());
    await settleAll();
    expect(heardOf(ground, "checkpoint")).toEqual([checkpoint]);
    expect(heardOf(ground, "captureState")).toEqual([sampleCaptureState()]);
    expect(phone.heard.map((entry) => entry.event)).not.toContain("checkpoint");
    expect(phone.heard.map((entry) => entry.event)).not.toContain("captureState");
  });

  it("R7 who joins late is told how things stand, and no old estimate", async () => {
    const phone = await join("capture");
    const rep = sampleRep();
    phone.socket.emit("estimate", sampleEstimate(1));
    phone.socket.emit("checkpoint", sampleCheckpoint(rep.id));
    phone.socket.emit("captureState", sampleCaptureState());
    await phone.socket.emitWithAck("rep", rep);
    const ground = await join("display");
    expect(heardOf(ground, "practice")).toHaveLength(1);
    expect(heardOf(ground, "captureState")).toEqual([sampleCaptureState()]);
    expect(heardOf(ground, "checkpoint")).toEqual([sampleCheckpoint(rep.id)]);
    expect(heardOf(ground, "rep")).toEqual([rep]);
    expect(heardOf(ground, "estimate")).toEqual([]);
  });

  it("R15 what was told of a movement that was no rep is taken back, and not told to who joins late", async () => {
    const phone = await join("capture");
    const ground = await join("display");
    const checkpoint = sampleCheckpoint();
    const noRep = { repId: checkpoint.repId, why: "club-lost" } as const;
    phone.socket.emit("checkpoint", checkpoint);
    phone.socket.emit("noRep", noRep);
    await settleAll();
    expect(heardOf(ground, "noRep")).toEqual([noRep]);
    const late = await join("coach");
    await settle(late.socket);
    expect(heardOf(late, "checkpoint")).toEqual([]);
  });

  it("R7 the state of a phone that left is not told", async () => {
    const phone = await join("capture");
    const ground = await join("display");
    phone.socket.emit("captureState", sampleCaptureState());
    await settle(phone.socket);
    const gone = new Promise((resolve) => ground.socket.once("peers", resolve));
    phone.socket.disconnect();
    expect(await gone).toEqual({ capture: 0, display: 1, coach: 0 });
    const late = await join("coach");
    expect(heardOf(late, "captureState")).toEqual([]);
  });

  it("R8 the newest phone's live messages count, and the older one's again when it leaves", async () => {
    const older = await join("capture");
    const newer = await join("capture");
    const ground = await join("display");
    older.socket.emit("estimate", sampleEstimate(1));
    // An estimate does not wait behind the sentence about the first one: it would be left out.
    await settleAll();
    newer.socket.emit("estimate", sampleEstimate(2));
    await settleAll();
    expect(heardOf(ground, "estimate")).toEqual([sampleEstimate(2)]);
    expect(relay.application.drops()["another-phone"]).toBe(1);

    const gone = new Promise((resolve) => ground.socket.once("peers", resolve));
    newer.socket.disconnect();
    await gone;
    older.socket.emit("estimate", sampleEstimate(3));
    await settle(older.socket);
    await settle(ground.socket);
    expect(heardOf(ground, "estimate")).toEqual([sampleEstimate(2), sampleEstimate(3)]);
  });

  it("R10 everybody is told who is there", async () => {
    const phone = await join("capture");
    await join("display");
    await join("coach");
    await settle(phone.socket);
    expect(heardOf(phone, "peers").at(-1)).toEqual({ capture: 1, display: 1, coach: 1 });
  });

  it.each([[["polling" as const]], [["websocket" as const]], [["polling" as const, "websocket" as const]]])(
    "R11 serves over %j",
    async (transports) => {
      const phone = await join("capture", { transports });
      const ground = await join("display", { transports });
      const told = new Promise((resolve) => ground.socket.once("rep", resolve));
      const rep = sampleRep();
      expect(await phone.socket.emitWithAck("rep", rep)).toEqual({ ok: true });
      expect(await told).toEqual(rep);
    },
  );

  it("answers its own clock", async () => {
    const phone = await join("capture");
    effects.time = 123_456.75;
    expect(await settle(phone.socket)).toBe(123_456.75);
  });
});

describe("reps", () => {
  it("R6 are acknowledged after the book wrote them, not before", async () => {
    book.writesAtOnce = false;
    const phone = await join("capture");
    const ground = await join("display");
    let answered = false;
    const answer = phone.socket.emitWithAck("rep", sampleRep()).then((result) => {
      answered = true;
      return result;
    });
    await settleAll();
    expect(answered).toBe(false);
    expect(heardOf(ground, "rep")).toEqual([]);
    book.writeOut();
    expect(await answer).toEqual({ ok: true });
    await settle(ground.socket);
    expect(heardOf(ground, "rep")).toHaveLength(1);
  });

  it("R6 sent again after a lost acknowledgement make one rep, told once", async () => {
    book.writesAtOnce = false;
    const ground = await join("display");
    const first = await join("capture");
    const rep = sampleRep();
    first.socket.emit("rep", rep, () => undefined);
    await settle(first.socket);
    // The connection breaks before the answer; the rep reaches the disk all the same.
    first.socket.disconnect();
    book.writeOut();
    book.writesAtOnce = true;
    const second = await join("capture");
    expect(await second.socket.emitWithAck("rep", rep)).toEqual({ ok: true });
    await settle(ground.socket);
    expect([...book.reps.keys()]).toEqual([rep.id]);
    expect(heardOf(ground, "rep")).toEqual([rep]);
  });

  it("R6 that cannot be written are refused with the reason and kept by the phone", async () => {
    book.failsWith = "the disk is full";
    const phone = await join("capture");
    const ground = await join("display");
    const answer = await phone.socket.emitWithAck("rep", sampleRep());
    expect(answer).toEqual({ ok: false, why: "The relay could not write this rep down: the disk is full" });
    await settle(ground.socket);
    expect(heardOf(ground, "rep")).toEqual([]);
    expect(heardOf(ground, "trouble")).toHaveLength(1);
  });

  it("R6 are acknowledged also where the practice cannot be shown afterwards", async () => {
    const phone = await join("capture");
    const ground = await join("display");
    book.stateFails = true;
    expect(await phone.socket.emitWithAck("rep", sampleRep())).toEqual({ ok: true });
    await settle(ground.socket);
    expect(heardOf(ground, "rep")).toHaveLength(1);
    expect(heardOf(ground, "trouble")).toEqual([expect.stringContaining("the practice cannot be shown")]);
  });

  it("R8 are taken from a phone that was replaced", async () => {
    const older = await join("capture");
    await join("capture");
    expect(await older.socket.emitWithAck("rep", sampleRep())).toEqual({ ok: true });
    expect(book.reps.size).toBe(1);
  });

  it("R4 the longest that the schema allows fits under the limit", async () => {
    const phone = await join("capture");
    expect(await phone.socket.emitWithAck("rep", sampleRep(undefined, 2000))).toEqual({ ok: true });
  });
});

describe("the practice", () => {
  it("R9 a coach's change is acknowledged, named and told to everybody", async () => {
    const coach = await join("coach", { name: " Sam " });
    const ground = await join("display");
    const phone = await join("capture");
    expect(await coach.socket.emitWithAck("practice", { do: "pause", paused: true })).toEqual({ ok: true });
    await settleAll();
    expect(book.commands).toEqual([{ command: { do: "pause", paused: true }, by: "Sam" }]);
    for (const page of [coach, ground, phone]) {
      expect(heardOf(page, "practice").at(-1)).toMatchObject({ revision: 1 });
    }
  });

  it("R9 a phone may set the station, and nothing else of the practice", async () => {
    const phone = await join("capture");
    const ground = await join("display");
    const command = { do: "set-station", club: "7-iron", toeLine: 0.6, heelLine: 0.9, tolerance: 0.05 } as const;
    expect(await phone.socket.emitWithAck("practice", command)).toEqual({ ok: true });
    await settleAll();
    expect(book.commands).toEqual([{ command, by: "phone" }]);
    expect(heardOf(ground, "practice").at(-1)).toMatchObject({ revision: 1 });
    const refused = await phone.socket.emitWithAck("practice", { do: "pause", paused: true });
    expect(refused).toMatchObject({ ok: false, why: expect.stringMatching(/ground screen or a coach/) as string });
    expect(book.commands).toHaveLength(1);
  });

  it("R9 a refusal reaches who asked", async () => {
    const ground = await join("display");
    const answer = await ground.socket.emitWithAck("practice", { do: "accept-proposal" });
    expect(answer).toEqual({ ok: false, why: "There is no proposal." });
    expect(book.commands[0]?.by).toBe("ground screen");
  });

  it("answers the session's books", async () => {
    const ground = await join("display");
    expect(await ground.socket.emitWithAck("sessionView")).toEqual(book.sessionView());
  });

  it("P4 ground screens alone are told how others reach the relay, again when the address changes", async () => {
    const ground = await join("display");
    const coach = await join("coach");
    const { port, httpPort, secret } = relay.application;
    expect(heardOf(ground, "pairing")).toEqual([
      {
        phone: `https://192.168.7.20:${port}/phone/#pair=${secret}`,
        coach: `https://192.168.7.20:${port}/coach/#pair=${secret}`,
        trust: `http://192.168.7.20:${httpPort}/`,
      },
    ]);
    effects.network = ["10.1.2.3"];
    await relay.application.watchAddresses();
    await relay.application.watchAddresses();
    await settleAll();
    expect(heardOf(ground, "pairing")).toHaveLength(2);
    expect(heardOf(ground, "pairing").at(-1)).toMatchObject({ trust: `http://10.1.2.3:${httpPort}/` });
    expect(heardOf(coach, "pairing")).toEqual([]);
  });

  it("P4 without a network the machine still serves itself", () => {
    effects.network = [];
    const { port, secret } = relay.application;
    expect(relay.application.origins()).toEqual([`https://localhost:${port}`]);
    expect(relay.application.pairing().phone).toBe(`https://localhost:${port}/phone/#pair=${secret}`);
  });
});
