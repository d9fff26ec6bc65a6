/** The names of sizes, and the folders their booklets stand in. */
import * as v from "valibot";
import { problemOf } from "../fields.ts";
import { type Block, emptyBlock } from "../node.ts";
import { type Problem, quoted } from "../problem.ts";
import { SIZES } from "../schema/sizes.ts";

/** A folder may bear it on any system. */
const NAME = /^[\p{L}\p{N}](?:[\p{L}\p{N} ._-]{0,38}[\p{L}\p{N}])?$/u;

/** The folder of a size: `size-b`, `size-extra-large`. */
export const folderOf = (name: string): string =>
  `size-${name
    .normalize("NFC")
    .toLowerCase()
    .replace(/[ ._-]+/g, "-")}`;

const FIELD = SIZES.pipe[0].item.pipe[0].entries.name;

/** Names that stand in the list, as they are read; what is wrong with one has its path. */
export function namesOf(entries: readonly (Block | undefined)[]): {
  readonly names: readonly (string | undefined)[];
  readonly problems: readonly { readonly path: string; readonly problem: Problem }[];
} {
  const problems: { path: string; problem: Problem }[] = [];
  const first = new Map<string, { at: number; name: string }>();
  const names = entries.map((entry, i) => {
    const written = (entry ?? emptyBlock()).name;
    if (typeof written !== "string") return undefined;
    const say = (problem: Problem): undefined => void problems.push({ path: `sizes.${i}.name`, problem });
    const read = v.safeParse(FIELD, written);
    if (!read.success) return say(problemOf(read.issues[0]) ?? NOTHING);
    const name = read.output;
    if (!NAME.test(name)) {
      return say({
        code: "size-name",
        text: `${quoted(name)} cannot be the name of a folder`,
        expected:
          "at most 40 letters, figures, spaces, full stops and hyphens, a letter or figure first and last",
      });
    }
    const before = first.get(folderOf(name));
    if (before) {
      return say({
        code: "size-name",
        text:
          before.name === name
            ? `${quoted(name)} is the name of another size too, entry ${before.at + 1} of the list`
            : `${quoted(name)} and ${quoted(before.name)}, entry ${before.at + 1} of the list, would both build into ${folderOf(name)}`,
        hint: "give each size its own name",
      });
    }
    first.set(folderOf(name), { at: i, name });
    return name;
  });
  return { names, problems };
}

const NOTHING: Problem = { code: "empty", text: "nothing is written here" };
