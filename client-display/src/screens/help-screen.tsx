import { cautions } from "@overcue/shared-geometry/wire/cautions";
import { Panel } from "./panel.tsx";

export function HelpScreen() {
  return (
    <Panel name="help" title="Help">
      <div className="columns">
        <section>
          <h2>What the ground shows</h2>
          <ul>
            <li>Three black lines are your sticks: ball line, toe line, heel line, as you look down on them.</li>
            <li>FEEL, hatched: where to point the club by feel. It is farther than you need, on purpose.</li>
            <li>WANT, dotted: where the club should really point.</li>
            <li>
              The open ring is where the butt end points now, the open square is the club head. The soft patch round it
              is how wrong it may be.
            </li>
            <li>A filled mark stays where a checkpoint was passed.</li>
            <li>“Unsure” names two bands: the measurement cannot tell them apart, so it does not.</li>
            <li>The hatching fades while you hit the wanted band and comes back when you miss it.</li>
          </ul>
        </section>
        <section>
          <h2>Keys</h2>
          <ul>
            <li>Escape or a tap on Menu: everything that can be done.</li>
            <li>
              V void the last rep, N next stage, P pause, M mute, S session, Q quiet, 1 to 7 the band it felt like.
            </li>
            <li>
              Presenter remote: forward moves the highlight, back chooses, the blank key pauses. With one button, switch
              on “one button” under Screen and sound: the highlight moves by itself.
            </li>
          </ul>
        </section>
        <section>
          <h2>Cautions</h2>
          <ul>
            {cautions.map((caution) => (
              <li key={caution}>{caution}</li>
            ))}
          </ul>
        </section>
        <section>
          <h2>What is known about it</h2>
          <p>
            Feeling the opposite, and more of it than is wanted, is common practice. No controlled study of it was
            found. The practice book measures whether it works for you.
          </p>
        </section>
      </div>
    </Panel>
  );
}
