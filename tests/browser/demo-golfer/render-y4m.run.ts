import { parseArgs } from "node:util";
import { usualShow } from "./demo-show.ts";
import { renderY4m } from "./render-y4m.ts";

const { values } = parseArgs({
  options: {
    out: { type: "string", default: "build/demo-golfer.y4m" },
    "flat-to-steep": { type: "string", default: "0" },
    reps: { type: "string", default: "1" },
    fps: { type: "string", default: "30" },
    tempo: { type: "string", default: "slow" },
    handed: { type: "string", default: "right" },
    rod: { type: "string", default: "0" },
  },
});

const began = performance.now();
const { frames, show } = await renderY4m(values.out, {
  ...usualShow,
  flatToSteep: Number(values["flat-to-steep"]),
  reps: Number(values.reps),
  framesPerSecond: Number(values.fps),
  tempo: values.tempo === "tour" ? "tour" : "slow",
  kind: values.tempo === "tour" ? "full" : "rehearsal",
  handed: values.handed === "left" ? "left" : "right",
  rodBeyondButt: Number(values.rod),
});
const took = (performance.now() - began) / 1000;
console.log(`${values.out}: ${frames} pictures of ${show.width}x${show.height}, ${took.toFixed(1)} s.`);
