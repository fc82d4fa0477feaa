import type { SetUpCheckId } from "@overcue/shared-geometry/wire/set-up-checks";
import { usePhoneState, useSession } from "./use-phone.ts";

/** The button for what is to be done next, where a button can do it. */
export function NextAction({ next }: { readonly next: SetUpCheckId | null }) {
  const session = useSession();
  const hasTorch = usePhoneState((state) => state.hasTorch);
  const torchOn = usePhoneState((state) => state.torchOn);
  if (next === "rod-colour") return <RodButtons />;
  if (next === "space-clear") {
    return (
      <button
        type="button"
        onClick={() => {
          session.setSpaceClear(true);
        }}
      >
        Space is clear
      </button>
    );
  }
  if (next === "light" && hasTorch && !torchOn) {
    return (
      <button type="button" onClick={() => void session.setTorch(true)}>
        Light on
      </button>
    );
  }
  return null;
}

/** The rod's colour is learnt from one tap on the picture, which is asked for here. */
export function RodButtons() {
  const session = useSession();
  const tapping = usePhoneState((state) => state.tappingRod);
  const note = usePhoneState((state) => state.rodNote);
  return (
    <>
      {note !== "" && <p className="note">{note}</p>}
      <div className="pair">
        <button
          type="button"
          aria-pressed={tapping}
          onClick={() => {
            session.askForRod(!tapping);
          }}
        >
          {tapping ? "Now tap the rod" : "Tap the rod"}
        </button>
        <button
          type="button"
          onClick={() => {
            session.setNoRod();
          }}
        >
          No coloured rod
        </button>
      </div>
    </>
  );
}
