/** The words after `build` and `check`. */
import { UsageError } from "../shelf/find.ts";
import type { Paper } from "../shelf/print.ts";

export interface Arguments {
  readonly command: "build" | "check";
  readonly paths: readonly string[];
  readonly out: string;
  readonly json: boolean;
  /** The paper to print on, when printing is asked. */
  readonly pdf: Paper | undefined;
  /** The only size that is wanted. */
  readonly size: string | undefined;
  /** Is everything built, also what has not changed? */
  readonly anew: boolean;
}

/** Words that stand after an option, as `--out DIR` or `--out=DIR`. */
function wordAfter(option: string, word: string, next: () => string | undefined, missing: string): string {
  const value = word.startsWith(`${option}=`) ? word.slice(option.length + 1) : next();
  if (value === undefined || value === "") throw new UsageError(missing);
  return value;
}

const isOption = (option: string, word: string): boolean => word === option || word.startsWith(`${option}=`);

/** Reads them; throws UsageError where they cannot be what is meant. @param words the command first */
export function readArguments([command, ...rest]: readonly string[]): Arguments {
  if (command !== "build" && command !== "check") throw new UsageError(`there is no command "${command}"`);
  const onlyBuild = (option: string): void => {
    if (command === "check") throw new UsageError(`check writes nothing, so ${option} does not go with it`);
  };
  const paths: string[] = [];
  let out = "output";
  let json = false;
  let pdf = false;
  let paper: Paper | undefined;
  let size: string | undefined;
  let anew = false;
  for (let i = 0; i < rest.length; i += 1) {
    const word = rest[i] as string;
    const next = (): string | undefined => rest[++i];
    if (word === "--json") json = true;
    else if (word === "--anew") {
      onlyBuild("--anew");
      anew = true;
    } else if (word === "--pdf") {
      onlyBuild("--pdf");
      pdf = true;
    } else if (isOption("--out", word)) {
      out = wordAfter("--out", word, next, "--out needs a folder after it");
      onlyBuild("--out");
    } else if (isOption("--size", word)) {
      size = wordAfter("--size", word, next, "--size needs the name of a size after it");
    } else if (isOption("--paper", word)) {
      const named = wordAfter("--paper", word, next, "--paper needs a4 or letter after it").toLowerCase();
      if (named !== "a4" && named !== "letter")
        throw new UsageError(`--paper is a4 or letter, not "${named}"`);
      onlyBuild("--paper");
      paper = named;
    } else if (word.startsWith("-")) throw new UsageError(`"${word}" is not an option of ${command}`);
    else paths.push(word);
  }
  if (paths.length === 0) throw new UsageError(`${command} needs a recipe or a folder`);
  if (paper && !pdf) throw new UsageError("--paper is for printing: write --pdf too");
  return { command, paths, out, json, pdf: pdf ? (paper ?? "a4") : undefined, size, anew };
}
