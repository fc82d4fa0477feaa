/** An error whose message is one sentence for the person at the terminal: what is wrong and what to do. */
export class ToldError extends Error {
  override readonly name = "ToldError";
}
