import fc from "fast-check";
import { expect, test } from "vitest";
import { makePictureQueue } from "@overcue/client-capture/frames/picture-queue";

test("S15 what comes is given in order, let go and counted, or still waits; never more than fits", async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: 1, max: 4 }),
      fc.array(fc.constantFrom("put", "take"), { maxLength: 60 }),
      async (room, moves) => {
        const letGo: number[] = [];
        const given: number[] = [];
        const queue = makePictureQueue<number>(room, (picture) => letGo.push(picture));
        let next = 0;
        let taking = false;
        for (const move of moves) {
          if (move === "put") queue.put(next++);
          else if (!taking) {
            taking = true;
            void queue.take().then((picture) => {
              taking = false;
              if (picture !== null) given.push(picture);
            });
          }
          await Promise.resolve();
          await Promise.resolve();
          expect(queue.waiting()).toBeLessThanOrEqual(room);
          expect(given.length + queue.missed() + queue.waiting()).toBe(next);
        }
        expect(letGo).toHaveLength(queue.missed());
        expect(given).toEqual(given.toSorted((a, b) => a - b));
        queue.end();
        queue.put(next++);
        expect(given.length + letGo.length).toBe(next);
        expect(await queue.take()).toBeNull();
      },
    ),
  );
});

test("S15 whoever waits for a picture hears of the end", async () => {
  const queue = makePictureQueue<number>(2, () => undefined);
  const taken = queue.take();
  queue.end();
  expect(await taken).toBeNull();
});
