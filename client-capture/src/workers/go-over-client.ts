import type { Configuration } from "../pipeline/configuration.ts";
import { repReadings, type RepReading } from "../pipeline/rep-readings.ts";
import type { StepOutput } from "../pipeline/step.ts";
import type { ShaftEvidence } from "../shaft/track-shaft.ts";
import type { FromGoOverWorker, ToGoOverWorker } from "./go-over-messages.ts";

/** Keeps live pictures and goes over a rep once more when it has ended, in a worker of its own: it takes as long as dozens of pictures. */
export interface GoOverClient {
  start(configuration: Configuration): void;
  reconfigure(configuration: Configuration): void;
  keep(id: number, evidence: ShaftEvidence, output: StepOutput): void;
}

/** `tell` hears of each rep under the id of the picture that ended it; where the second pass breaks, of the first pass's. */
export function startGoOverClient(tell: (id: number, rep: RepReading) => void): GoOverClient {
  const firstPass = new Map<number, () => RepReading>();
  let broken = false;
  let inUse: Configuration | null = null;
  const worker = new Worker(new URL("./go-over.worker.ts", import.meta.url), { type: "module", name: "go-over" });
  worker.onmessage = ({ data }: MessageEvent<FromGoOverWorker>) => {
    const read = firstPass.get(data.id);
    if (read === undefined) return;
    firstPass.delete(data.id);
    tell(data.id, data.rep ?? read());
  };
  const tellFirstPass = (): void => {
    for (const [id, read] of firstPass) tell(id, read());
    firstPass.clear();
  };
  worker.onerror = () => {
    broken = true;
    tellFirstPass();
  };
  const post = (message: ToGoOverWorker): void => {
    worker.postMessage(message);
  };
  const configure = (message: Extract<ToGoOverWorker, { do: "start" | "reconfigure" }>): void => {
    inUse = message.configuration;
    post(message);
  };
  return {
    start(configuration) {
      configure({ do: "start", configuration });
    },
    reconfigure(configuration) {
      configure({ do: "reconfigure", configuration });
    },
    keep(id, evidence, output) {
      const { finished } = output.swing;
      const through = inUse;
      if (finished !== null && through !== null) firstPass.set(id, () => repReadings(finished, through));
      post({ do: "keep", id, evidence, output });
      if (broken) tellFirstPass();
    },
  };
}
