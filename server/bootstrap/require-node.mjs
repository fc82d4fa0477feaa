// Written so that a Node of ten years ago still reads it far enough to say what is wrong.
export const leastNode = 20;

/** Ends the program with one sentence where the machine's Node is too old to bring the project's own. */
export function requireNode(version) {
  const major = Number(String(version).replace(/^v/, "").split(".")[0]);
  if (major >= leastNode) return;
  console.error(
    "Overcue needs Node " +
      leastNode +
      " or newer to start, and this is " +
      version +
      ": install a current one from nodejs.org.",
  );
  process.exit(1);
}
