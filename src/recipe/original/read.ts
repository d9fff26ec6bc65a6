/** Reads original.yaml: the filled-in sheet, with every mistake told at its place, all at once. */
import { fillDefaults } from "../defaults.ts";
import { inFileOrder } from "../from-tree.ts";
import { Source } from "../lines.ts";
import type { Message, Place } from "../message.ts";
import { messageOf, type Problem } from "../problem.ts";
import { structure } from "../structure.ts";
import { readFileTree } from "../tree.ts";
import type { Tree } from "../tree-type.ts";
import { type Partly, readValuesBy } from "../values.ts";
import { ORIGINAL, type Original } from "./schema.ts";

/** The file's name in its folder. */
export const ORIGINAL_FILE = "original.yaml";

export interface ReadOriginal {
  /** Absent when there is an error. */
  readonly original?: Original;
  /** Where a key stands, for what is found later: its value's place, or that of the nearest block above. */
  readonly placeOf: (path: string) => Place;
  readonly messages: readonly Message[];
}

/** Reads the file's text. Never throws. */
export function readOriginal(file: string, text: string): ReadOriginal {
  const source = new Source(file, text);
  const tree = readFileTree(source);
  const start = source.place(0, 1);
  const placeOf = (path: string): Place => placeIn(tree, path, start);
  if (!tree.root) return { placeOf, messages: [...tree.messages] };
  const shaped = structure(tree.root, tree.places, start, ORIGINAL, false);
  const written = (path: string): boolean => tree.places.has(path) || shaped.meant.has(path);
  const values = readValuesBy(ORIGINAL, fillDefaults(shaped.root, ORIGINAL, written));
  const messages = [...tree.messages, ...shaped.messages];
  for (const { path, problem } of values.problems) {
    const place =
      (problem.at === undefined ? undefined : tree.places.get(path)?.from?.(problem.at)) ?? placeOf(path);
    messages.push(messageOf(problem, path, place));
  }
  for (const { path, problem } of rules(values.partly, written))
    messages.push(messageOf(problem, path, placeOf(path)));
  messages.sort(inFileOrder);
  if (!values.filled || messages.some(({ level }) => level === "error")) return { placeOf, messages };
  return { original: values.filled, placeOf, messages };
}

function placeIn(tree: Tree, path: string, start: Place): Place {
  for (let at = path; at !== ""; at = at.slice(0, Math.max(0, at.lastIndexOf(".")))) {
    const found = tree.places.get(at);
    if (found) return at === path ? found.value : found.key;
  }
  return start;
}

interface Fault {
  readonly path: string;
  readonly problem: Problem;
}

/** Rules between keys. */
function rules(values: Partly<Original>, written: (path: string) => boolean): Fault[] {
  const faults: Fault[] = [];
  const say = (path: string, problem: Problem): void => void faults.push({ path, problem });
  for (const path of ["lengths", "fold", "wearer.lengths"]) {
    if (!written(path)) continue;
    const has = (key: string): boolean => written(`${path}.${key}`);
    if (has("side") && (has("left") || has("right")))
      say(`${path}.side`, {
        code: "sides-twice",
        text: "side and one of left and right are both given",
        expected: "side for both sides alike, or left and right",
        hint: "keep side, or left and right",
      });
    else if (has("left") !== has("right"))
      say(`${path}.${has("left") ? "left" : "right"}`, {
        code: "one-side",
        text: "one side is given and the other is not",
        expected: "both sides",
        hint: "measure the other side too; if they are alike, write side",
      });
  }
  const gauged = values.set !== undefined && values.set !== "pleated";
  const counts = [
    "pleats.front",
    "pleats.side",
    "pleats.back",
    "pleats-in-all",
    "whips.front",
    "whips.side",
    "whips.back",
  ];
  if (gauged && !counts.some(written))
    say("pleats", {
      code: "no-pleats",
      text: "neither pleats nor whip stitches are counted, and it is gauged",
      expected: "a count at front, side or back, or all round",
      hint: "write pleats: {over: 1 in, front: 9, side: 9, back: 10}",
    });
  for (const [set, key] of [
    ["flat-front-gauged", "flat-front"],
    ["pleated-gauged-back", "gauged-back"],
  ] as const)
    if (values.set === set && !written(key))
      say("set", {
        code: "missing",
        text: `${key} is not given, and it is set ${set}`,
        hint: `write ${key}: 5 in`,
      });
  for (const key of ["flat-front", "gauged-back"] as const) {
    const part = values[key];
    if (part && values.waist && part.value.compare(values.waist.value) >= 0)
      say(key, {
        code: "part-of-waist",
        text: `${key} is not less than the waist seam`,
        expected: "a part of the waist, both halves together",
        hint: "measure both along the skirt's edge",
      });
  }
  const from = written("edge.from-centre");
  const at = values.edge?.opening;
  if (at && /^front/.test(at) !== from)
    say(from ? "edge.from-centre" : "edge.opening", {
      code: from ? "no-effect" : "no-from-centre",
      text: from ? "from-centre does nothing with this opening" : "from-centre is not given",
      hint: from ? "leave it out, or write opening: front-left" : "write from-centre: 5 in, inside edge",
    });
  if (values["hem-round"] && values.waist && values["hem-round"].value.compare(values.waist.value) <= 0)
    say("hem-round", {
      code: "hem-and-waist",
      text: "the hem is not longer than the waist seam",
      hint: "check which is which, and the units",
    });
  return faults;
}
