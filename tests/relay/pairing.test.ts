import { Buffer } from "node:buffer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { secretFromFragment } from "@overcue/shared-geometry/wire/pairing";
import { protocolVersion } from "@overcue/shared-geometry/wire/version";
import { fakeBook, fakeEffects } from "./fakes.ts";
import { openSocket, type Client } from "./join-relay.ts";
import { sampleEstimate, sampleRep } from "./sample-messages.ts";
import { startRelay, type RunningRelay } from "./start-relay.ts";

const book = fakeBook();
let relay: RunningRelay;

beforeAll(async () => {
  relay = await startRelay(fakeEffects(), book);
});
afterAll(async () => {
  await relay.close();
});

interface Refusal {
  readonly message: string;
  readonly code: unknown;
  readonly heard: readonly string[];
}

/** Resolves with the refusal and with all that the page was told. @throws where the page is admitted. */
async function refusalOf(socket: Client): Promise<Refusal> {
  const heard: string[] = [];
  socket.onAny((event: string) => heard.push(event));
  const error = await new Promise<Error>((resolve, reject) => {
    socket.once("connect_error", resolve);
    socket.once("connect", () => {
      reject(new Error("The relay admitted this page."));
    });
  });
  const data: unknown = "data" in error ? error.data : null;
  const code = typeof data === "object" && data !== null && "code" in data ? data.code : null;
  return { message: error.message, code, heard };
}

describe("pairing", () => {
  it.each(["capture", "display", "coach"] as const)(
    "P1 a %s page with another run's secret is told nothing",
    async (role) => {
      const socket = openSocket(relay.origin, role, { secret: "x".repeat(43) });
      socket.emit("estimate", sampleEstimate(1));
      socket.emit("rep", sampleRep(), () => undefined);
      const refusal = await refusalOf(socket);
      expect(refusal).toEqual({
        code: "wrong-secret",
        message: "This pairing code is from another run of the relay: scan the code that it shows now.",
        heard: [],
      });
      expect(book.reps.size).toBe(0);
      socket.disconnect();
    },
  );

  it("P1 a secret that is too short, or a part of the right one, is no secret", async () => {
    const part = openSocket(relay.origin, "display", { secret: relay.application.secret.slice(0, 42) });
    expect((await refusalOf(part)).code).toBe("wrong-secret");
    const short = openSocket(relay.origin, "display", { secret: relay.application.secret.slice(0, 10) });
    expect((await refusalOf(short)).code).toBe("bad-hello");
    part.disconnect();
    short.disconnect();
  });

  it("P1 the pages themselves hold no secret", async () => {
    const answer = await fetch(`http://127.0.0.1:${relay.application.httpPort}/`);
    expect(await answer.text()).not.toContain(relay.application.secret);
  });

  it("P2 an older page is told that it is older", async () => {
    const socket = openSocket(relay.origin, "capture", {
      secret: relay.application.secret,
      protocol: protocolVersion - 1,
    });
    const refusal = await refusalOf(socket);
    expect(refusal.code).toBe("page-is-older");
    expect(refusal.message).toMatch(/^This page is older .* reload the page\.$/);
    socket.disconnect();
  });

  it("P2 a newer page is told that the relay is older, also where its hello has another shape", async () => {
    const socket = openSocket(relay.origin, "capture", { secret: "", protocol: protocolVersion + 1 });
    const refusal = await refusalOf(socket);
    expect(refusal.code).toBe("relay-is-older");
    expect(refusal.message).toMatch(/^The relay is older .* npm start again\.$/);
    socket.disconnect();
  });

  it("P3 the secret is 256 bits of base64url in the fragment, new in each run", async () => {
    const other = await startRelay(fakeEffects());
    const { secret } = relay.application;
    expect(secret).toMatch(/^[A-Za-z0-9_-]{43}$/);
    expect(Buffer.from(secret, "base64url")).toHaveLength(32);
    expect(other.application.secret).not.toBe(secret);
    const address = new URL(relay.application.pairing().phone);
    expect(secretFromFragment(address.hash)).toBe(secret);
    expect(`${address.pathname}${address.search}`).toBe("/phone/");
    await other.close();
  });
});
