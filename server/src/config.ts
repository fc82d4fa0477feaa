import { join, resolve } from "node:path";
import { parseArgs } from "node:util";
import { ToldError } from "./told-error.ts";

export interface Config {
  /** 0: any free port. */
  readonly port: number;
  readonly httpPort: number;
  /** Undefined: every address of this machine. */
  readonly host: string | undefined;
  readonly dataFolder: string;
  readonly buildFolder: string;
  /** Tells two relays apart: in the phone's list of certificates and on screens. */
  readonly name: string;
  readonly openBrowser: boolean;
}

export const usage = `Options: --port N (8443), --http-port N (8480), --data FOLDER (./data), --name TEXT, --host ADDRESS, --no-open.
Each can be set in the environment instead: OVERCUE_PORT, OVERCUE_HTTP_PORT, OVERCUE_DATA, OVERCUE_NAME, OVERCUE_HOST, OVERCUE_NO_OPEN=1.`;

/**
 * The settings of a run, read once: an option before the environment before the default.
 * @param checkout The project's folder. @throws ToldError with a sentence about the first wrong option.
 */
export function readConfig(
  args: readonly string[],
  env: Readonly<Record<string, string | undefined>>,
  checkout: string,
  hostName: string,
): Config {
  const options = readOptions(args);
  const text = (option: string | undefined, variable: string): string | undefined => {
    const value = option ?? env[variable];
    return value === undefined || value.trim() === "" ? undefined : value.trim();
  };
  return {
    port: readPort(text(options.port, "OVERCUE_PORT") ?? "8443", "--port"),
    httpPort: readPort(text(options["http-port"], "OVERCUE_HTTP_PORT") ?? "8480", "--http-port"),
    host: text(options.host, "OVERCUE_HOST"),
    dataFolder: resolve(checkout, text(options.data, "OVERCUE_DATA") ?? "data"),
    buildFolder: join(checkout, "build"),
    name: (text(options.name, "OVERCUE_NAME") ?? hostName).slice(0, 40),
    openBrowser: options["no-open"] !== true && text(undefined, "OVERCUE_NO_OPEN") === undefined,
  };
}

function readOptions(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      options: {
        port: { type: "string" },
        "http-port": { type: "string" },
        host: { type: "string" },
        data: { type: "string" },
        name: { type: "string" },
        "no-open": { type: "boolean" },
      },
    }).values;
  } catch (error) {
    throw new ToldError(`${error instanceof Error ? error.message : "An option is not understood."}\n${usage}`);
  }
}

function readPort(text: string, option: string): number {
  const port = Number(text);
  if (!Number.isInteger(port) || port < 0 || port > 65535) {
    throw new ToldError(`${option} must be a whole number from 0 to 65535, not "${text}".`);
  }
  return port;
}
