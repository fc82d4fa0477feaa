import { join } from "node:path";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

/** The ground screen and the coach's page. The relay serves the folder under "/": /ground/ and /coach/. */
export default defineConfig({
  root: import.meta.dirname,
  base: "/",
  publicDir: false,
  plugins: [react()],
  build: {
    outDir: join(import.meta.dirname, "../build/client-display"),
    emptyOutDir: true,
    target: "es2022",
    assetsDir: "display-assets",
    // The content policy allows no data: addresses.
    assetsInlineLimit: 0,
    rolldownOptions: {
      input: {
        ground: join(import.meta.dirname, "ground/index.html"),
        coach: join(import.meta.dirname, "coach/index.html"),
      },
    },
  },
});
