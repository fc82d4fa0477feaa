import type { Server } from "node:net";
import { ToldError } from "../told-error.ts";

export interface Place {
  readonly port: number;
  /** Undefined: every address of this machine. */
  readonly host: string | undefined;
  /** How a person chooses another port: "--port". */
  readonly option: string;
}

/**
 * Starts listening and answers the port, which is a free one where 0 was asked for.
 * @throws ToldError where the port is taken or not allowed.
 */
export async function listen(server: Server, { port, host, option }: Place): Promise<number> {
  await new Promise<void>((resolve, reject) => {
    server.once("error", (error) => {
      reject(sentenceFor(error, port, option));
    });
    server.listen({ port, host }, resolve);
  });
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("A TCP server has an address with a port.");
  return address.port;
}

function sentenceFor(error: Error, port: number, option: string): Error {
  const code = "code" in error ? error.code : undefined;
  if (code === "EADDRINUSE") {
    const cure = `close it, or choose another port with: npm start -- ${option} ${port + 1}`;
    return new ToldError(`Port ${port} is taken by another program (or by a relay that still runs): ${cure}`);
  }
  if (code === "EACCES") {
    return new ToldError(
      `Port ${port} needs administrator rights: choose one above 1023 with: npm start -- ${option} 8443`,
    );
  }
  return error;
}
