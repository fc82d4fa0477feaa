import { X509Certificate } from "node:crypto";
import { chmod, mkdtemp, readFile, readdir, rm, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import tls from "node:tls";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { daysLater } from "@overcue/server/tls/days-later";
import { keepCertificates, type Certificates } from "@overcue/server/tls/keep-certificates";
import { makeAuthority } from "@overcue/server/tls/make-authority";
import { makeLeaf } from "@overcue/server/tls/make-leaf";
import { subjectNames } from "@overcue/server/tls/subject-names";
import * as x509 from "@overcue/server/tls/x509";
import { fakeEffects } from "./fakes.ts";
import { startRelay } from "./start-relay.ts";

const today = new Date();
let folder: string;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "overcue-tls-"));
});
afterEach(async () => {
  await rm(folder, { recursive: true, force: true });
});

async function keep(addresses: readonly string[], date = today): Promise<Certificates> {
  return keepCertificates(folder, "test", subjectNames(addresses, "Range-Laptop.lan"), date);
}

/** What Node's own TLS (OpenSSL) says of a server when the authority is all that is trusted; null: it is trusted. */
async function verdictOf(port: number, authority: string, name: string): Promise<string | null> {
  const socket = tls.connect({
    port,
    host: "127.0.0.1",
    ca: authority,
    rejectUnauthorized: false,
    // A name is sent as the browser sends it; an address is not sent but checked all the same.
    ...(/^[\d.:]+$|:/.test(name) ? {} : { servername: name }),
    checkServerIdentity: (_host, certificate) => tls.checkServerIdentity(name, certificate),
  });
  await new Promise<void>((resolve, reject) => {
    socket.once("secureConnect", resolve);
    socket.once("error", reject);
  });
  const problem: unknown = socket.authorizationError;
  socket.destroy();
  if (socket.authorized) return null;
  return problem instanceof Error ? problem.message : String(problem);
}

describe("the certificate", () => {
  it.each(["localhost", "127.0.0.1", "::1", "192.168.7.20", "range-laptop.local"])(
    "T1 verifies against the authority as %s",
    async (name) => {
      const effects = { ...fakeEffects(), today: () => today };
      const relay = await startRelay(effects);
      const { authority } = relay.application.certificates();
      expect(await verdictOf(relay.application.port, authority.pem, name)).toBeNull();
      await relay.close();
    },
  );

  it("T1 does not verify as another name, nor against another authority", async () => {
    const relay = await startRelay({ ...fakeEffects(), today: () => today });
    const { authority } = relay.application.certificates();
    const stranger = await makeAuthority("stranger", today);
    const { port } = relay.application;
    expect(await verdictOf(port, authority.pem, "192.168.7.21")).not.toBeNull();
    expect(await verdictOf(port, stranger.certificate, "localhost")).not.toBeNull();
    await relay.close();
  });

  it("T2 lives at most 397 days and serves a server only; the authority signs leaves only", async () => {
    const { leaf, authority } = await keep([]);
    const read = new X509Certificate(leaf.certificate);
    const days = (read.validToDate.getTime() - read.validFromDate.getTime()) / 86_400_000;
    expect(days).toBeLessThanOrEqual(397);
    expect(read.ca).toBe(false);
    // serverAuth, RFC 5280 section 4.2.1.12.
    expect(read.keyUsage).toEqual(["1.3.6.1.5.5.7.3.1"]);
    const issuer = new X509Certificate(authority.pem);
    expect(issuer.ca).toBe(true);
    const constraints = new x509.X509Certificate(authority.pem).getExtension(x509.BasicConstraintsExtension);
    expect(constraints).toMatchObject({ ca: true, pathLength: 0, critical: true });
  });

  it("T3 leaves no key readable to others, also where somebody opened it", async () => {
    await keep([]);
    const files = await readdir(folder);
    expect(files.sort()).toEqual(["authority.crt.pem", "authority.key.pem", "relay.crt.pem", "relay.key.pem"]);
    for (const file of files) await chmod(join(folder, file), 0o644);
    await keep([]);
    const modes = await Promise.all(files.map(async (file) => (await stat(join(folder, file))).mode & 0o777));
    expect(modes).toEqual([0o600, 0o600, 0o600, 0o600]);
  });

  it("T4 stays while it serves", async () => {
    const first = await keep(["192.168.7.20"]);
    const second = await keep(["192.168.7.20"]);
    const fewer = await keep([]);
    expect(first.made).toEqual({ authority: true, leaf: true });
    expect(second.made).toEqual({ authority: false, leaf: false });
    expect(fewer.made).toEqual({ authority: false, leaf: false });
    expect(second.leaf).toEqual(first.leaf);
  });

  it("T4 is renewed for a new address by the same authority", async () => {
    const first = await keep(["192.168.7.20"]);
    const second = await keep(["192.168.7.20", "10.0.0.4"]);
    expect(second.made).toEqual({ authority: false, leaf: true });
    expect(second.authority).toEqual(first.authority);
    expect(new X509Certificate(second.leaf.certificate).checkIP("10.0.0.4")).toBe("10.0.0.4");
  });

  it("T4 is renewed 30 days before its end, not sooner", async () => {
    await keep([]);
    expect((await keep([], daysLater(today, 364))).made.leaf).toBe(false);
    expect((await keep([], daysLater(today, 366))).made).toEqual({ authority: false, leaf: true });
  });

  it.each(["relay.crt.pem", "relay.key.pem"])("T4 is made anew where %s is broken", async (file) => {
    await keep([]);
    const path = join(folder, file);
    await writeFile(path, (await readFile(path, "utf8")).slice(0, 100));
    expect((await keep([])).made).toEqual({ authority: false, leaf: true });
    expect((await keep([])).made).toEqual({ authority: false, leaf: false });
  });

  it("T4 follows an authority that had to be made anew", async () => {
    await keep([]);
    await rm(join(folder, "authority.key.pem"));
    expect((await keep([])).made).toEqual({ authority: true, leaf: true });
  });

  it("T4 changes under a running relay when the address does", async () => {
    const effects = { ...fakeEffects(), today: () => today };
    const relay = await startRelay({ ...effects, addresses: () => effects.network });
    const { authority } = relay.application.certificates();
    expect(await verdictOf(relay.application.port, authority.pem, "10.9.8.7")).not.toBeNull();
    effects.network = ["10.9.8.7"];
    await relay.application.watchAddresses();
    expect(await verdictOf(relay.application.port, authority.pem, "10.9.8.7")).toBeNull();
    await relay.close();
  });

  it("T5 of the authority is worth nothing for a web site's name", async () => {
    const authority = await makeAuthority("test", today);
    const forged = await makeLeaf(authority, { dns: ["www.example.org"], ip: [] }, today);
    const server = tls.createServer({ cert: forged.certificate, key: forged.key });
    await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
    const address = server.address();
    const port = typeof address === "object" && address !== null ? address.port : 0;
    expect(await verdictOf(port, authority.certificate, "www.example.org")).not.toBeNull();
    // The same with a local name: what refused the other was its name and nothing else.
    const local = await makeLeaf(authority, { dns: ["range-laptop.local"], ip: [] }, today);
    server.setSecureContext({ cert: local.certificate, key: local.key });
    expect(await verdictOf(port, authority.certificate, "range-laptop.local")).toBeNull();
    server.close();
  });

  it("T1 keys are P-256, which every phone takes", async () => {
    const { leaf } = await keep([]);
    const { asymmetricKeyDetails } = new X509Certificate(leaf.certificate).publicKey;
    expect(asymmetricKeyDetails).toEqual({ namedCurve: "prime256v1" });
  });
});
