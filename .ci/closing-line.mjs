// Ends a test run with one plain line: N passed, N failed, N skipped.
export default class ClosingLine {
  onTestRunEnd(modules) {
    const count = { passed: 0, failed: 0, skipped: 0 };
    for (const module of modules) {
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state in count) count[state] += 1;
        else count.failed += 1;
      }
      // A file that could not be loaded has no tests, and has failed all the same.
      count.failed += module.errors().length;
    }
    process.on('exit', () => {
      process.stdout.write(`${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped\n`);
    });
  }
}
