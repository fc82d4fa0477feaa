import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { conditionNames, sceneOf } from "./conditions.ts";
import { renderScene } from "./render-scene.ts";
import { writePng } from "./write-png.ts";

/**
 * Pictures of the test scenes for looking at:
 * node tests/scenes/look.run.ts [--to FOLDER] [--row NAME] [--seed N] [--at SHARES]; shares of the scene's time, as 0,0.3,0.5.
 */
const { values } = parseArgs({
  options: {
    to: { type: "string", default: "build/scenes" },
    row: { type: "string" },
    seed: { type: "string", default: "1" },
    at: { type: "string", default: "0.05,0.3,0.6" },
  },
});
mkdirSync(values.to, { recursive: true });
for (const name of conditionNames.filter((known) => values.row === undefined || known === values.row)) {
  const settings = sceneOf(name, Number(values.seed));
  for (const share of values.at.split(",").map(Number)) {
    const fromMs = share * settings.toMs;
    const toMs = fromMs + 1500 / settings.framesPerSecond;
    for (const frame of renderScene({ ...settings, fromMs, toMs }, Number(values.seed))) {
      const file = `${name.replaceAll(/[^a-z0-9+-]/gi, "_")}-${values.seed}-${share.toFixed(2)}.png`;
      writePng(join(values.to, file), frame.picture);
    }
  }
  console.log(`${name}: ${settings.place}, ${settings.light}`);
}
