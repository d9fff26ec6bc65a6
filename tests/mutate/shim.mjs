/**
 * What the tests take from vitest, without a runner: vitest's own `expect`, and `it` and `describe` that collect. Bundled with
 * the tests in its place, so that hundreds of runs share one process and no run waits for modules to be read.
 */
import { JestAsymmetricMatchers, JestChaiExpect } from "@vitest/expect";
import * as chai from "chai";
import fc from "fast-check";

chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);
// One seed for every property, so that a run can be run again; a failure need not be made small.
fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: 1855, endOnFailure: true });

/** `expect.arrayContaining` and its like come with the second plugin. */
export const expect = chai.expect;

let collected = [];
const SKIPPED = Symbol("skipped");
const context = {
  skip: () => {
    throw SKIPPED;
  },
};

export function it(name, run) {
  collected.push({ name, run: () => run(context) });
}
const each = (call) => (cases) => (name, run) => {
  for (const one of cases) {
    const args = Array.isArray(one) ? one : [one];
    call(`${name} [${String(args[0])}]`, () => run(...args));
  }
};
it.each = each(it);
export const test = it;

export function describe(_, body) {
  body();
}
describe.each = each(describe);

/** Reads one file of tests and runs it up to the first test that fails; its name, or undefined where all pass. */
export async function runFile(read) {
  collected = [];
  try {
    await read();
  } catch (error) {
    return `while it is read: ${error}`;
  }
  for (const { name, run } of collected) {
    try {
      await run();
    } catch (error) {
      if (error !== SKIPPED) return `${name}: ${error?.message ?? error}`;
    }
  }
  return undefined;
}
