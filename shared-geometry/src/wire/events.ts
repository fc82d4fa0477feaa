import type { CaptureState, Peers } from "./hello.ts";
import type { Estimate } from "./estimate.ts";
import type { Pairing } from "./pairing.ts";
import type { LiveCheckpoint, NoRep, Rep } from "./rep.ts";
import type { PracticeCommand, PracticeState, SessionView } from "./practice.ts";

/** The relay's answer to a message that must not be lost. */
export type Acknowledgement = { readonly ok: true } | { readonly ok: false; readonly why: string };

/** From a page to the relay. Everything arrives as `unknown` and is parsed there. */
export interface ToRelay {
  /** Round trip for the clock: answers the relay's own time in milliseconds. */
  clock: (answer: (relayTime: number) => void) => void;
  estimate: (estimate: Estimate) => void;
  checkpoint: (checkpoint: LiveCheckpoint) => void;
  noRep: (noRep: NoRep) => void;
  rep: (rep: Rep, answer: (result: Acknowledgement) => void) => void;
  captureState: (state: CaptureState) => void;
  practice: (command: PracticeCommand, answer: (result: Acknowledgement) => void) => void;
  sessionView: (answer: (view: SessionView) => void) => void;
}

/** From the relay to a page. */
export interface FromRelay {
  estimate: (estimate: Estimate) => void;
  checkpoint: (checkpoint: LiveCheckpoint) => void;
  noRep: (noRep: NoRep) => void;
  rep: (rep: Rep) => void;
  captureState: (state: CaptureState) => void;
  practice: (state: PracticeState) => void;
  peers: (peers: Peers) => void;
  /** To ground screens only, as they connect and at each change of address. */
  pairing: (pairing: Pairing) => void;
  /** Something the relay dropped or could not do: one sentence. */
  trouble: (sentence: string) => void;
}
