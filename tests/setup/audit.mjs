/** Asks the registry for known faults of what the program carries; says so when it does not answer. Exit 1 only for faults found. */
import { spawnSync } from "node:child_process";

const { stdout } = spawnSync("npm", ["audit", "--json"], { encoding: "utf8", timeout: 120_000 });
let found;
try {
  found = JSON.parse(stdout).metadata?.vulnerabilities;
} catch {
  found = undefined;
}
if (!found) {
  console.log("the registry gave no answer: nothing is known of faults in the packages");
} else {
  console.log(
    `known faults: ${found.total} (critical ${found.critical}, high ${found.high}, moderate ${found.moderate}, low ${found.low})`,
  );
  process.exitCode = found.total > 0 ? 1 : 0;
}
