import { createHash } from "node:crypto";
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Plugin } from "vite";
import { iconPng } from "./icon-png.ts";
import { iconSvg } from "./icon-svg.ts";
import { base, iconFiles, manifest } from "./manifest.ts";

const buildMark = "OVERCUE-BUILD";
const workerFile = "service-worker.js";

/**
 * Makes the phone's page an app that can be installed: icons, manifest, and a service worker that knows this build's files. The build's name is a
 * digest of everything that is served, so that a page can tell whether the relay has another one.
 * @param publicFolder What is served beside the bundle, unhashed: the pose model.
 */
export function installedApp(publicFolder: string): Plugin {
  return {
    name: "overcue-installed-app",
    apply: "build",
    transformIndexHtml: {
      order: "post",
      handler: (_html, { filename }) => {
        if (!filename.endsWith("/index.html")) return;
        const link = (rel: string, file: string, more: Record<string, string> = {}) => ({
          tag: "link",
          attrs: { rel, href: `${base}${file}`, ...more },
          injectTo: "head" as const,
        });
        return [
          { tag: "meta", attrs: { name: "overcue-build", content: buildMark }, injectTo: "head" as const },
          link("manifest", "manifest.webmanifest"),
          link("icon", "icon.svg", { type: "image/svg+xml" }),
          link("apple-touch-icon", "apple-touch-icon.png"),
        ];
      },
    },
    generateBundle: {
      order: "post",
      async handler(_options, bundle) {
        const emit = (fileName: string, source: string | Uint8Array): void => {
          this.emitFile({ type: "asset", fileName, source });
        };
        const pose = await digests(join(publicFolder, "pose"));
        const page = bundle["index.html"];
        const worker = bundle[workerFile];
        if (page?.type !== "asset" || worker?.type !== "chunk") {
          this.error("The phone's page or its service worker was not built.");
        }
        const bundled = Object.keys(bundle).filter((name) => name.startsWith("assets/"));
        const icons = iconFiles.map(({ name, size }) => ({ name, data: iconPng(size) }));
        const digest = createHash("sha256");
        for (const part of [String(page.source), worker.code, manifest(), iconSvg(), ...bundled.toSorted(), ...pose]) {
          digest.update(part).update("\0");
        }
        const build = digest.digest("hex").slice(0, 16);

        page.source = String(page.source).replace(buildMark, build);
        const kept = [
          "",
          ...bundled,
          ...pose.map((one) => one.split(" ")[0] ?? ""),
          "icon.svg",
          "manifest.webmanifest",
        ];
        const list = JSON.stringify({ build, files: kept.map((name) => base + name) });
        worker.code = `const overcueKeptFiles = ${list};\n${worker.code}`;
        for (const { name, data } of icons) emit(name, data);
        emit("icon.svg", iconSvg());
        emit("manifest.webmanifest", manifest());
        emit("build.json", JSON.stringify({ build }));
      },
    },
  };
}

/** "pose/NAME DIGEST" of each file that the pose worker loads. */
async function digests(folder: string): Promise<readonly string[]> {
  const names = (await readdir(folder)).filter((name) => /\.(task|js|wasm)$/.test(name)).toSorted();
  return await Promise.all(
    names.map(async (name) => {
      const content = await readFile(join(folder, name));
      return `pose/${name} ${createHash("sha256").update(content).digest("hex")}`;
    }),
  );
}
