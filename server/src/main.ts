import { randomUUID } from "node:crypto";
import { access, constants, mkdir } from "node:fs/promises";
import os from "node:os";
import { join } from "node:path";
import { pairingAddress } from "@overcue/shared-geometry/wire/pairing";
import { createApplication } from "./app.ts";
import { BookError } from "./book/book-error.ts";
import { openPracticeBook } from "./book/open-practice-book.ts";
import { readConfig } from "./config.ts";
import { machineEffects } from "./machine-effects.ts";
import { openBrowser } from "./terminal/open-browser.ts";
import { welcomeText } from "./terminal/welcome-text.ts";
import { originOf } from "./web/origin-of.ts";
import { ToldError } from "./told-error.ts";

/** How often the machine's addresses are looked at, milliseconds. */
const watchEveryMs = 15_000;

async function main(): Promise<void> {
  const checkout = join(import.meta.dirname, "../..");
  const config = readConfig(process.argv.slice(2), process.env, checkout, os.hostname());
  await makeWritable(config.dataFolder);

  const book = openPracticeBook(join(config.dataFolder, "practice.book"), {
    now: () => machineEffects.relayTime(),
    newId: randomUUID,
  });
  const application = await createApplication(config, machineEffects, book);
  const watch = setInterval(() => {
    application.watchAddresses().catch((error: unknown) => {
      process.stderr.write(`The certificate could not be renewed: ${String(error)}\n`);
    });
  }, watchEveryMs);

  let ending = false;
  const end = async (): Promise<void> => {
    if (ending) return;
    ending = true;
    clearInterval(watch);
    await application.close();
    book.close();
    process.stdout.write("\nThe relay has ended. Everything acknowledged is in the data folder.\n");
    process.exit(0);
  };
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) process.on(signal, () => void end());

  const ground = pairingAddress(originOf("https", "localhost", application.port), "display", application.secret);
  process.stdout.write(await welcomeText(application, ground));
  if (machineEffects.addresses().length === 0) {
    process.stdout.write("No network was found: this machine works by itself, a phone needs one network with it.\n");
  }
  if (config.openBrowser) openBrowser(ground, process.platform);
}

async function makeWritable(folder: string): Promise<void> {
  try {
    await mkdir(folder, { recursive: true });
    await access(folder, constants.W_OK);
  } catch {
    throw new ToldError(
      `The data folder ${folder} cannot be written: make it writable, or choose another with: npm start -- --data FOLDER`,
    );
  }
}

main().catch((error: unknown) => {
  const told = error instanceof ToldError || error instanceof BookError;
  process.stderr.write(told ? `${error.message}\n` : `The relay could not start: ${describe(error)}\n`);
  process.exit(1);
});

/** A bug: the stack goes with it. */
function describe(error: unknown): string {
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
}
