/**
 * A mutation run: changes the solvers and the quantities in one small place at a time, in what is bundled of them, and sees
 * whether any test notices. `npm run mutate -- --sample 60 --seed 1`; `--skip 12` leaves out the first twelve of
 * the sample, `--seconds 30` is the least that one file of tests may take before it counts as running for ever;
 * `--only solve/gauging,tape.ts:15:34` takes only the mutants of these files or places, `--list` names them.
 *
 * Every mutant goes through the quick tests first, then, if it lives, through the dear ones. Nothing in the tree is touched.
 */
import { fork } from "node:child_process";
import {
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
import { fileURLToPath, pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import { isDear, makeBundler, ROOT, testsFor } from "./bundle.mjs";
import { mutantsOf } from "./mutants.mjs";

const FOLDERS = ["src/solve", "src/quantity"];
/** Lists of names, types and words: there is nothing in them to calculate. */
const LEFT_OUT = new Set(["src/solve/names.ts", "src/solve/plan.ts", "src/quantity/formula-error.ts"]);

const { values: options } = parseArgs({
  options: {
    sample: { type: "string", default: "60" },
    seed: { type: "string", default: "1" },
    only: { type: "string", default: "" },
    seconds: { type: "string", default: "30" },
    skip: { type: "string", default: "0" },
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
const chosen = shuffled(all, whole("seed", 0)).slice(whole("skip", 0), whole("sample", 1));
const limit = whole("seconds", 5) * 1000;

if (options.list) {
  for (const mutant of all) console.log(name(mutant));
  console.log(`${all.length} mutants in ${files.length} files`);
  process.exit(0);
}

const folder = mkdtempSync(join(tmpdir(), "plainwork-mutants-"));
symlinkSync(realpathSync(`${ROOT}node_modules`), join(folder, "node_modules"));
let child;
process.on("exit", () => {
  child?.kill("SIGKILL");
  rmSync(folder, { recursive: true, force: true });
});
for (const signal of ["SIGINT", "SIGTERM"]) process.on(signal, () => process.exit(130));

/** A process keeps every bundle it has read; after so many it makes room for a new one. */
const BUNDLES = 12;
let bundles = 0;

function asked() {
  if (child && bundles % BUNDLES === 0) {
    child.removeAllListeners();
    child.kill();
    child = undefined;
  }
  bundles += 1;
  child ??= fork(fileURLToPath(new URL("child.mjs", import.meta.url)), {
    cwd: ROOT,
    stdio: ["ignore", "ignore", "inherit", "ipc"],
  });
  return child;
}

const bundler = await makeBundler();

/** How long each file took on the program as it is, in milliseconds. */
const usual = new Map();

/** Runs the tests on the program with `text` in place of `file`: what failed first, and in what file; `failed: false` where all pass. */
async function tested(file = "", text = "") {
  const path = join(folder, `${bundles}.mjs`);
  try {
    writeFileSync(path, await bundler.make(file, text));
  } catch (error) {
    return { failed: true, file: "", test: `no program: ${String(error).slice(0, 300)}` };
  }
  const answer = await new Promise((resolve) => {
    const runner = asked();
    let timer;
    let at = { file: "", since: Date.now() };
    const done = (given) => {
      clearTimeout(timer);
      runner.removeAllListeners();
      if (given.gone) child = undefined;
      resolve(given);
    };
    /** A file that takes many times as long as it should runs for ever. */
    const begin = (next) => {
      if (file === "" && at.file) usual.set(at.file, Date.now() - at.since);
      at = { file: next, since: Date.now() };
      clearTimeout(timer);
      timer = setTimeout(
        () => {
          runner.removeAllListeners();
          runner.kill("SIGKILL");
          done({ failed: true, gone: true, file: "time", test: `${next} did not end` });
        },
        Math.max(limit, 6 * (usual.get(next) ?? 100_000)),
      );
    };
    begin("");
    runner.on("message", (given) => ("at" in given ? begin(given.at) : done(given)));
    runner.once("exit", () => done({ failed: true, gone: true, file: "", test: "the process ended" }));
    runner.send({ bundle: pathToFileURL(path).href, tests: testsFor(file) });
  });
  rmSync(path);
  return answer;
}

const sound = await tested();
if (sound.failed) {
  console.error(
    `${sound.file}: ${sound.test}\nThe tests must pass on the program as it is before it is changed.`,
  );
  process.exit(1);
}

const survived = [];
const killed = { quick: 0, dear: 0, time: 0 };
console.log(`${chosen.length} of ${all.length} mutants in ${files.length} files, seed ${options.seed}`);
for (const mutant of chosen) {
  const { failed, file, test } = await tested(mutant.file, mutant.text);
  const how = file === "time" ? "time" : isDear(file) ? "dear" : "quick";
  if (failed) killed[how] += 1;
  else survived.push(mutant);
  const by = failed ? `    ${file}: ${test.split("\n")[0]}` : "";
  console.log(`${(failed ? `killed (${how})` : "SURVIVED").padEnd(14)} ${name(mutant)}${by}`);
}
const dead = chosen.length - survived.length;
console.log(
  `\nkilled ${dead} of ${chosen.length} (${((100 * dead) / chosen.length).toFixed(1)} %): quick tests ${killed.quick}, dear tests ${killed.dear}, out of time ${killed.time}`,
);
for (const mutant of survived) console.log(`survived  ${name(mutant)}`);
await bundler.done();
process.exit(0);
