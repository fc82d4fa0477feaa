import { secretFromFragment } from "@overcue/shared-geometry/wire/pairing";
import { openUplink, type Uplink } from "../link/open-uplink.ts";
import { openRepBox } from "../link/rep-box.ts";
import { memoryRepStore, openRepStore } from "../link/rep-store.ts";
import { choosePose } from "../pose/choose-pose.ts";
import type { PoseClient } from "../pose/pose-client.ts";
import { captureState } from "./capture-state.ts";
import { createPhoneSession, type PhoneSession } from "./phone-session.ts";
import { createPhoneStore, type PhoneStore } from "./phone-store.ts";
import { watchBattery } from "./watch-battery.ts";

/** The screens hear how the phone is doing this often, milliseconds; reps that wait are tried again this often. */
const stateEvery = 1000;
const resendEvery = 15_000;

/** Puts the phone's parts together: store, uplink, waiting reps, pose model, session. */
export async function startPhone(): Promise<{ readonly store: PhoneStore; readonly session: PhoneSession }> {
  const store = createPhoneStore();
  const kept = await openRepStore().catch(() => null);

  const reps = openRepBox({
    store: kept ?? memoryRepStore(),
    send: async (rep) => {
      if (uplink === null) throw new Error("Not paired.");
      return await uplink.sendRep(rep);
    },
    onChange: (unsentReps, repTrouble) => {
      store.setState({ unsentReps, repTrouble });
    },
  });

  const secret = secretFromFragment(location.hash);
  const uplink: Uplink | null =
    secret === null
      ? null
      : openUplink({
          origin: location.origin,
          secret,
          name: "Phone",
          onState: (link) => {
            store.setState({ link, ...(link.is === "connected" ? {} : { peers: null }) });
            if (link.is === "connected") void reps.sendAll();
          },
          onPeers: (peers) => {
            store.setState({ peers });
          },
          onPractice: (practice) => {
            session.tellPractice(practice);
          },
        });
  if (uplink !== null) store.setState({ link: { is: "connecting" } });

  let pose: PoseClient | null = null;
  const poseSettled = choosePose().then(
    (chosen) => {
      pose = chosen;
      store.setState({ pose: { model: chosen.model, delegate: chosen.delegate } });
    },
    (error: unknown) => {
      const why = error instanceof Error ? error.message : String(error);
      store.setState({ trouble: `The pose model does not run in this browser, so nothing can be measured: ${why}` });
    },
  );
  const session = createPhoneSession({
    store,
    uplink,
    reps,
    pose: () => pose,
    poseSettled,
    now: () => performance.now(),
    newId: () => crypto.randomUUID(),
    databaseMissing: kept === null,
  });

  void watchBattery((battery) => {
    store.setState({ battery });
  });
  void reps.sendAll();
  setInterval(() => void reps.sendAll(), resendEvery);
  setInterval(() => uplink?.sendState(captureState(store.getState(), uplink.dropped())), stateEvery);
  return { store, session };
}
