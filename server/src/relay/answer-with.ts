import type { Acknowledgement } from "@overcue/shared-geometry/wire/events";
import type { SessionView } from "@overcue/shared-geometry/wire/practice";

/**
 * The acknowledgement that a sender waits for, if it waits for one: the last argument where that is a function.
 * A sender that wants no answer is served all the same.
 */
export function answerWith(args: readonly unknown[]): (result: Acknowledgement | SessionView | number) => void {
  const last = args.at(-1);
  return typeof last === "function" ? (result) => void Reflect.apply(last, undefined, [result]) : () => undefined;
}
