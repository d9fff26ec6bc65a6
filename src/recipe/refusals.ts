/** YAML that a recipe does without: references, types, merges, and keys that are no words. */

import { isAlias, isScalar, type Node as YamlNode } from "yaml";
import type { Code } from "./messages/code.ts";
import { type Problem, quoted } from "./problem.ts";

/** `mark` is what stands before the value and is meant, where it is not the value itself. */
export interface Refusal {
  readonly problem: Problem;
  readonly mark?: string;
}

/** Why a node cannot be used, if it cannot. */
export function refusalOf(node: YamlNode): Refusal | undefined {
  if (isAlias(node)) {
    return refusal(
      "alias",
      `${quoted(`*${node.source}`)} refers to another value`,
      "write the value itself",
      "*",
    );
  }
  const { anchor, tag } = node as { anchor?: string; tag?: string };
  if (anchor !== undefined) {
    const text = `${quoted(`&${anchor}`)} names this value`;
    return { ...refusal("anchor", text, "leave the name out", "&"), mark: `&${anchor}` };
  }
  if (tag !== undefined) {
    const text = `${quoted(tag.replace("tag:yaml.org,2002:", "!!"))} sets a type for this value`;
    return { ...refusal("tag", text, "leave it out", "!"), mark: "!" };
  }
  return undefined;
}

function refusal(code: Code, text: string, instead: string, sign: string): Refusal {
  return { problem: { code, text, hint: `${instead}; a text that begins with ${sign} goes in quotes` } };
}

const FORBIDDEN = new Set(["__proto__", "constructor", "prototype"]);

/** A pair's key, or what is wrong with it. */
export function readKey(node: YamlNode | null): string | Problem {
  if (node && !isScalar(node)) {
    return {
      code: "key-kind",
      text: "a list or block stands where a key must",
      expected: "a key in words",
    };
  }
  const key = typeof node?.value === "string" ? node.value : "";
  return keyFault(key) ?? key;
}

/** What is wrong with a text as a key, if anything is. */
export function keyFault(key: string): Problem | undefined {
  if (key.trim() === "")
    return { code: "no-key", text: "there is no key before this colon", expected: "a key in words" };
  if (key === "<<") {
    const text = "<< would merge another block into this one";
    return { code: "merge-key", text, hint: "write the keys themselves" };
  }
  if (!FORBIDDEN.has(key)) return undefined;
  return { code: "forbidden-key", text: `${quoted(key)} cannot be a key`, hint: "take it out" };
}
