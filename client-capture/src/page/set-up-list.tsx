import type { CheckState, SetUpCheck } from "../checks/set-up-check.ts";
import { nextCheck } from "../checks/set-up-checks.ts";
import { checksOf } from "../session/checks-of.ts";
import { Mark } from "./mark.tsx";
import { NextAction } from "./next-action.tsx";
import { usePhoneState } from "./use-phone.ts";
import type { Standing } from "./words.ts";

const standings: Readonly<Record<CheckState, Standing>> = {
  ok: "good",
  "not-yet": "waiting",
  problem: "bad",
  unknown: "open",
};

/** One thing to do next, with the button for it, and the whole list behind it. */
export function SetUpList() {
  // Made anew at each change of the state, a few times a second; compared as text so that React draws only what is new.
  const text = usePhoneState((state) => JSON.stringify(checksOf(state)));
  const checks = JSON.parse(text) as readonly SetUpCheck[];
  const next = nextCheck(checks);
  const done = checks.filter(({ state }) => state === "ok").length;
  return (
    <section className="set-up">
      <div role="status">
        {next === null ? (
          <p className="next">All set: take your stance.</p>
        ) : (
          <p className="next">
            <b>Next:</b> {next.todo === "" ? next.words : next.todo}
          </p>
        )}
      </div>
      <NextAction next={next?.id ?? null} />
      <details>
        <summary>
          Set-up: {done} of {checks.length} done
        </summary>
        <ul className="checks">
          {checks.map(({ id, state, words }) => (
            <li key={id} data-check={id} data-state={state}>
              <Mark told={{ standing: standings[state], words }} />
            </li>
          ))}
        </ul>
      </details>
    </section>
  );
}
