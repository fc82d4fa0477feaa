import { spawn } from "node:child_process";

/** Opens an address in the default browser; where there is none, nothing happens, since the terminal shows it too. */
export function openBrowser(address: string, platform: NodeJS.Platform): void {
  const [command, ...args] = commandFor(platform);
  if (command === undefined) return;
  const child = spawn(command, [...args, address], { detached: true, stdio: "ignore" });
  child.on("error", () => undefined);
  child.unref();
}

function commandFor(platform: NodeJS.Platform): readonly string[] {
  if (platform === "darwin") return ["open"];
  // The first argument that "start" takes in quotes would be a window's title.
  if (platform === "win32") return ["cmd", "/c", "start", ""];
  return ["xdg-open"];
}
