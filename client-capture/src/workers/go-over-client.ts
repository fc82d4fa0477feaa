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
export function startGoOverClient(tell: (answer: FromGoOverWorker) => void): GoOverClient {
  const firstPass = new Map<number, () => RepReading>();
  let broken = false;
  let configuration: Configuration | null = null;
  const worker = new Worker(new URL("./go-over.worker.ts", import.meta.url), { type: "module", name: "go-over" });
  worker.onmessage = ({ data }: MessageEvent<FromGoOverWorker>) => {
    if (firstPass.delete(data.id)) tell(data);
  };
  const tellFirstPass = (): void => {
    for (const [id, read] of firstPass) tell({ id, rep: read() });
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
    ({ configuration } = message);
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
      const through = configuration;
      if (finished !== null && through !== null) firstPass.set(id, () => repReadings(finished, through));
      post({ do: "keep", id, evidence, output });
      if (broken) tellFirstPass();
    },
  };
}
