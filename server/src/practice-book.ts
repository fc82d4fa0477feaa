import type { Acknowledgement } from "@overcue/shared-geometry/wire/events";
import type { PracticeCommand, PracticeState, SessionView } from "@overcue/shared-geometry/wire/practice";
import type { Rep } from "@overcue/shared-geometry/wire/rep";

/** What the relay needs of the practice: the rules and the book behind one door. */
export interface PracticeBook {
  /**
   * Resolves when the rep is durably written and the practice has moved on; the same id again changes nothing.
   * Rejects where it could not be written: the phone is told and keeps the rep.
   */
  addRep(rep: Rep): Promise<void>;
  state(): PracticeState;
  /**
   * The phone begins or ends to show the demo golfer: while it does, the practice is the invented golfer's, who begins anew with a baseline each time;
   * afterwards it is the last person's again.
   */
  showDemo(shown: boolean): void;
  /** `by`: who asks, as the others will read it. */
  command(command: PracticeCommand, by: string): Acknowledgement;
  sessionView(): SessionView;
  /** Calls `listener` after every change of `state()`; answers how to stop that. */
  onChange(listener: () => void): () => void;
  close(): void;
}
