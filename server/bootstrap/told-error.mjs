/** An error whose message is a sentence for the person at the terminal. */
export class ToldError extends Error {}

/** Runs a program of the bootstrap: a told error is one sentence and exit code 1, anything else a bug with its stack. */
export async function tellErrors(program) {
  try {
    await program();
  } catch (error) {
    console.error(error instanceof ToldError ? error.message : error);
    process.exitCode = 1;
  }
}
