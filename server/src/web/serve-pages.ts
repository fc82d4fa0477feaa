import { join } from "node:path";
import express, { type Express, type RequestHandler } from "express";
import { securityHeaders } from "./security-headers.ts";

/** Files whose name holds a hash of their content: they never change under one name. */
const hashedName = /[\\/](display-)?assets[\\/][^\\/]*$/;

/**
 * The pages over HTTPS: /phone/, /ground/ and /coach/ out of the build folder. Nothing here is secret; what is served to
 * the paired only goes over the sockets.
 */
export function servePages(buildFolder: string): Express {
  const app = express();
  app.disable("x-powered-by");
  app.use(securityHeaders);
  app.get("/", (_request, response) => {
    response.redirect("/ground/");
  });
  // Browsers ask for it whatever icon a page names.
  app.get("/favicon.ico", (_request, response) => {
    response.redirect("/phone/icon.svg");
  });
  app.use("/phone", folder(join(buildFolder, "client-capture")));
  app.use("/", folder(join(buildFolder, "client-display")));
  app.use((request, response) => {
    const isPage = ["/phone/", "/ground/", "/coach/"].includes(request.path);
    response
      .status(404)
      .type("text/plain")
      .send(isPage ? "This page is not built yet: stop the relay and run npm start." : "There is no such page here.");
  });
  return app;
}

function folder(path: string): RequestHandler {
  return express.static(path, {
    setHeaders(response, file) {
      // Express knows .wasm and .webmanifest; a model bundle is bytes.
      if (file.endsWith(".task")) response.setHeader("Content-Type", "application/octet-stream");
      // The rest is asked for again each time, and answered "not modified" where it is not.
      response.setHeader("Cache-Control", hashedName.test(file) ? "public, max-age=31536000, immutable" : "no-cache");
    },
  });
}
