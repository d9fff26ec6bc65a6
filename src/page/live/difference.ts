/** What differs between two booklets' nodes, found without asking the document anything: that is slow, and most is the same. */
import type { ElementContent } from "hast";
import { attributeText, type Node } from "./dom.ts";

/** What becomes of one node: another text, something else in its place, or the same element with changes. */
export type Change = { readonly text: string } | { readonly anew: ElementContent } | ElementChange;

export interface ElementChange {
  /** Names of properties with the text they get; undefined where they go. */
  readonly attributes: readonly (readonly [property: string, text: string | undefined])[];
  /** Undefined where all children are the same. */
  readonly children: Children | undefined;
}

/** A list of children and what becomes of it: some stay in their order, those between go, others come in their place. */
export interface Children {
  readonly before: readonly ElementContent[];
  readonly after: readonly ElementContent[];
  /** So many from the beginning and from the end stay, changed or not. */
  readonly head: number;
  readonly tail: number;
  /** Of those that stay, the ones that change, by their place before. */
  readonly changed: readonly (readonly [place: number, change: Change])[];
}

/** Undefined where the two are the same. */
export function difference(before: Node, after: Node): ElementChange | undefined {
  if (before === after) return undefined;
  const attributes = attributesOf(before, after);
  const children = childrenOf(before.children, after.children);
  return attributes === NONE && children === undefined ? undefined : { attributes, children };
}

const NONE: ElementChange["attributes"] = [];

function attributesOf(before: Node, after: Node): ElementChange["attributes"] {
  let found: [string, string | undefined][] | undefined;
  const note = (property: string, text: string | undefined): void => {
    found ??= [];
    found.push([property, text]);
  };
  for (const property in before.properties) {
    if (attributeText(before.properties[property]) === undefined) continue;
    if (attributeText(after.properties[property]) === undefined) note(property, undefined);
  }
  for (const property in after.properties) {
    const [was, is] = [before.properties[property], after.properties[property]];
    if (was === is) continue;
    const text = attributeText(is);
    if (text !== undefined && text !== attributeText(was)) note(property, text);
  }
  return found ?? NONE;
}

/** Children side by side while their kinds agree, from the beginning and from the end. */
function childrenOf(
  before: readonly ElementContent[],
  after: readonly ElementContent[],
): Children | undefined {
  let changed: [number, Change][] | undefined;
  const pair = (place: number, to: number): void => {
    const change = changeOf(before[place] as ElementContent, after[to] as ElementContent);
    if (!change) return;
    changed ??= [];
    changed.push([place, change]);
  };
  let head = 0;
  const least = Math.min(before.length, after.length);
  while (head < least && alike(before[head], after[head])) {
    pair(head, head);
    head += 1;
  }
  // What is alike at the end is kept too: an item that goes from the middle of a list takes no other with it.
  let tail = 0;
  while (tail < least - head && alike(before[before.length - 1 - tail], after[after.length - 1 - tail]))
    tail += 1;
  for (let i = tail; i > 0; i -= 1) pair(before.length - i, after.length - i);
  if (!changed && head + tail === before.length && head + tail === after.length) return undefined;
  return { before, after, head, tail, changed: changed ?? [] };
}

function changeOf(before: ElementContent, after: ElementContent): Change | undefined {
  if (before === after) return undefined;
  if (after.type === "text")
    return before.type === "text" && before.value === after.value ? undefined : { text: after.value };
  if (after.type !== "element" || before.type !== "element") return undefined;
  return before.tagName === after.tagName ? difference(before, after) : { anew: after };
}

function alike(a: ElementContent | undefined, b: ElementContent | undefined): boolean {
  if (!a || !b || a.type !== b.type) return false;
  if (a.type !== "element" || b.type !== "element") return true;
  return a.tagName === b.tagName && a.properties.id === b.properties.id;
}
