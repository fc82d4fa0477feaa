import { join } from "node:path";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

/** The phone's page and the page behind `npm run measure`; the relay serves both under /phone/. */
export default defineConfig({
  root: import.meta.dirname,
  base: "/phone/",
  publicDir: join(import.meta.dirname, "../build/capture-public"),
  plugins: [react()],
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
      },
    },
  },
});
