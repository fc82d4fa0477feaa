import { useRef, useState, type DragEvent } from "react";
import { openCamera } from "../frames/camera-source.ts";
import { openClip } from "../frames/clip-source.ts";
import type { PhoneSession } from "../session/phone-session.ts";
import { Mark } from "./mark.tsx";
import { usePhoneState, useSession } from "./use-phone.ts";
import { linkWords } from "./words.ts";

const startCamera = (session: PhoneSession): void =>
  void session.open("the camera", async () => {
    const camera = await openCamera();
    return { source: camera, settings: null, camera };
  });

const startClip = (session: PhoneSession, file: File): void =>
  void session.open(file.name, async () => ({ source: await openClip(file), settings: null, camera: null }));

const startDemo = (session: PhoneSession): void =>
  void session.open("the demo golfer", async () => {
    // Loaded when wanted: the scene and its renderer are as large as the rest of the page.
    const { openDemo } = await import("../frames/open-demo.ts");
    return await openDemo(() => session.practice());
  });

/** Where pictures are to come from. */
export function ChooseScreen() {
  const session = useSession();
  const opening = usePhoneState((state) => state.opening);
  const trouble = usePhoneState((state) => state.trouble);
  const link = usePhoneState((state) => state.link);
  const peers = usePhoneState((state) => state.peers);
  const unsent = usePhoneState((state) => state.unsentReps);
  const install = usePhoneState((state) => state.app.install);
  const picker = useRef<HTMLInputElement>(null);
  const [over, setOver] = useState(false);

  const onDrop = (event: DragEvent): void => {
    event.preventDefault();
    setOver(false);
    const [file] = event.dataTransfer.files;
    if (file !== undefined) startClip(session, file);
  };

  return (
    <main
      className={over ? "choose dropping" : "choose"}
      data-screen="choose"
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => {
        setOver(false);
      }}
      onDrop={onDrop}
    >
      <header>
        <h1>Where is the golfer?</h1>
        <Mark told={linkWords({ link, peers })} />
        {unsent > 0 && (
          <Mark
            told={{
              standing: "waiting",
              words: `${unsent} ${unsent === 1 ? "rep" : "reps"} kept here until the relay takes them`,
            }}
          />
        )}
      </header>
      {trouble !== null && (
        <p className="trouble" role="alert">
          {trouble}
        </p>
      )}
      <div className="choices">
        <button
          type="button"
          className="choice first"
          disabled={opening !== null}
          onClick={() => {
            startCamera(session);
          }}
        >
          <b>In front of this phone</b>
          <span>Asks for the camera, to find the club in its pictures. No picture leaves the phone.</span>
        </button>
        <button type="button" className="choice" disabled={opening !== null} onClick={() => picker.current?.click()}>
          <b>In a recorded clip</b>
          <span>Choose a video, or drop one here.</span>
        </button>
        <button
          type="button"
          className="choice"
          disabled={opening !== null}
          onClick={() => {
            startDemo(session);
          }}
        >
          <b>Nobody here: demo golfer</b>
          <span>An invented golfer rehearses, to show how everything works. It has a book of its own.</span>
        </button>
      </div>
      <nav className="choose-more">
        {install !== null && (
          <button type="button" onClick={() => void install()}>
            Install on this phone
          </button>
        )}
        <button
          type="button"
          onClick={() => {
            session.show("help");
          }}
        >
          Help, place and cautions
        </button>
      </nav>
      <p className="opening" role="status">
        {opening !== null && `Opening ${opening}…`}
      </p>
      <input
        ref={picker}
        type="file"
        accept="video/*"
        hidden
        onChange={(event) => {
          const [file] = event.target.files ?? [];
          event.target.value = "";
          if (file !== undefined) startClip(session, file);
        }}
      />
    </main>
  );
}
