import { Mark } from "./mark.tsx";
import { usePhoneState } from "./use-phone.ts";
import { appWords } from "./words.ts";

/** Whether the page is kept on this phone and can be installed, and what is lacking where not. */
export function AppSection() {
  const certificate = usePhoneState((state) => state.certificate);
  const kept = usePhoneState((state) => state.kept);
  const app = usePhoneState((state) => state.app);
  const { told, lacks } = appWords(certificate, kept, app);
  const { install } = app;
  return (
    <section className="app">
      <h2>This page as an app</h2>
      <Mark told={told} />
      {lacks !== "" && <p>{lacks}</p>}
      {install !== null && (
        <button type="button" onClick={() => void install()}>
          Install on this phone
        </button>
      )}
    </section>
  );
}
