import http from "node:http";
import https from "node:https";
import { join } from "node:path";
import { pagePaths, pairingAddress, type Pairing } from "@overcue/shared-geometry/wire/pairing";
import type { Config } from "./config.ts";
import type { Effects } from "./effects.ts";
import { makeSecret } from "./pairing/make-secret.ts";
import type { PracticeBook } from "./practice-book.ts";
import type { Drops } from "./relay/drops.ts";
import { openRelay } from "./relay/open-relay.ts";
import { keepCertificates, type Certificates } from "./tls/keep-certificates.ts";
import { subjectNames } from "./tls/subject-names.ts";
import { listen } from "./web/listen.ts";
import { originOf } from "./web/origin-of.ts";
import { servePages } from "./web/serve-pages.ts";
import { serveTrust } from "./web/serve-trust.ts";

export interface Application {
  readonly secret: string;
  readonly port: number;
  readonly httpPort: number;
  /** Origins for other devices, likeliest first; localhost where there is no network. */
  origins(): readonly string[];
  pairing(): Pairing;
  certificates(): Certificates;
  drops(): ReturnType<Drops["counts"]>;
  /** Renews the certificate and tells the screens where the machine's addresses have changed or its end is near. */
  watchAddresses(): Promise<void>;
  close(): Promise<void>;
}

/**
 * The relay as one thing that can be started and closed, everything from outside passed in.
 * The book stays the caller's: it is closed after the application.
 * @throws ToldError where a port is taken.
 */
export async function createApplication(config: Config, effects: Effects, book: PracticeBook): Promise<Application> {
  const readCertificates = (): Promise<Certificates> =>
    keepCertificates(
      join(config.dataFolder, "certificates"),
      config.name,
      subjectNames(effects.addresses(), effects.hostName()),
      effects.today(),
    );
  const tlsOptions = ({ leaf }: Certificates) => ({
    cert: leaf.certificate,
    key: leaf.key,
    minVersion: "TLSv1.2" as const,
  });

  let certificates = await readCertificates();
  const secret = makeSecret((length) => effects.randomBytes(length));
  const secure = https.createServer(tlsOptions(certificates), servePages(config.buildFolder));
  const plain = http.createServer(
    serveTrust({
      authority: () => certificates.authority,
      phoneAddress: (visitedHost) => `${originOf("https", visitedHost, port)}${pagePaths.capture}`,
    }),
  );
  const hosts = (): readonly string[] => {
    const addresses = effects.addresses();
    return addresses.length === 0 ? ["localhost"] : addresses;
  };
  const origins = (): readonly string[] => hosts().map((host) => originOf("https", host, port));
  const pairing = (): Pairing => {
    const host = hosts()[0] ?? "localhost";
    return {
      phone: pairingAddress(originOf("https", host, port), "capture", secret),
      coach: pairingAddress(originOf("https", host, port), "coach", secret),
      trust: `${originOf("http", host, httpPort)}/`,
    };
  };
  const relay = openRelay({ server: secure, secret, book, relayTime: () => effects.relayTime(), pairing });

  let port = 0;
  let httpPort = 0;
  try {
    port = await listen(secure, { port: config.port, host: config.host, option: "--port" });
    httpPort = await listen(plain, { port: config.httpPort, host: config.host, option: "--http-port" });
  } catch (error) {
    await relay.close();
    throw error;
  }

  let toldOrigins = origins().join();
  return {
    secret,
    port,
    httpPort,
    origins,
    pairing,
    certificates: () => certificates,
    drops: () => relay.drops.counts(),
    async watchAddresses() {
      certificates = await readCertificates();
      if (certificates.made.leaf) secure.setSecureContext(tlsOptions(certificates));
      if (origins().join() === toldOrigins) return;
      toldOrigins = origins().join();
      relay.tellPairing();
    },
    async close() {
      // A connection that a browser opened ahead and has not used counts as busy: it would keep the server open for minutes.
      const ending = setInterval(() => {
        secure.closeAllConnections();
      }, 100);
      await relay.close().finally(() => {
        clearInterval(ending);
      });
      plain.closeAllConnections();
      await new Promise((resolve) => plain.close(resolve));
    },
  };
}
