import { newerBuild } from "../installed/compare-build.ts";
import { keepPage } from "../installed/keep-page.ts";
import { watchInstall } from "../installed/watch-install.ts";
import { openUplink, type Uplink } from "../link/open-uplink.ts";
import { openRepBox } from "../link/rep-box.ts";
import { pairingSecret } from "../link/remembered-secret.ts";
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
/** In the session's storage: the newer page for which this one was loaded anew. */
const loadedFor = "overcue.loaded-for";

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

  const secret = pairingSecret(location.hash);
  const uplink: Uplink | null =
    secret === null
      ? null
      : openUplink({
          origin: location.origin,
          secret,
          name: "Phone",
          onState: (link) => {
            store.setState({ link, ...(link.is === "connected" ? {} : { peers: null }) });
            if (link.is !== "connected") return;
            void reps.sendAll();
            void loadNewerPage(store);
            session.tellConnected();
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

  watchInstall((app) => {
    store.setState({ app });
  });
  // The browser fetches the whole page once more to keep it: the model that is wanted now comes first.
  void poseSettled.then(keepPage).then(async (certificate) => {
    store.setState({ certificate });
    if (certificate !== "trusted") return;
    // Active only when every file has been kept.
    await navigator.serviceWorker.ready;
    store.setState({ kept: true });
  });
  void watchBattery((battery) => {
    store.setState({ battery });
  });
  void reps.sendAll();
  setInterval(() => void reps.sendAll(), resendEvery);
  setInterval(() => uplink?.sendState(captureState(store.getState(), uplink.dropped())), stateEvery);
  return { store, session };
}

/** A page that was kept, or that stayed open while the relay was renewed, gives way to the relay's own as soon as nothing is running. */
async function loadNewerPage(store: PhoneStore): Promise<void> {
  const build = await newerBuild();
  store.setState({ newerPage: build !== null });
  // Loaded once and still another one: something between here and the relay keeps the old page, and loading it again would not end.
  const isAsked = (): boolean => sessionStorage.getItem(loadedFor) === build;
  if (build === null || isAsked()) return;
  const whenIdle = ({ source, opening }: { source: unknown; opening: unknown }): void => {
    // What is told while the page goes away would begin the loading anew.
    if (source !== null || opening !== null || isAsked()) return;
    sessionStorage.setItem(loadedFor, build);
    location.reload();
  };
  store.subscribe(whenIdle);
  whenIdle(store.getState());
}
