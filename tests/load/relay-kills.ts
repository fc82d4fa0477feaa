import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { joinRelay } from "../relay/join-relay.ts";
import { sampleRep } from "../relay/sample-messages.ts";
import { openOutbox, type Outbox } from "./outbox.ts";
import { repIdsInBook, startRelayProcess } from "./relay-process.ts";

export interface KillResult {
  readonly kills: number;
  readonly repsSent: number;
  /** Reps that had been acknowledged by a relay that was killed afterwards. */
  readonly acknowledgedBeforeAKill: number;
  /** Acknowledged reps that were not in the book after a kill: none may. */
  readonly acknowledgedButLost: number;
  /** Reps that reached the book though the kill came before their acknowledgement. */
  readonly writtenButNotAcknowledged: number;
  readonly missingAtTheEnd: number;
  readonly doubledAtTheEnd: number;
}

/**
 * Kills the relay again and again while reps are on their way, looks into the book each time, and starts it anew.
 * @param afterMs How long after the last rep was handed over each kill comes; its length is the number of kills.
 */
export async function killRelays(afterMs: readonly number[], repsPerRun: number): Promise<KillResult> {
  const dataFolder = await mkdtemp(join(tmpdir(), "overcue-kills-"));
  let outbox: Outbox | null = null;
  let acknowledgedBeforeAKill = 0;
  let acknowledgedButLost = 0;
  let writtenButNotAcknowledged = 0;

  for (const delay of [...afterMs, null]) {
    const relay = await startRelayProcess(dataFolder);
    const { socket } = await joinRelay(relay.origin, "capture", { secret: relay.secret });
    if (outbox === null) outbox = openOutbox(socket);
    else outbox.useSocket(socket);
    if (delay === null) {
      await outbox.emptied();
      socket.disconnect();
      await relay.end();
      continue;
    }
    for (let i = 0; i < repsPerRun; i += 1) outbox.add(sampleRep(undefined, 500));
    await wait(delay);
    await relay.kill();
    socket.disconnect();
    const inBook = new Set(repIdsInBook(dataFolder));
    acknowledgedBeforeAKill = outbox.acknowledged.size;
    acknowledgedButLost += [...outbox.acknowledged].filter((id) => !inBook.has(id)).length;
    writtenButNotAcknowledged += [...inBook].filter((id) => outbox?.acknowledged.has(id) === false).length;
  }

  const inBook = repIdsInBook(dataFolder);
  const distinct = new Set(inBook);
  const sent = outbox?.sent ?? new Set<string>();
  await rm(dataFolder, { recursive: true, force: true });
  return {
    kills: afterMs.length,
    repsSent: sent.size,
    acknowledgedBeforeAKill,
    acknowledgedButLost,
    writtenButNotAcknowledged,
    missingAtTheEnd: [...sent].filter((id) => !distinct.has(id)).length,
    doubledAtTheEnd: inBook.length - distinct.size,
  };
}
