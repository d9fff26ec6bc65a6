/** A recipe without its wearer: what a page carries that asks a reader for her own measures. */
import { type Block, emptyBlock, type Node } from "../node.ts";

/** A recipe's own choices, and the measures that are asked for. */
export interface Pattern {
  readonly written: Block;
  /** Paths, in the order of asking; all of them are needed. */
  readonly asks: readonly string[];
}

/** What belongs to one wearer, or to one garment that was made for her. */
const HERS = [
  "wearer.name",
  "wearer.waist",
  "wearer.waist-to-floor",
  "wearer.waist-height",
  "fullness.trial",
  "attach.made",
  "attach.other-waists",
  "attach.band.hook-sets",
];
/** Where lengths are estimated over a hoop, the hoop is hers too. */
const HER_HOOP = ["wearer.hoop.round", "wearer.hoop.height"];
/** What is about all sizes, and sheets for a client or a class, which no reader makes. */
const APART = ["sizes", "publish", "commission", "class"];

/** @param written the front matter as it is written, whole */
export function patternOf(written: Block): Pattern {
  const wearer = blockAt(written, "wearer");
  const floor = blockAt(wearer, "waist-to-floor");
  const isEstimated = wearer["waist-height"] !== undefined;
  const sides = floor.left === undefined ? ["side"] : ["left", "right"];
  const lengths = ["front", ...sides, "back"].map((place) => `wearer.waist-to-floor.${place}`);
  const asks = ["wearer.waist", ...(isEstimated ? ["wearer.waist-height", ...HER_HOOP] : lengths)];
  const out = [...HERS, ...APART, ...(isEstimated ? HER_HOOP : [])];
  return { written: out.reduce((block, path) => without(block, path.split(".")), written), asks };
}

const isBlock = (node: Node | undefined): node is Block => typeof node === "object" && !Array.isArray(node);

function blockAt(block: Block, key: string): Block {
  const node = block[key];
  return isBlock(node) ? node : emptyBlock();
}

/** A block without what stands at a path; a block that is left empty goes too. */
function without(block: Block, [step, ...rest]: readonly string[]): Block {
  const inner = step === undefined ? undefined : block[step];
  if (step === undefined || inner === undefined) return block;
  const out = Object.assign(emptyBlock(), block);
  const left = rest.length > 0 && isBlock(inner) ? without(inner, rest) : undefined;
  if (rest.length > 0 && !isBlock(inner)) return block;
  if (left && Object.keys(left).length > 0) out[step] = left;
  else delete out[step];
  return out;
}
