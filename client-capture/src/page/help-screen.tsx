import { cautions } from "@overcue/shared-geometry/wire/cautions";
import { AppSection } from "./app-section.tsx";
import { PlaceChoice } from "./place-choice.tsx";
import { useSession } from "./use-phone.ts";

export function HelpScreen() {
  const session = useSession();
  return (
    <main className="reading" data-screen="help">
      <h1>Help</h1>
      <section>
        <h2>Set up in two minutes</h2>
        <ol>
          <li>Lay the three sticks: through the ball, along the toes, along the heels, all towards the target.</li>
          <li>
            Stand the phone upright on a tripod, about 4 m behind the ball, lens at hand height, on the hand line.
          </li>
          <li>Take your stance. Head, feet and the club at the top must be in the picture.</li>
          <li>Press “Set the sticks”, and check each mark on its stick.</li>
          <li>Hold still and tap the rod in the picture. Without a coloured rod, say so.</li>
          <li>Press “Practise”. The screen goes dark to spare the battery; the ground screen has the rest.</li>
        </ol>
      </section>
      <section>
        <h2>What is drawn over the picture</h2>
        <ul>
          <li>A whole yellow line: the shaft, found in this picture.</li>
          <li>A dashed white line: where the shaft should be; it is not seen just now.</li>
          <li>Thin blue lines: the body.</li>
        </ul>
      </section>
      <AppSection />
      <section>
        <h2>Place</h2>
        <PlaceChoice />
      </section>
      <section>
        <h2>Cautions</h2>
        <ul>
          {cautions.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      </section>
      <button
        type="button"
        className="main-action"
        onClick={() => {
          session.show("live");
        }}
      >
        Back
      </button>
    </main>
  );
}
