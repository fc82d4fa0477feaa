import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { conditionNames, sceneOf } from "./conditions.ts";
import { renderScene } from "./render-scene.ts";
import { writePng } from "./write-png.ts";

/** Pictures of the test scenes for looking at: node tests/scenes/look.run.ts FOLDER [condition] [seed] [every]. */
const [folder = "build/scenes", wanted = "", seed = "1", every = "60"] = process.argv.slice(2);
mkdirSync(folder, { recursive: true });
for (const name of conditionNames.filter((known) => wanted === "" || known === wanted)) {
  let spent = 0;
  let count = 0;
  let started = performance.now();
  for (const frame of renderScene(sceneOf(name, Number(seed)), Number(seed))) {
    spent += performance.now() - started;
    count++;
    if (frame.index % Number(every) === 0) {
      const file = `${name.replaceAll(/[^a-z0-9+-]/gi, "_")}-${seed}-${String(frame.index).padStart(4, "0")}.png`;
      writePng(join(folder, file), frame.picture);
    }
    started = performance.now();
  }
  console.log(`${name}: ${count} pictures, ${(spent / count).toFixed(1)} ms each, the still part included`);
}
