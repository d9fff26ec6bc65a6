/** Findings -> recipe.md: every line says what was measured, what follows from it, and what is assumed. Builds at once. */
import { decimal, ends, printExactly, vulgar } from "../../quantity/print.ts";
import { add, less, type Quantity } from "../../quantity/quantity.ts";
import { roundTo } from "../../quantity/tape.ts";
import type { Original } from "../../recipe/original/schema.ts";
import type { Carried } from "./carry.ts";
import { thicknessFor } from "./derive.ts";
import type { Findings } from "./findings.ts";

/** A sheet that leaves a key out has the usual value: the two cannot be told apart here. */
const USUAL = "seen, or assumed as usual";

const hersOr = ({ keep, ease }: Carried): string => {
  if (!keep) return "assumed: the seam itself was measured";
  return ease.value.equals(0) ? "hers, or assumed none" : "hers";
};

/** Where the remarks begin. */
const COLUMN = 50;

/** A key's line with where its value comes from; a block has no value. */
interface Line {
  readonly depth: number;
  readonly text: string;
  readonly remark?: string;
}

/** What stays, in words. */
export const KEPT = {
  pitch: "the same bites and pleats an inch",
  breadths: "the same breadths",
  ratio: "the same fullness, as nearly as half breadths come to it",
} as const;

/** A length exactly: a decimal of a centimetre where it ends, else a vulgar fraction. */
function written(q: Quantity, show: "in" | "cm"): string {
  if (show === "in" || ends(q.value.div(10), 4)) return printExactly(q, show);
  return `${vulgar(q.value.div(10))} cm`;
}

/** A thickness, as it is measured. */
const inMillimetres = (q: Quantity): string =>
  `${ends(q.value, 4) ? decimal(q.value, 4) : vulgar(q.value)} mm`;

/** In double quotes, so that YAML reads the text as it is. */
const quoted = (text: string): string => JSON.stringify(text);

/** The recipe's text. @param carried for the original's own body, or for another */
export function recipeText(original: Original, found: Findings, carried: Carried): string {
  const { show } = original;
  const lines: Line[] = [];
  const put = (depth: number, key: string, value: string, remark: string): void =>
    void lines.push({ depth, text: `${key}: ${value}`, remark });
  const block = (depth: number, key: string): void => void lines.push({ depth, text: `${key}:` });
  const length = (q: Quantity): string => written(q, show);
  const body = carried.keep ? "hers" : "measured";

  put(0, "recipe", "1", "the format of this file");
  put(0, "title", quoted(titleOf(original, carried)), "from the sheet");
  put(0, "garment", original.garment, "from the sheet");
  put(0, "year", String(original.year), "as the original is dated");
  put(0, "show", show, "from the sheet");
  put(0, "tape", length(original.tape), "from the sheet");
  block(0, "wearer");
  if (carried.keep && original.wearer?.name) put(1, "name", quoted(original.wearer.name), "hers");
  put(1, "waist", length(carried.waist), carried.keep ? "hers" : "measured: the waist seam, closed");
  put(1, "ease", length(carried.ease), hersOr(carried));
  block(1, "waist-to-floor");
  const off = original["off-floor"];
  const source = (at: string): string => {
    const finding = found.values.get(`length.${at}`);
    return carried.keep
      ? "hers"
      : finding?.source === "derived"
        ? `by the folds: ${finding.inNumbers}`
        : (finding?.source ?? "");
  };
  const same = carried.lengths.left.value.equals(carried.lengths.right.value);
  for (const at of ["front", ...(same ? (["left"] as const) : (["left", "right"] as const)), "back"] as const)
    put(
      2,
      same && at === "left" ? "side" : at,
      length(add(carried.lengths[at], off)),
      `${source(at)}, and ${length(off)} assumed off the floor`,
    );
  block(0, "cloth");
  if (original.cloth.fibre) put(1, "fibre", original.cloth.fibre, "seen");
  put(1, "sheer", String(original.cloth.sheer), original.cloth.sheer ? "seen" : USUAL);
  put(
    1,
    "width",
    length(found.get("cloth.width")),
    found.values.get("cloth.width")?.source === "measured"
      ? "measured"
      : "derived: what makes the measured round with these seams",
  );
  put(
    1,
    "selvedge",
    length(found.get("cloth.selvedge")),
    original.cloth.selvedge ? "measured" : "assumed: sewn into the seam",
  );
  put(
    1,
    "thickness",
    inMillimetres(thicknessFor(original, found)),
    original.cloth.thickness ? "measured" : thicknessRemark(found),
  );
  block(0, "skirt");
  put(
    1,
    "breadths",
    vulgar(carried.breadths.value),
    carried.keep && carried.keep !== "breadths"
      ? `carried: ${KEPT[carried.keep]}`
      : "measured: counted round the hem",
  );
  put(
    1,
    "seam",
    length(carried.seam),
    carried.keep === "pitch"
      ? "carried: wide enough to keep the bites, on a mark"
      : original.seam && !original.cloth.width
        ? "measured"
        : original.cloth.width
          ? "derived: what makes the measured round"
          : "assumed: the usual one",
  );
  put(1, "off-floor", length(off), "assumed");
  putHem(original, put, block, length);
  if (original.hem.braid) put(1, "braid", "true", "seen");
  if (found.has("fold.least") && deepEnough(found))
    put(1, "turn-down", length(found.get("fold.least")), "measured: the fold where the skirt is longest");
  if (original.edge.placket) put(1, "placket", length(original.edge.placket), "measured");
  block(0, "fullness");
  putFullness(original, found, carried, put, block, length);
  block(0, "attach");
  putEdge(original, put, block, length);
  const notes = [
    `# Made from original.yaml${carried.keep ? `, carried to another body with ${KEPT[carried.keep]}` : ""}. Each line says where it comes from: ${body}, derived, seen, or`,
    "# assumed. What is assumed is yours to change; put in your own cloth, and sew the trial before you trust the pleats.",
  ];
  return ["---", ...notes, ...lines.map(remarked), "---", ""].join("\n");
}

type Put = (depth: number, key: string, value: string, remark: string) => void;
type Block = (depth: number, key: string) => void;
type Print = (q: Quantity) => string;

function titleOf({ title, wearer }: Original, { keep }: Carried): string {
  return keep ? `${title}, carried to ${wearer?.name ?? "another wearer"}` : title;
}

const thicknessRemark = (found: Findings): string =>
  found.has("cloth.thickest")
    ? `assumed: yours; the original's pleats prove at most ${found.shown("cloth.thickest")}`
    : "assumed: measure yours";

function putHem({ hem }: Original, put: Put, block: Block, length: Print): void {
  if (!hem.kind && !hem.depth) return;
  block(1, "hem");
  if (hem.kind) put(2, "kind", hem.kind, "seen");
  if (hem.depth) put(2, "depth", length(hem.depth), "measured");
  if (hem.kind !== "turned") put(2, "cloth", hem.facing, "seen, or assumed its own");
}

/** A fold shallower than its rows is refused by a recipe. */
function deepEnough(found: Findings): boolean {
  if (!found.has("pleats.all")) return true;
  const last = found.has("rows.last")
    ? "rows.last"
    : found.has("rows.count")
      ? "rows.count * 1/4 * (1 in)"
      : "1/2 * (1 in)";
  return !less(found.get("fold.least"), found.evaluate(`${last} + 1/4 * (1 in)`));
}

function putFullness(
  original: Original,
  found: Findings,
  { part, perInch, keep }: Carried,
  put: Put,
  block: Block,
  length: Print,
): void {
  const { set, face } = original;
  if (set === "pleated") {
    block(1, "zones");
    put(
      2,
      "- set",
      "knife",
      face ? "seen pleated: knife pleats of the measured face" : "seen pleated; the kind is assumed",
    );
    if (face) put(3, "face", length(face), "measured");
    return;
  }
  put(1, "method", set, set === "gauged" ? USUAL : "seen");
  if (set === "flat-front-gauged" && part)
    put(1, "flat-front", length(part), keep ? "carried: grown as the waist is" : "measured");
  if (set === "pleated-gauged-back" && part)
    put(1, "gauged-back", length(part), keep ? "carried: grown as the waist is" : "measured");
  if (original.rows) put(1, "rows", vulgar(original.rows.value), "measured");
  if (original["first-row"]) put(1, "first-row", length(original["first-row"]), "measured");
  if (original["between-rows"]) put(1, "between-rows", length(original["between-rows"]), "measured");
  if (!perInch) return;
  put(
    1,
    "pleats-per-inch",
    vulgar(perInch.value),
    keep
      ? `carried: ${KEPT[keep]}`
      : original["pleats-in-all"]
        ? "measured: the pleats all round over the gauged waist"
        : "derived: the whole pleats that the counts come to",
  );
  put(1, "pleats-as-wished", "true", "so that the count is kept");
  const pitch = found.get("pleat.pitch").value;
  const inch = found.evaluate("1 in").value;
  // A tenth more and less, for the answers of another body.
  if (pitch.compare(inch.mul("0.6")) < 0)
    put(1, "finest-bite", length(original.tape), "so that no bite as fine as the original's is refused");
  if (pitch.compare(inch.mul("1.7")) > 0)
    put(
      1,
      "deepest-pitch",
      length(roundTo(found.evaluate("2 * pleat.pitch"), original.tape, "up")),
      "the original's pleats are deeper than the usual most",
    );
}

function putEdge({ edge }: Original, put: Put, block: Block, length: Print): void {
  put(1, "to", edge.to, edge.to === "waistband" ? USUAL : "seen");
  if (edge.depth || edge.lap) {
    block(1, "band");
    if (edge.depth) put(2, "depth", length(edge.depth), "measured");
    if (edge.lap && edge.to !== "bodice-edge") put(2, "lap", length(edge.lap), "measured");
  }
  if (edge.cord) {
    block(1, "piping");
    put(2, "cord", length(edge.cord), "measured");
  }
  block(1, "opening");
  put(2, "at", edge.opening, edge.opening === "centre-back" ? USUAL : "seen");
  if (edge["from-centre"]) put(2, "from-centre", length(edge["from-centre"]), "measured");
}

/** The line with its remark in a column. */
function remarked({ depth, text, remark }: Line): string {
  const line = `${"  ".repeat(depth)}${text}`;
  return remark === undefined ? line : `${line.padEnd(COLUMN)}${line.length >= COLUMN ? " " : ""}# ${remark}`;
}
