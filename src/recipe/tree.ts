/** The front matter as a plain tree of texts, lists and blocks, with the place of every key and value. */
import { isMap, isPair, isScalar, parseDocument, type Node as YamlNode } from "yaml";
import type { FrontMatter } from "./front-matter.ts";
import { DEEPEST_YAML, MOST_LISTED, MOST_NODES } from "./limits.ts";
import type { Source } from "./lines.ts";
import type { Message, Place } from "./message.ts";
import { type Block, emptyBlock, type Node, within } from "./node.ts";
import { messageOf, type Problem, quoted } from "./problem.ts";
import { readKey, refusalOf } from "./refusals.ts";
import { offsetsIn } from "./scalar.ts";
import type { Places, Tree } from "./tree-type.ts";
import { yamlMessages } from "./yaml-errors.ts";

/** Reads the YAML. Every fault is a message; what cannot be used is left out of the tree but keeps its place. */
export function readTree(source: Source, front: FrontMatter, what = "the front matter"): Tree {
  const deep = tooManyOpen(front.text);
  if (deep !== undefined) {
    const place = source.place(front.offset + deep, front.offset + deep + 1);
    const message = messageOf(nestsTooDeep(what), "", place);
    return { root: undefined, places: new Map(), messages: [message], brokenFrom: place.line };
  }
  try {
    return new Reader(source, front, { whole: "block", most: MOST_NODES, what }).read() as Tree;
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const place = source.place(front.offset, front.offset + 1);
    const message = messageOf(nestsTooDeep(what), "", place);
    return { root: undefined, places: new Map(), messages: [message], brokenFrom: place.line };
  }
}

/** A file that is one block of keys, with no fences round it, read as front matter is. */
export function readFileTree(source: Source): Tree {
  const offset = source.text.startsWith("\ufeff") ? 1 : 0;
  return readTree(
    source,
    { text: source.text.slice(offset), offset, body: { text: "", line: 1 } },
    "this file",
  );
}

/** A file that is one YAML list, as `readTree` reads front matter: its entries, with the place of everything under `0.key`. */
export function readListTree(source: Source): {
  readonly items: readonly Node[];
  readonly places: ReadonlyMap<string, Places>;
  readonly messages: readonly Message[];
} {
  const offset = source.text.startsWith("\ufeff") ? 1 : 0;
  const front = { text: source.text.slice(offset), offset, body: { text: "", line: 1 } };
  const deep = tooManyOpen(front.text);
  if (deep !== undefined) {
    const place = source.place(offset + deep, offset + deep + 1);
    return { items: [], places: new Map(), messages: [messageOf(nestsTooDeep("this file"), "", place)] };
  }
  const reader = new Reader(source, front, { whole: "list", most: MOST_LISTED, what: "this file" });
  try {
    const { root, places, messages } = reader.read();
    return { items: (root as readonly Node[] | undefined) ?? [], places, messages };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const message = messageOf(nestsTooDeep("this file"), "", source.place(0, 1));
    return { items: [], places: new Map(), messages: [message] };
  }
}

const nestsTooDeep = (what: string): Problem => ({
  code: "too-deep",
  text: `${what} nests too deeply to be read`,
  expected: `at most ${DEEPEST_YAML} levels`,
});

/** Brackets open at once, those in texts and remarks counted too, for which the YAML parser would take too long. */
const MOST_OPEN = 100;

/** Where more brackets are open than are read; undefined where there are fewer. */
function tooManyOpen(text: string): number | undefined {
  let open = 0;
  for (const { 0: bracket, index } of text.matchAll(/[[\]{}]/g)) {
    open = bracket === "[" || bracket === "{" ? open + 1 : Math.max(0, open - 1);
    if (open > MOST_OPEN) return index;
  }
  return undefined;
}

/** What a file is as a whole, and how many keys and values it may hold. */
interface Bounds {
  readonly whole: "block" | "list";
  readonly most: number;
  /** What it is called in messages. */
  readonly what: string;
}

class Reader {
  private readonly source: Source;
  private readonly front: FrontMatter;
  private readonly bounds: Bounds;
  private readonly places = new Map<string, Places>();
  private readonly messages: Message[] = [];
  private nodes = 0;

  constructor(source: Source, front: FrontMatter, bounds: Bounds) {
    this.source = source;
    this.front = front;
    this.bounds = bounds;
  }

  read(): Omit<Tree, "root"> & { readonly root: Node | undefined } {
    const parsed = parseDocument(this.front.text, {
      schema: "failsafe",
      uniqueKeys: false,
      prettyErrors: false,
      // Only so that a second document is told; nothing is printed.
      logLevel: "error",
      merge: false,
    });
    const faults = yamlMessages(parsed, this.source, this.front);
    this.messages.push(...faults);
    const root = this.root(parsed.contents);
    const tooMany = this.nodes > this.bounds.most;
    if (tooMany) {
      this.say("", this.span(0, 1), {
        code: "too-many",
        text: `${this.what} has more than ${this.bounds.most} keys and values`,
        hint: this.isList ? "begin another file" : "keep measures in it and put prose below it",
      });
    }
    const lines = faults.map((fault) => fault.place?.line ?? 1);
    return {
      root: tooMany ? undefined : root,
      places: this.places,
      messages: this.messages,
      brokenFrom: lines.length > 0 ? Math.min(...lines) : undefined,
    };
  }

  private get isList(): boolean {
    return this.bounds.whole === "list";
  }

  private get what(): string {
    return this.bounds.what;
  }

  private root(contents: unknown): Node | undefined {
    if (!contents || (isScalar(contents) && contents.value === "")) {
      if (this.messages.length === 0 && !this.isList) {
        this.say("", this.span(0, 1), {
          code: "empty-front-matter",
          text: `there is nothing in ${this.what}`,
          hint: `start with ${this.what === "the front matter" ? "recipe: 1" : "original: 1"}, title: and the measures`,
        });
      }
      return undefined;
    }
    const node = this.node(contents as YamlNode, "", 1);
    if (node === undefined) return undefined;
    const kind =
      typeof node === "string" ? "one piece of text" : Array.isArray(node) ? "a list" : "one block of keys";
    if (kind === (this.isList ? "a list" : "one block of keys")) return node;
    this.say("", this.spanOf(contents as YamlNode), {
      code: "wrong-kind",
      text: `${this.what} is ${kind}`,
      expected: this.isList ? "a list, each entry after a hyphen" : "keys with their values, as in recipe: 1",
    });
    return undefined;
  }

  /** A node's plain form; undefined, with a message said, when it cannot be used. */
  private node(node: YamlNode | null | undefined, path: string, depth: number): Node | undefined {
    this.nodes += 1;
    if (this.nodes > this.bounds.most) return undefined;
    if (!node) return "";
    if (this.refused(node, path)) return undefined;
    if (isScalar(node)) return typeof node.value === "string" ? node.value : "";
    if (depth > DEEPEST_YAML) {
      this.say(path, this.spanOf(node), {
        code: "too-deep",
        text: "blocks and lists nest too deeply here",
        expected: `at most ${DEEPEST_YAML} levels`,
      });
      return undefined;
    }
    if (isMap(node)) return this.block(node.items, path, depth);
    const items = (node as unknown as { items?: readonly unknown[] }).items ?? [];
    return items.map((item, i) => {
      const inner = within(path, i);
      const place = this.spanOf(item as YamlNode | null);
      this.places.set(inner, { key: place, value: place, ...this.inside(item as YamlNode | null) });
      return this.node(item as YamlNode | null, inner, depth + 1) ?? emptyBlock();
    });
  }

  private refused(node: YamlNode, path: string): boolean {
    const found = refusalOf(node);
    if (!found) return false;
    this.say(path, found.mark ? this.before(node, found.mark) : this.spanOf(node), found.problem);
    return true;
  }

  private block(items: readonly unknown[], path: string, depth: number): Block {
    const block = emptyBlock();
    const first = new Map<string, number>();
    for (const item of items) {
      if (!isPair(item)) continue;
      const pair = item as { key: YamlNode | null; value: YamlNode | null };
      const place = this.spanOf(pair.key);
      const key = this.key(pair.key, place, path);
      if (key === undefined) continue;
      const inner = within(path, key);
      const line = first.get(key);
      if (line !== undefined) {
        this.say(inner, place, {
          code: "duplicate-key",
          text: `${quoted(key)} stands here a second time; it was first on line ${line}`,
          hint: "keep one of the two",
        });
        continue;
      }
      first.set(key, place.line);
      const value = pair.value ? this.spanOf(pair.value) : place;
      this.places.set(inner, { key: place, value, ...this.inside(pair.value) });
      const node = this.node(pair.value, inner, depth + 1);
      if (node !== undefined) block[key] = node;
    }
    return block;
  }

  /** A pair's key, or undefined with a message said. */
  private key(node: YamlNode | null, place: Place, path: string): string | undefined {
    this.nodes += 1;
    if (node && this.refused(node, path)) return undefined;
    const read = readKey(node);
    if (typeof read === "string") return read;
    this.say(path, read.code === "no-key" ? this.colon(node, place) : place, read);
    return undefined;
  }

  /** The place of the colon that has no key before it. */
  private colon(node: YamlNode | null, otherwise: Place): Place {
    const start = node?.range?.[0];
    if (start === undefined) return otherwise;
    const gap = this.front.text.slice(start).search(/\S/);
    return gap < 0 ? otherwise : this.span(start + gap, start + gap + 1);
  }

  private inside(node: YamlNode | null): { from?: (at: number) => Place } {
    if (!isScalar(node) || !node.range || typeof node.value !== "string") return {};
    const [start, end] = node.range;
    const offsets = offsetsIn(this.front.text.slice(start, end), node.value);
    if (!offsets) return {};
    const last = offsets.at(-1) ?? 0;
    return {
      from: (at) =>
        this.span(start + (offsets[Math.max(0, Math.min(at, offsets.length - 1))] ?? 0), start + last),
    };
  }

  private spanOf(node: YamlNode | null): Place {
    const [start, end] = node?.range ?? [0, 1];
    return this.span(start, end);
  }

  /** The place of a mark that stands before a value, such as its anchor. */
  private before(node: YamlNode, mark: string): Place {
    const [start] = node.range ?? [0];
    const { text } = this.front;
    let at = text.lastIndexOf(mark, start);
    while (mark === "!" && text[at - 1] === "!") at -= 1;
    return at < 0 ? this.spanOf(node) : this.span(at, start - 1);
  }

  private span(start: number, end: number): Place {
    return this.source.place(this.front.offset + start, this.front.offset + end);
  }

  private say(path: string, place: Place, problem: Problem): void {
    this.messages.push(messageOf(problem, path, place));
  }
}
