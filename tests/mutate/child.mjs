/**
 * Runs bundles one after the other as it is told: `{ bundle, tests }` comes, `{ at }` goes back when a
 * file is begun, `{ failed, file, test }` at the end. */
process.on("message", async ({ bundle, tests }) => {
  let answer = { failed: false };
  try {
    const { runFile, read } = await import(bundle);
    for (const file of tests) {
      process.send({ at: file });
      const test = await runFile(read[file]);
      if (test === undefined) continue;
      answer = { failed: true, file, test: test.slice(0, 300) };
      break;
    }
  } catch (error) {
    answer = { failed: true, file: "", test: `while it is read: ${error}` };
  }
  process.send(answer);
});
