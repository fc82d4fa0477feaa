import type { CheckState } from "../checks/set-up-check.ts";
import { nextCheck } from "../checks/set-up-checks.ts";
import { Mark } from "./mark.tsx";
import { NextAction } from "./next-action.tsx";
import { useChecks } from "./use-checks.ts";
import type { Standing } from "./words.ts";

const standings: Readonly<Record<CheckState, Standing>> = {
  ok: "good",
  "not-yet": "waiting",
  problem: "bad",
  unknown: "open",
};

/** One thing to do next, with the button for it, and the whole list behind it. */
export function SetUpList() {
  const checks = useChecks();
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
