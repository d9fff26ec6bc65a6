/** `plainwork original`: measures of a garment that survives become a recipe, a report, and a row of the list of originals. */
import { createHash } from "node:crypto";
import { join } from "node:path";
import version from "plainwork:version";
import { BLANK_FILE, blankForm, blankSheet } from "../booklet/original/blank.ts";
import { originalJson, originalMarkdown, originalPage } from "../booklet/original/report.ts";
import { EVIDENCE_FILE } from "../recipe/evidence.ts";
import { withRow } from "../recipe/evidence-add.ts";
import { type Message, messageText } from "../recipe/message.ts";
import { ORIGINAL_FILE, readOriginal } from "../recipe/original/read.ts";
import type { Original } from "../recipe/original/schema.ts";
import type { EvidenceRow } from "../recipe/recipe.ts";
import { workOriginal } from "../solve/original/answers.ts";
import { KEEPS, type Keep } from "../solve/original/carry.ts";
import { UsageError } from "./find.ts";
import { locked } from "./lock.ts";
import { placeFile } from "./place.ts";
import { RECIPE_FILE } from "./project-files.ts";
import { readText } from "./texts.ts";
import type { World } from "./world.ts";

interface Asked {
  readonly folder: string;
  readonly keep?: Keep;
}

function readArguments(argv: readonly string[]): Asked {
  const folders: string[] = [];
  let keep: Keep | undefined;
  for (let i = 0; i < argv.length; i += 1) {
    const word = argv[i] as string;
    if (word === "--keep" || word.startsWith("--keep=")) {
      const named = word === "--keep" ? argv[++i] : word.slice(7);
      keep = KEEPS.find((each) => each === named);
      if (!keep) throw new UsageError(`--keep needs ${KEEPS.join(", ")} after it`);
    } else if (word.startsWith("-")) throw new UsageError(`"${word}" is not an option of original`);
    else folders.push(word);
  }
  const [folder, ...more] = folders;
  if (folder === undefined || more.length > 0) throw new UsageError("original needs one folder");
  return { folder, ...(keep ? { keep } : {}) };
}

/**
 * Runs the command: 0 done, 1 the sheet has errors or its garment cannot be made, 2 wrong use. Without an original.yaml the
 * folder gets the blank sheet and a form to fill in. A recipe that was changed by hand is never written over.
 */
export function original(argv: readonly string[], world: World): number {
  const { folder, keep } = readArguments(argv);
  const full = world.resolve(folder);
  if (world.kind(full) === "file") throw new UsageError(`"${folder}" is a file, not a folder`);
  world.makeFolder(full);
  const path = join(full, ORIGINAL_FILE);
  const shown = join(folder, ORIGINAL_FILE);
  if (world.kind(path) === undefined) return begin(world, full, folder);
  const text = readText(world, path, "sheet", "keep notes short");
  if (typeof text !== "string") {
    world.err(`${shown}: error [${text.code}] ${text.text}\n  do: ${text.hint}\n`);
    return 1;
  }
  const { original: sheet, placeOf, messages } = readOriginal(shown, text);
  if (!sheet) return refused(world, shown, messages, text);
  if (keep && !sheet.wearer) throw new UsageError(`--keep is for another body, and ${shown} has no wearer`);
  const worked = workOriginal(sheet, placeOf, keep);
  const all = [...messages, ...worked.messages];
  const { chosen } = worked;
  if (!chosen.text || !chosen.plan) {
    const why = chosen.messages.filter(({ level }) => level === "error").map(({ place: _, ...rest }) => rest);
    return refused(world, shown, [...all, ...why], text);
  }
  say(world, all, text);
  const markdown = originalMarkdown(sheet, worked);
  placeFile(world, join(full, "original.md"), markdown);
  placeFile(world, join(full, "original.html"), originalPage(`${sheet.title}: measured`, markdown, version));
  placeFile(world, join(full, "original.json"), originalJson(sheet, worked, version));
  world.out(`${join(folder, "original.html")} (and .md, .json) says what it comes to\n`);
  placeRecipe(world, full, folder, chosen.text);
  return placeRow(world, full, folder, rowOf(sheet)) ? 0 : 1;
}

function begin(world: World, full: string, folder: string): number {
  placeFile(world, join(full, BLANK_FILE), blankSheet(version));
  placeFile(world, join(full, ORIGINAL_FILE), blankForm());
  world.out(
    `${join(folder, BLANK_FILE)} to print and fill in, and ${join(folder, ORIGINAL_FILE)} to write it into. Then: plainwork original ${folder}\n`,
  );
  return 0;
}

function say(world: World, messages: readonly Message[], text: string): void {
  if (messages.length > 0) world.err(`${messages.map((message) => messageText(message, text)).join("\n")}\n`);
}

function refused(world: World, shown: string, messages: readonly Message[], text: string): number {
  say(world, messages, text);
  world.err(`${shown}: nothing is written\n`);
  return 1;
}

/** The line by which a recipe is known that the program wrote and nobody has changed since. */
const MARK = /^# plainwork original [0-9a-f]{16}\n/m;
const digest = (text: string): string => createHash("sha256").update(text).digest("hex").slice(0, 16);
const sealedRecipe = (text: string): string =>
  text.replace("---\n", `---\n# plainwork original ${digest(text)}\n`);
const isOurs = (text: string): boolean => {
  const bare = text.replace(MARK, "");
  return bare !== text && sealedRecipe(bare) === text;
};

function placeRecipe(world: World, full: string, folder: string, text: string): void {
  const path = join(full, RECIPE_FILE);
  const shown = join(folder, RECIPE_FILE);
  const before = world.kind(path) === "file" ? readText(world, path, "recipe", "") : undefined;
  if (before !== undefined && (typeof before !== "string" || !isOurs(before))) {
    world.err(
      `${shown}: note: it was written or changed by hand and is left as it is; move it away to have a new one from the sheet\n`,
    );
    return;
  }
  placeFile(world, path, sealedRecipe(text));
  world.out(`${shown} is written. Now: plainwork build ${folder}\n`);
}

function rowOf({ year, cloth, set, seen, title, note }: Original): EvidenceRow {
  return {
    year,
    set,
    ...(cloth.fibre ? { fibre: cloth.fibre } : {}),
    sheer: cloth.sheer,
    seen: seen ?? title,
    ...(note ? { note } : {}),
  };
}

function placeRow(world: World, full: string, folder: string, row: EvidenceRow): boolean {
  const path = join(full, EVIDENCE_FILE);
  const shown = join(folder, EVIDENCE_FILE);
  return locked(world, join(full, `.${EVIDENCE_FILE}.lock`), () => {
    const before =
      world.kind(path) === "file"
        ? readText(world, path, "list", "keep one line for each original")
        : undefined;
    if (typeof before === "object") {
      world.err(`${shown}: error [${before.code}] ${before.text}\n`);
      return false;
    }
    const added = withRow(shown, before, row);
    if ("messages" in added) {
      say(world, added.messages, before ?? "");
      world.err(`${shown}: no row is added\n`);
      return false;
    }
    if ("same" in added) {
      world.out(`${shown} has this original already\n`);
      return true;
    }
    placeFile(world, path, added.text, true);
    world.out(`${shown} has one row more\n`);
    return true;
  });
}
