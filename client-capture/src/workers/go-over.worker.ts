/// <reference lib="webworker" />
import type { Configuration } from "../pipeline/configuration.ts";
import { finishLiveRep, memoryForRep } from "../pipeline/finish-live-rep.ts";
import type { RepReading } from "../pipeline/rep-readings.ts";
import type { StepOutput } from "../pipeline/step.ts";
import type { FinishedRep } from "../swing/finish-rep.ts";
import type { ShaftEvidence } from "../shaft/track-shaft.ts";
import type { FromGoOverWorker, ToGoOverWorker } from "./go-over-messages.ts";

declare const self: DedicatedWorkerGlobalScope;

interface Memory {
  configuration: Configuration;
  readonly evidence: ShaftEvidence[];
  readonly outputs: StepOutput[];
}

let memory: Memory | null = null;

self.onmessage = ({ data }: MessageEvent<ToGoOverWorker>) => {
  if (data.do === "start") memory = { configuration: data.configuration, evidence: [], outputs: [] };
  if (memory === null) return;
  if (data.do === "reconfigure") memory.configuration = data.configuration;
  if (data.do === "keep") keep(memory, data);
};

function keep(kept: Memory, { id, evidence, output }: Extract<ToGoOverWorker, { do: "keep" }>): void {
  kept.evidence.push(evidence);
  kept.outputs.push(output);
  while ((kept.outputs[0]?.t ?? output.t) < output.t - memoryForRep) {
    kept.evidence.shift();
    kept.outputs.shift();
  }
  const { finished } = output.swing;
  if (finished !== null) self.postMessage({ id, rep: goOver(kept, finished) } satisfies FromGoOverWorker);
}

function goOver({ evidence, outputs, configuration }: Memory, first: FinishedRep): RepReading | null {
  try {
    return finishLiveRep(first, evidence, outputs, configuration);
  } catch {
    // Whoever asked has the first pass's rep.
    return null;
  }
}
