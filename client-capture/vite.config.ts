import { join } from "node:path";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { installedApp } from "./installed-app/installed-app-plugin.ts";

const publicFolder = join(import.meta.dirname, "../build/capture-public");

/** The phone's page and the page behind `npm run measure`; the relay serves both under /phone/. */
export default defineConfig({
  root: import.meta.dirname,
  base: "/phone/",
  publicDir: publicFolder,
  plugins: [react(), installedApp(publicFolder)],
  worker: { format: "es" },
  build: {
    outDir: join(import.meta.dirname, "../build/client-capture"),
    emptyOutDir: true,
    target: "es2022",
    // A content policy without data: addresses stays possible.
    assetsInlineLimit: 0,
    rolldownOptions: {
      input: {
        phone: join(import.meta.dirname, "index.html"),
        measure: join(import.meta.dirname, "measure.html"),
        "service-worker": join(import.meta.dirname, "src/workers/service-worker.ts"),
      },
      output: {
        // Its address is what tells the browser that it is the same worker in another build.
        entryFileNames: ({ name }) => (name === "service-worker" ? "[name].js" : "assets/[name]-[hash].js"),
      },
    },
  },
});
