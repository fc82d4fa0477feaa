import type { Acknowledgement } from "@overcue/shared-geometry/wire/events";
import type { Rep } from "@overcue/shared-geometry/wire/rep";

/** Where reps wait until the relay has them on disk. */
export interface RepStore {
  put(rep: Rep): Promise<void>;
  all(): Promise<readonly Rep[]>;
  remove(id: string): Promise<void>;
}

export interface RepBox {
  /** Keeps the rep, then tries to send it. Resolves when it is kept. */
  add(rep: Rep): Promise<void>;
  /** Sends everything that waits, oldest first; to be called at each connection and now and then. */
  sendAll(): Promise<void>;
}

export interface RepBoxParts {
  readonly store: RepStore;
  /** Rejects where no answer came. */
  readonly send: (rep: Rep) => Promise<Acknowledgement>;
  readonly onChange: (unsent: number, trouble: string | null) => void;
}

/**
 * Reps on their way to the book: stored first, removed only when the relay says that they are on disk. A rep that the relay refuses stays
 * too and is tried again at the next connection, so that nothing is lost to a fault that can be mended.
 */
export function openRepBox({ store, send, onChange }: RepBoxParts): RepBox {
  let sending: Promise<void> | null = null;
  let asked = 0;

  async function sendOnce(): Promise<void> {
    let trouble: string | null = null;
    for (const rep of (await store.all()).toSorted((a, b) => a.endedAt - b.endedAt)) {
      try {
        const answer = await send(rep);
        if (answer.ok) await store.remove(rep.id);
        else trouble = answer.why;
      } catch {
        // No connection: the others would not get through either.
        break;
      }
    }
    onChange((await store.all()).length, trouble);
  }

  /** What was asked for while sending is sent as well. */
  async function run(): Promise<void> {
    for (let done = -1; done !== asked;) {
      done = asked;
      await sendOnce();
    }
  }

  const sendAll = (): Promise<void> => {
    asked++;
    sending ??= run().finally(() => {
      sending = null;
    });
    return sending;
  };

  return {
    async add(rep) {
      await store.put(rep);
      void sendAll();
    },
    sendAll,
  };
}
