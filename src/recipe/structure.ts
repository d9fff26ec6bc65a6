/** The shape of the front matter: unknown, missing and misplaced keys, and lists or blocks where others must stand. */
import { nearest } from "../quantity/nearest.ts";
import { homesOf, KEYS } from "./keys.ts";
import type { Message, Place } from "./message.ts";
import { type AnySchema, isOpen, isRequired, type Shape, shapeOf } from "./meta.ts";
import { type Block, emptyBlock, type Node, within } from "./node.ts";
import { OTHERWISE } from "./otherwise.ts";
import { messageOf, type Problem, quoted } from "./problem.ts";
import { FRONT_MATTER } from "./schema/recipe.ts";
import type { Places } from "./tree-type.ts";

export interface Structure {
  /** The tree without what does not belong: ready for defaults and for the schema. */
  readonly root: Block;
  readonly messages: readonly Message[];
  /** Keys that a mistyped one probably meant: not missing, though not there. */
  readonly meant: ReadonlySet<string>;
}

/** Holds a tree against the schema. `start` is the place of what is missing from the top; `isRecipe`: is it, or a part of it, a recipe? */
export function structure(
  root: Block,
  places: ReadonlyMap<string, Places>,
  start: Place,
  schema: AnySchema = FRONT_MATTER,
  isRecipe = true,
): Structure {
  const walk = new Walk(places, start, isRecipe);
  return { root: walk.block(root, shapeOf(schema), ""), messages: walk.messages, meant: walk.meant };
}

/** A path as a maker counts: `sizes.0.skirt` is skirt of entry 1 of sizes. */
function inWords(path: string): string {
  const steps = path.split(".");
  const at = steps.findLastIndex((step) => /^\d+$/.test(step));
  if (at < 0) return path;
  const entry = `entry ${Number(steps[at]) + 1} of ${inWords(steps.slice(0, at).join("."))}`;
  return at === steps.length - 1 ? entry : `${steps.slice(at + 1).join(".")} of ${entry}`;
}

const IS = { block: "a block of keys", list: "a list", field: "one piece of text" } as const;

class Walk {
  readonly messages: Message[] = [];
  readonly meant = new Set<string>();
  private readonly places: ReadonlyMap<string, Places>;
  private readonly start: Place;
  private readonly isRecipe: boolean;

  constructor(places: ReadonlyMap<string, Places>, start: Place, isRecipe: boolean) {
    this.places = places;
    this.start = start;
    this.isRecipe = isRecipe;
  }

  block(block: Block, shape: Shape, path: string): Block {
    if (shape.is !== "block") throw new Error(`the schema has no block at "${path}"`);
    const kept = emptyBlock();
    const open = Object.entries(shape.entries).filter(([, entry]) => isOpen(shapeOf(entry)));
    const entries = new Map(open);
    for (const [key, node] of Object.entries(block)) {
      const entry = entries.get(key);
      if (!entry) this.unknown(key, path, [...entries.keys()], Object.hasOwn(shape.entries, key));
      else if (shape.meta.own && !shape.meta.own.includes(key)) kept[key] = node;
      else {
        const fit = this.node(node, shapeOf(entry), within(path, key));
        if (fit !== undefined) kept[key] = fit;
      }
    }
    for (const [key, entry] of entries) {
      const inner = within(path, key);
      if (isRequired(shapeOf(entry)) && !this.places.has(inner) && !this.meant.has(inner)) {
        this.missing(key, shapeOf(entry), path);
      }
    }
    return kept;
  }

  /** A node that fits its shape, cleaned; undefined, with a message said, when it is of another kind. */
  private node(node: Node, shape: Shape, path: string): Node | undefined {
    const kind = typeof node === "string" ? "field" : Array.isArray(node) ? "list" : "block";
    if (kind !== shape.is) {
      this.say(path, wrongKind(node, kind, shape, path));
      return undefined;
    }
    if (shape.is === "block") return this.block(node as Block, shape, path);
    if (shape.is === "field") return node;
    return this.list(node as readonly Node[], shape, path);
  }

  private list(items: readonly Node[], shape: Shape & { is: "list" }, path: string): Node | undefined {
    const { most } = shape.meta;
    if (items.length === 0 || (most !== undefined && items.length > most)) {
      this.say(path, {
        code: items.length === 0 ? "empty" : "too-many",
        text: items.length === 0 ? "the list is empty" : `the list has ${items.length} entries`,
        expected: `1 to ${most} entries`,
      });
      return undefined;
    }
    const item = shapeOf(shape.item);
    return items.map((entry, i) => this.node(entry, item, within(path, i)) ?? emptyBlock());
  }

  private unknown(key: string, path: string, known: readonly string[], fixed: boolean): void {
    const inner = within(path, key);
    const near = fixed ? undefined : nearest(key, known);
    if (near !== undefined) this.meant.add(within(path, near));
    const block = path === "" ? (this.isRecipe ? "the front matter" : "this file") : inWords(path);
    const place = this.places.get(inner)?.key ?? this.start;
    const own = fixed ? "take it out: this is a measure of the program's own" : undefined;
    const ofRecipe = path.startsWith("sizes.") ? homeInSize(key) : homeOf(key, path);
    const home = this.isRecipe ? ofRecipe : undefined;
    const remark = this.isRecipe ? "put the remark in the text below the front matter" : "write it as a note";
    const other = this.isRecipe ? OTHERWISE.get(inner) : undefined;
    const hint = other ?? (near === undefined ? (own ?? home) : `did you mean ${near}?`);
    this.messages.push(
      messageOf(
        {
          code: "unknown-key",
          text: `there is no key ${quoted(key)} in ${block}`,
          ...(near === undefined ? { expected: `one of ${known.join(", ")}` } : {}),
          hint: hint ?? `take it out, or ${remark}`,
        },
        inner,
        place,
      ),
    );
  }

  private missing(key: string, shape: Shape, path: string): void {
    const place = this.places.get(path)?.key ?? this.start;
    const like = `${key}: ${mustHold(shape)}`;
    this.messages.push(
      messageOf(
        {
          code: "missing",
          text: `${inWords(within(path, key))} is not given`,
          expected: shape.meta.about,
          hint: `write ${like}${path === "" ? "" : `, inside ${inWords(path)}`}`,
        },
        within(path, key),
        place,
      ),
    );
  }

  private say(path: string, problem: Problem): void {
    this.messages.push(messageOf(problem, path, this.places.get(path)?.value ?? this.start));
  }
}

/** What a missing key is written like: of a block the keys that must be given in it. */
function mustHold(shape: Shape): string {
  if (shape.is === "field") return shape.meta.example;
  const entries = shape.is === "block" ? Object.entries(shape.entries) : [];
  const given = entries.flatMap(([key, entry]) => {
    const inner = shapeOf(entry);
    return inner.is === "field" && isRequired(inner) ? [`${key}: ${inner.meta.example}`] : [];
  });
  return given.length > 0 ? `{${given.join(", ")}}` : "and its keys";
}

function homeOf(key: string, path: string): string | undefined {
  if (KEYS.some((known) => known.path === key && known.path.includes("."))) {
    const step = key.lastIndexOf(".");
    return `write ${key.slice(step + 1)} in the block ${key.slice(0, step)}`;
  }
  const homes = homesOf(key, path).slice(0, 2);
  if (homes.length === 0) return undefined;
  return `${key} is a key of ${homes.map((home) => home || "the top of the front matter").join(" and of ")}: write it there`;
}

/** Where in a size a key of the recipe is written. */
function homeInSize(key: string): string | undefined {
  if (key === "wearer") return "write the wearer's measures of a size without their block, as waist: 29 in";
  const home = homesOf(key, "").find((path) => path !== "" && path !== "wearer");
  // The wearer's measures stand in a size without their block.
  return home
    ? `write it in its block, as ${home.replace(/^wearer\./, "")}: {${key}: …}, inside this size`
    : undefined;
}

function wrongKind(node: Node, kind: Shape["is"], shape: Shape, path: string): Problem {
  if (node === "") {
    return { code: "empty", text: `nothing is written under ${inWords(path)}`, expected: wanted(shape) };
  }
  const text = `${inWords(path)} is ${IS[kind]}`;
  const like = shape.is === "field" ? undefined : exampleOf(shape);
  if (like === undefined) return { code: "wrong-kind", text, expected: wanted(shape) };
  const key = path.slice(path.lastIndexOf(".") + 1);
  return {
    code: "wrong-kind",
    text,
    expected: wanted(shape),
    hint: `write it like ${/^\d+$/.test(key) ? "-" : `${key}:`} ${like}`,
  };
}

/** A block with two of its keys, those that must be there first, or a list with one such entry; undefined where it holds only blocks. */
function exampleOf(shape: Shape): string | undefined {
  if (shape.is === "field") return shape.meta.example;
  if (shape.is === "list") {
    const item = exampleOf(shapeOf(shape.item));
    return item === undefined ? undefined : `[${item}]`;
  }
  const keys = Object.entries(shape.entries).flatMap(([key, entry]) => {
    const inner = shapeOf(entry);
    return inner.is === "field" && isOpen(inner) ? [{ key, inner }] : [];
  });
  const first = [
    ...keys.filter(({ inner }) => isRequired(inner)),
    ...keys.filter(({ inner }) => !isRequired(inner)),
  ].slice(0, 2);
  if (first.length === 0) return undefined;
  return `{${first.map(({ key, inner }) => `${key}: ${inner.meta.example}`).join(", ")}}`;
}

function wanted(shape: Shape): string {
  if (shape.is === "field") return `one value, such as ${shape.meta.example}`;
  if (shape.is === "list") return "a list: a line with - for each entry, or entries between [ and ]";
  const keys = Object.entries(shape.entries).filter(([, entry]) => isOpen(shapeOf(entry)));
  return `a block of keys (${keys.map(([key]) => key).join(", ")}), indented below it or between { and }`;
}
