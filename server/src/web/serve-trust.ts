import { Buffer } from "node:buffer";
import { createHash } from "node:crypto";
import express, { type Express } from "express";
import type { Certificates } from "../tls/keep-certificates.ts";
import { appleProfile } from "./apple-profile.ts";
import { trustPageStyle } from "./trust-page-style.ts";
import { trustPage } from "./trust-page.ts";

const styleHash = createHash("sha256").update(trustPageStyle).digest("base64");

export interface TrustParts {
  /** Asked at each request: both may be renewed while the relay runs. */
  readonly authority: () => Certificates["authority"];
  /** The phone's page as reached from the host name that the visitor used. */
  readonly phoneAddress: (visitedHost: string) => string;
}

/**
 * The only thing that goes over plain HTTP: how to trust the authority, and the authority itself, which is public.
 * No redirect to HTTPS: the visitor is here because HTTPS does not work for them yet.
 */
export function serveTrust({ authority, phoneAddress }: TrustParts): Express {
  const app = express();
  app.disable("x-powered-by");
  app.use((_request, response, next) => {
    response.set({
      "Content-Security-Policy": `default-src 'none'; style-src 'sha256-${styleHash}'; frame-ancestors 'none'; base-uri 'none'`,
      "Referrer-Policy": "no-referrer",
      "X-Content-Type-Options": "nosniff",
      "Cache-Control": "no-store",
    });
    next();
  });
  app.get("/", (request, response) => {
    const facts = { fingerprint: authority().fingerprint, phoneAddress: phoneAddress(hostOf(request.hostname)) };
    response.type("html").send(trustPage(facts));
  });
  app.get("/overcue-authority.crt", (_request, response) => {
    response.type("application/x-x509-ca-cert").send(Buffer.from(authority().der));
  });
  app.get("/overcue-authority.pem", (_request, response) => {
    response.type("application/x-pem-file").send(authority().pem);
  });
  app.get("/overcue.mobileconfig", (_request, response) => {
    response.type("application/x-apple-aspen-config").send(Buffer.from(appleProfile(authority().der)));
  });
  app.use((_request, response) => {
    response.status(404).type("text/plain").send("Only the page about the certificate is served here: open / instead.");
  });
  return app;
}

/** The host that the visitor typed, or localhost where the header holds anything but a name or an address. */
function hostOf(header: string | undefined): string {
  return header !== undefined && /^[a-z0-9.:[\]-]+$/i.test(header) ? header : "localhost";
}
