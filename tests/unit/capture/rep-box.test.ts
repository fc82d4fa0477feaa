import { expect, test } from "vitest";
import type { Acknowledgement } from "@overcue/shared-geometry/wire/events";
import type { Rep } from "@overcue/shared-geometry/wire/rep";
import { openRepBox } from "@overcue/client-capture/link/rep-box";
import { memoryRepStore } from "@overcue/client-capture/link/rep-store";

const rep = (id: string, endedAt: number): Rep => ({
  id,
  kind: "full",
  startedAt: endedAt - 2000,
  endedAt,
  handed: "right",
  calibration: "uncalibrated",
  checkpoints: [],
  complete: false,
  missing: [],
  tempo: null,
  trackedShare: 1,
  trajectory: [],
});

const settled = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

function openBox(answer: (rep: Rep) => Promise<Acknowledgement>) {
  const store = memoryRepStore();
  const sent: string[] = [];
  const told: (readonly [number, string | null])[] = [];
  const box = openRepBox({
    store,
    send: async (one) => {
      sent.push(one.id);
      return await answer(one);
    },
    onChange: (unsent, trouble) => told.push([unsent, trouble]),
  });
  return { box, store, sent, told };
}

test("U1 a rep stays on the phone until the relay says that it is on disk", async () => {
  let connected = false;
  const { box, store, told } = openBox(() =>
    connected ? Promise.resolve({ ok: true }) : Promise.reject(new Error("no answer")),
  );
  await box.add(rep("a", 1));
  await box.sendAll();
  expect(await store.all()).toHaveLength(1);
  expect(told.at(-1)).toEqual([1, null]);
  connected = true;
  await box.sendAll();
  expect(await store.all()).toEqual([]);
  expect(told.at(-1)).toEqual([0, null]);
});

test("U2 reps that wait are sent oldest first, and without an answer the others are not tried", async () => {
  let connected = false;
  const { box, sent } = openBox(() => (connected ? Promise.resolve({ ok: true }) : Promise.reject(new Error("none"))));
  await box.add(rep("late", 20));
  await settled();
  await box.add(rep("early", 10));
  await settled();
  sent.length = 0;
  await box.sendAll();
  expect(sent).toEqual(["early"]);
  connected = true;
  sent.length = 0;
  await box.sendAll();
  expect(sent).toEqual(["early", "late"]);
});

test("U3 a refused rep is kept, told, and does not keep the others back", async () => {
  const { box, store, told } = openBox((one) =>
    Promise.resolve(one.id === "odd" ? { ok: false, why: "The disk is full." } : { ok: true }),
  );
  await box.add(rep("odd", 1));
  await box.add(rep("good", 2));
  await box.sendAll();
  expect((await store.all()).map(({ id }) => id)).toEqual(["odd"]);
  expect(told.at(-1)).toEqual([1, "The disk is full."]);
});

test("U4 a rep that is added while others are sent goes out as well", async () => {
  let release: () => void = () => undefined;
  const held = new Promise<void>((resolve) => {
    release = resolve;
  });
  const { box, store, sent } = openBox(async () => {
    await held;
    return { ok: true };
  });
  await box.add(rep("first", 1));
  await settled();
  await box.add(rep("second", 2));
  const done = box.sendAll();
  release();
  await done;
  expect(sent).toContain("second");
  expect(await store.all()).toEqual([]);
});
