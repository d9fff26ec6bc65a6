/**
 * A mutation run: changes the solvers and the quantities in one small place at a time, in a copy, and sees whether any
 * test notices. `npm run mutate -- --sample 60 --seed 1 --seconds 120`;
 * `--only solve/gauging,tape.ts:15:34` takes only the mutants of these files or places, `--list` names them.
 *
 * Every mutant goes through the quick tests first, then, if it lives, through the dear ones. Nothing in the tree is touched.
 */
import { spawn } from "node:child_process";
import {
  cpSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { mutantsOf } from "./mutants.mjs";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const FOLDERS = ["src/solve", "src/quantity"];
/** Lists of names, types and words: there is nothing in them to calculate. */
const LEFT_OUT = new Set(["src/solve/names.ts", "src/solve/plan.ts", "src/quantity/formula-error.ts"]);

const { values: options } = parseArgs({
  options: {
    sample: { type: "string", default: "60" },
    seed: { type: "string", default: "1" },
    only: { type: "string", default: "" },
    seconds: { type: "string", default: "120" },
    list: { type: "boolean", default: false },
  },
});

function whole(name, least) {
  const number = Number(options[name]);
  if (Number.isSafeInteger(number) && number >= least) return number;
  console.error(`--${name} ${options[name]}: a whole number of ${least} or more was expected`);
  process.exit(2);
}

/** The same order for the same seed (mulberry32). */
function shuffled(list, seed) {
  let state = seed;
  const next = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  return list
    .map((item) => [next(), item])
    .sort(([a], [b]) => a - b)
    .map(([, item]) => item);
}

const name = ({ file, line, column, from, to }) => `${file}:${line}:${column}  ${from}  ->  ${to}`;

const files = FOLDERS.flatMap((folder) => readdirSync(`${ROOT}${folder}`).map((name) => `${folder}/${name}`))
  .filter((file) => file.endsWith(".ts") && !LEFT_OUT.has(file))
  .sort();
const all = files
  .flatMap((file) => mutantsOf(readFileSync(`${ROOT}${file}`, "utf8")).map((mutant) => ({ file, ...mutant })))
  .filter(
    (mutant) => options.only === "" || options.only.split(",").some((part) => name(mutant).includes(part)),
  );
const chosen = shuffled(all, whole("seed", 0)).slice(0, whole("sample", 1));
const limit = whole("seconds", 5) * 1000;

if (options.list) {
  for (const mutant of all) console.log(name(mutant));
  console.log(`${all.length} mutants in ${files.length} files`);
  process.exit(0);
}

const copy = mkdtempSync(join(tmpdir(), "plainwork-mutants-"));
process.on("exit", () => rmSync(copy, { recursive: true, force: true }));
for (const signal of ["SIGINT", "SIGTERM"]) process.on(signal, () => process.exit(130));
for (const part of ["src", "templates", "tests", "demo-projects", "package.json", "tsconfig.json"])
  cpSync(`${ROOT}${part}`, join(copy, part), { recursive: true });
symlinkSync(realpathSync(`${ROOT}node_modules`), join(copy, "node_modules"));

/** Runs one set of tests in the copy: "passed", "failed", or "time" when it was not done in time. */
function tested(set) {
  return new Promise((resolve) => {
    const child = spawn(
      process.execPath,
      ["node_modules/vitest/vitest.mjs", "run", "--config", "tests/mutate/vitest.config.ts", "--bail", "1"],
      {
        cwd: copy,
        env: { ...process.env, PLAINWORK_MUTATE: set },
        stdio: ["ignore", "pipe", "pipe"],
        detached: true,
      },
    );
    let said = "";
    child.stdout.on("data", (data) => {
      said += data;
    });
    child.stderr.on("data", (data) => {
      said += data;
    });
    let late = false;
    const timer = setTimeout(() => {
      late = true;
      process.kill(-child.pid, "SIGKILL");
    }, limit);
    child.on("close", (code) => {
      clearTimeout(timer);
      resolve({ result: late ? "time" : code === 0 ? "passed" : "failed", said });
    });
  });
}

for (const set of ["quick", "dear"]) {
  const { result, said } = await tested(set);
  if (result === "passed") continue;
  console.error(
    `${said.slice(-3000)}\nThe ${set} tests must pass on the program as it is before it is changed.`,
  );
  process.exit(1);
}

const survived = [];
const killed = { quick: 0, dear: 0, time: 0 };
console.log(`${chosen.length} of ${all.length} mutants in ${files.length} files, seed ${options.seed}`);
for (const mutant of chosen) {
  const path = join(copy, mutant.file);
  writeFileSync(path, mutant.text);
  let verdict = "SURVIVED";
  for (const set of ["quick", "dear"]) {
    const { result } = await tested(set);
    if (result === "passed") continue;
    verdict = result === "time" ? "killed (time)" : `killed (${set})`;
    killed[result === "time" ? "time" : set] += 1;
    break;
  }
  writeFileSync(path, readFileSync(`${ROOT}${mutant.file}`));
  if (verdict === "SURVIVED") survived.push(mutant);
  console.log(`${verdict.padEnd(14)} ${name(mutant)}`);
}
const dead = chosen.length - survived.length;
console.log(
  `\nkilled ${dead} of ${chosen.length} (${((100 * dead) / chosen.length).toFixed(1)} %): quick tests ${killed.quick}, dear tests ${killed.dear}, out of time ${killed.time}`,
);
for (const mutant of survived) console.log(`survived  ${name(mutant)}`);
