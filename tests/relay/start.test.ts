import { mkdtemp, rm, writeFile, mkdir, cp, symlink } from "node:fs/promises";
import net from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { joinRelay } from "./join-relay.ts";
import { runProgram, type RunningProgram } from "./run-program.ts";

const checkout = join(import.meta.dirname, "../..");
const main = join(checkout, "server/src/main.ts");
let folder: string;
let programs: RunningProgram[] = [];

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "overcue-start-"));
});
afterEach(async () => {
  for (const { child, ended } of programs) {
    child.kill("SIGKILL");
    await ended;
  }
  programs = [];
});
afterAll(async () => {
  await rm(folder, { recursive: true, force: true });
});

function startMain(...args: readonly string[]): RunningProgram {
  const program = runProgram(process.execPath, [main, "--no-open", "--host", "127.0.0.1", ...args]);
  programs.push(program);
  return program;
}

async function takenPort(): Promise<{ port: number; free: () => void }> {
  const server = net.createServer();
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("The server has no port.");
  return { port: address.port, free: () => void server.close() };
}

describe("the relay as a program", { timeout: 240_000 }, () => {
  it.each(["--port", "--http-port"])("S1 names a %s that is taken, and how to choose another", async (option) => {
    const { port, free } = await takenPort();
    const others = option === "--port" ? ["--http-port", "0"] : ["--port", "0"];
    const program = startMain("--data", join(folder, "taken"), option, String(port), ...others);
    expect(await program.ended).toBe(1);
    expect(program.output()).toBe(
      `Port ${port} is taken by another program (or by a relay that still runs): close it, or choose another port with: npm start -- ${option} ${port + 1}\n`,
    );
    free();
  });

  it("S1 names a data folder that cannot be written", async () => {
    await writeFile(join(folder, "a-file"), "");
    const program = startMain("--data", join(folder, "a-file", "inside"));
    expect(await program.ended).toBe(1);
    expect(program.output()).toMatch(
      /^The data folder .*inside cannot be written: make it writable, or .* --data FOLDER\n$/,
    );
  });

  it.each([
    [["--port", "many"], /^--port must be a whole number from 0 to 65535, not "many"\.\n$/],
    [["--prot", "8443"], /^Unknown option '--prot'[^]*Options: --port N/],
  ])("S1 says what is wrong with %j", async (args, sentence) => {
    const program = startMain(...args);
    expect(await program.ended).toBe(1);
    expect(program.output()).toMatch(sentence);
  });

  it("S2 serves by the printed address until Ctrl-C, then ends with 0", async () => {
    const program = startMain("--data", join(folder, "served"), "--port", "0", "--http-port", "0");
    const [, port, secret] = await program.printed(/https:\/\/localhost:(\d+)\/ground\/#pair=([\w-]{43})\n/);
    await program.printed(/Ctrl-C ends the relay/);
    const origin = `https://127.0.0.1:${port ?? ""}`;
    const page = await joinRelay(origin, "display", { secret: secret ?? "" });
    const told = new Promise((resolve) => page.socket.once("disconnect", resolve));
    program.child.kill("SIGINT");
    // Not a word of the relay that the page should stay away: it comes back by itself when the relay does.
    expect(await told).toBe("transport close");
    expect(await program.ended).toBe(0);
    expect(program.output()).toContain("The relay has ended.");
    await expect(joinRelay(origin, "display", { secret: secret ?? "" })).rejects.toThrow();
  });
});

describe("the start before anything is installed", { timeout: 240_000 }, () => {
  async function freshCheckout(name: string): Promise<string> {
    const copy = join(folder, name);
    await mkdir(copy, { recursive: true });
    for (const path of ["package.json", "package-lock.json", "server/bootstrap"]) {
      await cp(join(checkout, path), join(copy, path), { recursive: true });
    }
    return copy;
  }

  it("S1 refuses a Node that is too old", async () => {
    const require = join(checkout, "server/bootstrap/require-node.mjs");
    const script = `import(${JSON.stringify(require)}).then(({ requireNode }) => requireNode("v18.20.4"))`;
    const program = runProgram(process.execPath, ["-e", script]);
    expect(await program.ended).toBe(1);
    expect(program.output()).toMatch(/^Overcue needs Node 20 or newer to start, and this is v18\.20\.4: install .*\n$/);
  });

  it("S1 says that the first start needs the network", async () => {
    const copy = await freshCheckout("offline");
    const { port, free } = await takenPort();
    free();
    const program = runProgram(process.execPath, [join(copy, "server/bootstrap/start.mjs")], {
      cwd: copy,
      env: {
        npm_config_registry: `http://127.0.0.1:${port}/`,
        npm_config_fetch_retries: "0",
        npm_config_cache: join(folder, "empty-cache"),
      },
    });
    expect(await program.ended).toBe(1);
    expect(program.output()).toMatch(
      /\nThe first start needs the network to install packages, .* then start again\.\n$/,
    );
  });

  it("S1 S3 starts nothing where a build fails, and installs nothing again", async () => {
    const copy = await freshCheckout("broken");
    await symlink(join(checkout, "node_modules"), join(copy, "node_modules"), "dir");
    await mkdir(join(copy, "client-display"));
    await writeFile(join(copy, "client-display/vite.config.mjs"), "export default { this is no program");
    const program = runProgram(process.execPath, [join(copy, "server/bootstrap/start.mjs")], { cwd: copy });
    expect(await program.ended).toBe(1);
    expect(program.output()).not.toContain("Installing");
    expect(program.output()).toMatch(/Building the ground screen and coach's page failed, so nothing was started\./);
  });
});
