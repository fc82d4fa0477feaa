import { startPoseClient, type PoseClient, type PoseRequest } from "./pose-client.ts";

/** A device that needs longer than this for the full model gets the lite one: under 15 poses a second the hands are guessed too long. */
const slowestFullMs = 66;
const gpuPatience = 12_000;
const cpuPatience = 45_000;

type Start = (request: PoseRequest) => Promise<PoseClient>;

/**
 * The pose model as this device runs it best: both delegates are timed with the full model, each in a worker of its own, and the faster
 * stays; where even that is too slow, the lite model.
 * @throws Error with a sentence where neither delegate starts.
 */
export async function choosePose(start: Start = startPoseClient): Promise<PoseClient> {
  const gpu = await start({ model: "full", delegate: "GPU", warmUp: true, patience: gpuPatience }).catch(() => null);
  if (gpu !== null && paceOf(gpu) <= slowestFullMs / 3) return gpu;
  let cpu: PoseClient;
  try {
    cpu = await start({ model: "full", delegate: "CPU", warmUp: true, patience: cpuPatience });
  } catch (error) {
    if (gpu !== null) return gpu;
    throw error;
  }
  const [faster, slower] = gpu !== null && paceOf(gpu) < paceOf(cpu) ? [gpu, cpu] : [cpu, gpu];
  slower?.close();
  if (paceOf(faster) <= slowestFullMs) return faster;
  try {
    const lite = await start({ model: "lite", delegate: faster.delegate, warmUp: false, patience: cpuPatience });
    faster.close();
    return lite;
  } catch {
    return faster;
  }
}

const paceOf = (client: PoseClient): number => client.perFrameMs ?? Number.POSITIVE_INFINITY;
