import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createApplication, type Application } from "@overcue/server/app";
import type { Effects } from "@overcue/server/effects";
import { machineEffects } from "@overcue/server/machine-effects";
import type { PracticeBook } from "@overcue/server/practice-book";
import { pairingAddress } from "@overcue/shared-geometry/wire/pairing";
import type { Role } from "@overcue/shared-geometry/wire/hello";
import { fakeBook } from "./fakes.ts";

export interface RunningRelay {
  readonly application: Application;
  readonly dataFolder: string;
  /** "https://127.0.0.1:PORT" */
  readonly origin: string;
  /** A page's address on this machine with the secret, as a QR code holds it. */
  page(role: Role): string;
  close(): Promise<void>;
}

/**
 * The real relay on free ports of this machine, with its own data folder, its pages out of the checkout's build folder.
 * Without arguments it runs on the machine's clock with a book in memory.
 */
export async function startRelay(
  effects: Effects = machineEffects,
  book: PracticeBook = fakeBook(),
): Promise<RunningRelay> {
  const dataFolder = await mkdtemp(join(tmpdir(), "overcue-relay-"));
  const config = {
    port: 0,
    httpPort: 0,
    host: "127.0.0.1",
    dataFolder,
    buildFolder: join(import.meta.dirname, "../../build"),
    name: "test",
    openBrowser: false,
  };
  const application = await createApplication(config, effects, book);
  const origin = `https://127.0.0.1:${application.port}`;
  return {
    application,
    dataFolder,
    origin,
    page: (role) => pairingAddress(origin, role, application.secret),
    async close() {
      await application.close();
      await rm(dataFolder, { recursive: true, force: true });
    },
  };
}
