// Counts what held and what did not, and says so as it goes.
let passed = 0;
let failed = 0;

/** Runs one check. It fails by throwing; a text that it answers is printed behind its name. */
export async function check(name, run) {
  try {
    const note = await run();
    passed++;
    console.log(`ok    ${name}${note ? `: ${note}` : ''}`);
  } catch (error) {
    failed++;
    console.log(`FAIL  ${name}\n      ${String(error?.message ?? error).replaceAll('\n', '\n      ')}`);
  }
}

/** The closing line and the exit code. */
export function finish(word) {
  console.log(`${word}: ${passed} passed, ${failed} failed`);
  process.exitCode = failed === 0 && passed > 0 ? 0 : 1;
}

export function insist(condition, message) {
  if (!condition) throw new Error(message);
}
