import { openDB, type DBSchema } from "idb";
import { repSchema, type Rep } from "@overcue/shared-geometry/wire/rep";
import type { RepStore } from "./rep-box.ts";

interface PhoneDatabase extends DBSchema {
  "unsent-reps": { key: string; value: Rep };
}

/** Reps in the browser's own database, which outlives the page, the battery and the connection. */
export async function openRepStore(): Promise<RepStore> {
  const database = await openDB<PhoneDatabase>("overcue-phone", 1, {
    upgrade(db) {
      db.createObjectStore("unsent-reps", { keyPath: "id" });
    },
  });
  return {
    async put(rep) {
      await database.put("unsent-reps", rep);
    },
    async all() {
      const kept = await database.getAll("unsent-reps");
      // An older version of this page may have stored another shape; the relay would refuse it for ever.
      return kept.filter((rep) => repSchema.safeParse(rep).success);
    },
    async remove(id) {
      await database.delete("unsent-reps", id);
    },
  };
}

/** Where the browser gives no database (private windows): kept as long as the page is open. */
export function memoryRepStore(): RepStore {
  const kept = new Map<string, Rep>();
  return {
    put: (rep) => {
      kept.set(rep.id, rep);
      return Promise.resolve();
    },
    all: () => Promise.resolve([...kept.values()]),
    remove: (id) => {
      kept.delete(id);
      return Promise.resolve();
    },
  };
}
