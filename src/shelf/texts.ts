/** Files of a project as text. */

import { LARGEST_TEXT } from "../recipe/limits.ts";
import type { Code } from "../recipe/messages/code.ts";
import type { World } from "./world.ts";

/** What is wrong with a file that should be text. */
export interface Unreadable {
  readonly code: Code;
  readonly text: string;
  readonly hint: string;
}

/** A file's text, or why it cannot be read; `what` names it, `smaller` says how to make it so. */
export function readText(
  world: World,
  path: string,
  what: string,
  smaller: string,
  most = LARGEST_TEXT,
): string | Unreadable {
  const size = world.size(path);
  if (size > most) {
    return {
      code: "too-large",
      text: `the ${what} is ${size} bytes long; at most ${most}`,
      hint: smaller,
    };
  }
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(world.read(path));
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    return { code: "not-text", text: `the ${what} is not UTF-8 text`, hint: "save it as UTF-8" };
  }
}
