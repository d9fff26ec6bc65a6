/** What the text says at a measure, also while it is wrong. */
import { frontMatter } from "../../recipe/front-matter.ts";
import { KEYS } from "../../recipe/keys.ts";
import { Source } from "../../recipe/lines.ts";
import type { Block, Node } from "../../recipe/node.ts";
import { readTree } from "../../recipe/tree.ts";

export class FieldText {
  private front = "";
  private root: Block | undefined;

  /** The measure as it is written; "" where it is not. `root` are the measures, where they have been read already. */
  of(text: string, path: string, root = this.read(text)): string {
    const node = nodeAt(root, path);
    return typeof node === "string" ? node : "";
  }

  isThere(text: string, path: string): boolean {
    return nodeAt(this.read(text), path) !== undefined;
  }

  /** May its key be left out? */
  mayGo(path: string): boolean {
    const key = KEYS.find((one) => one.path === path.replace(/\.\d+(?=\.|$)/g, ".*"));
    return key?.required !== true;
  }

  private read(text: string): Block | undefined {
    const source = new Source("recipe.md", text);
    const split = frontMatter(source);
    const front = "code" in split ? "" : split.text;
    if (front !== this.front) {
      this.front = front;
      this.root = "code" in split ? undefined : readTree(source, split).root;
    }
    return this.root;
  }
}

function nodeAt(root: Block | undefined, path: string): Node | undefined {
  let node: Node | undefined = root;
  for (const step of path.split(".")) {
    if (typeof node !== "object") return undefined;
    node = (node as Readonly<Record<string, Node>>)[step];
  }
  return node;
}
