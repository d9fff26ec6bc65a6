/** `plainwork new`: a commented recipe out of a few measures, checked by the program itself before it is written. */
import { join } from "node:path";
import { commentedRecipe } from "../recipe/commented.ts";
import { type Message, messageText } from "../recipe/message.ts";
import { problemAt } from "../recipe/one-field.ts";
import { readRecipe } from "../recipe/read.ts";
import { solve } from "../solve/solve.ts";
import { UsageError } from "./find.ts";
import { placeFile } from "./place.ts";
import { QUESTIONS, type Question } from "./questions.ts";
import type { World } from "./world.ts";

/** Every option of the command, with its recipe's key. */
const OPTIONS = new Map(
  QUESTIONS.flatMap(({ option, path, instead }) => [
    [option, path] as const,
    ...(instead ? [[instead.option, instead.path] as const] : []),
  ]),
);

interface Asked {
  readonly folder: string;
  readonly given: ReadonlyMap<string, string>;
}

function readArguments(argv: readonly string[]): Asked {
  const given = new Map<string, string>();
  const folders: string[] = [];
  for (let i = 0; i < argv.length; i += 1) {
    const word = argv[i] as string;
    if (!word.startsWith("-")) {
      folders.push(word);
      continue;
    }
    const [, name = "", joined] = /^--([\w-]+)(?:=(.*))?$/s.exec(word) ?? [];
    const path = OPTIONS.get(name);
    if (!path) {
      throw new UsageError(
        `"${word}" is not an option of new; there are ${[...OPTIONS.keys()].map((option) => `--${option}`).join(", ")}`,
      );
    }
    const value = joined ?? argv[++i];
    if (value === undefined) throw new UsageError(`--${name} needs its value after it`);
    const problem = problemAt(path, value);
    if (problem) {
      throw new UsageError(
        `--${name}: ${problem.text}${problem.hint ? `; ${problem.hint}` : ""}${problem.expected ? `; expected ${problem.expected}` : ""}`,
      );
    }
    given.set(path, value);
  }
  const [folder, ...more] = folders;
  if (folder === undefined || more.length > 0) throw new UsageError("new needs one folder");
  return { folder, given };
}

/** Runs the command: 0 written, 1 the measures cannot be made up, 2 wrong use. Never overwrites a recipe. */
export async function newProject(argv: readonly string[], world: World): Promise<number> {
  const { folder, given } = readArguments(argv);
  const path = join(world.resolve(folder), "recipe.md");
  const shown = join(folder, "recipe.md");
  if (world.kind(world.resolve(folder)) === "file")
    throw new UsageError(`"${folder}" is a file, not a folder`);
  if (world.kind(path) !== undefined) throw new UsageError(`${shown} is there already: it is left as it is`);
  const answers = await complete(given, world);
  const text = commentedRecipe(answers);
  const messages = faultsOf(text);
  if (messages.some(({ level }) => level === "error")) {
    world.err(`${messages.map((message) => messageText(message)).join("\n")}\n`);
    world.err(`nothing is written. The same again, to change a measure:\n  ${commandOf(folder, answers)}\n`);
    return 1;
  }
  world.makeFolder(world.resolve(folder));
  placeFile(world, path, text);
  world.out(`${shown} is written. Now: plainwork build ${quotedWord(folder)}\n`);
  return 0;
}

/** What is wrong with a recipe that has no notebook yet. */
function faultsOf(text: string): readonly Message[] {
  const read = readRecipe("recipe.md", text);
  const solved = read.recipe ? solve(read.recipe).messages : [];
  return [...read.messages, ...solved].map(({ place: _, ...message }) => message);
}

/** Asks for what is missing; without a terminal that is wrong use, and every missing option is named. */
async function complete(
  given: ReadonlyMap<string, string>,
  world: World,
): Promise<ReadonlyMap<string, string>> {
  const answers = new Map(given);
  for (const { option, path, instead } of QUESTIONS) {
    if (instead && answers.has(path) && answers.has(instead.path)) {
      throw new UsageError(`--${option} and --${instead.option} do not go together: give one of them`);
    }
  }
  const missing = QUESTIONS.filter(
    ({ path, instead }) => !answers.has(path) && !(instead && answers.has(instead.path)),
  );
  const needed = missing.filter(({ optional }) => !optional);
  if (needed.length === 0) return answers;
  if (!world.ask) {
    const options = needed.map(
      ({ option, instead }) => `--${option}${instead ? ` or --${instead.option}` : ""}`,
    );
    throw new UsageError(`there is no terminal to ask on, so new needs ${options.join(", ")}`);
  }
  for (const question of missing) await answer(question, answers, world);
  return answers;
}

async function answer(question: Question, answers: Map<string, string>, world: World): Promise<void> {
  const { path, asks, optional, instead } = question;
  const said = await asked(asks, path, optional === true || instead !== undefined, world);
  if (said !== undefined) answers.set(path, said);
  else if (instead)
    answers.set(instead.path, (await asked(instead.asks, instead.path, false, world)) as string);
}

/** Asks until the answer can be read; undefined for nothing, where that may be. */
async function asked(
  asks: string,
  path: string,
  mayBeNothing: boolean,
  world: World,
): Promise<string | undefined> {
  for (;;) {
    const said = await world.ask?.(`${asks} `);
    if (said === undefined) throw new UsageError("the questions were broken off: nothing is written");
    const text = said.trim();
    if (text === "" && mayBeNothing) return undefined;
    const problem = problemAt(path, text);
    if (!problem) return text;
    world.err(
      `  ${problem.text}${problem.expected ? `; expected ${problem.expected}` : ""}${problem.hint ? `; ${problem.hint}` : ""}\n`,
    );
  }
}

function commandOf(folder: string, answers: ReadonlyMap<string, string>): string {
  const options = [...OPTIONS].flatMap(([option, path]) => {
    const value = answers.get(path);
    return value === undefined ? [] : [`--${option} ${quotedWord(value)}`];
  });
  return `plainwork new ${[quotedWord(folder), ...options].join(" ")}`;
}

const quotedWord = (word: string): string =>
  /^[\w./-]+$/.test(word) ? word : `'${word.replaceAll("'", "'\\''")}'`;
