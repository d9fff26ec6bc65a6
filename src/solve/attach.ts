/**
 * What the skirt is set to: a waistband, the piped edge of a bodice, or that edge and a part band from centre front to
 * the opening. Cut sizes, piping, hooks (trade: setting, attaching, closing).
 */
import { printOnTape } from "../quantity/print.ts";
import { isZero, min, plain, sub } from "../quantity/quantity.ts";
import type { Work } from "./context.ts";
import type { Wanted } from "./layout.ts";
import { NEAR, type Opening } from "./opening.ts";
import { pipingPieces, solvePiping } from "./piping.ts";

/** Hooks on the bodice edge that closes over a part band: at the corner above the opening, and at centre front. */
const EDGE_HOOKS = 2n;

/**
 * Sets band, piping and hooks. Band and strip are cut for the waist as planned: once the edge is made they are cut no
 * more, and the made length must not change the cloth.
 */
export function solveAttach(work: Work, opening: Opening): void {
  const { recipe, sheet } = work;
  const { to, piping } = recipe.attach;
  const seam = sheet.get("waist.seam");
  sheet.choose(
    "opening.fromFront",
    min(opening.waist, sub(seam, opening.waist)),
    opening.under
      ? "the place of the fold that the slit goes under"
      : opening.kind === "seam"
        ? "the place of the seam that the opening goes to"
        : recipe.attach.made
          ? "the place that the slit comes to on the edge as made"
          : "the place as it is asked for",
  );
  const place = recipe.attach.made ? "opening.planned" : "opening.fromFront";
  if (recipe.attach.made) {
    const planned = sheet.get("waist.planned");
    sheet.choose(
      "opening.planned",
      min(opening.planned, sub(planned, opening.planned)),
      "the place of the opening on the waist seam as planned, by which band and piping are cut",
    );
  }
  if (to !== "bodice-edge") {
    const along = to === "part-band" ? place : "waist.planned";
    sheet.set("band.length", `${along} + attach.band.lap + 2 * attach.band.turning`);
    sheet.set(
      "band.depth",
      recipe.attach.band.from === "one-piece"
        ? "2 * attach.band.depth + 2 * attach.band.turning"
        : "attach.band.depth + 2 * attach.band.turning",
    );
  }
  if (to === "bodice-edge") solvePiping(work, sheet.has("edge.length") ? "edge.length" : "waist.planned");
  else if (to === "part-band") solvePiping(work, `waist.planned - ${place}`);
  else if (piping) solvePiping(work, "waist.planned + attach.band.lap");
  solveHooks(work);
  checkEdge(work);
}

/** Hooks at the end of the band, if there is one, and down the placket; those of a bodice itself are not counted. */
function solveHooks({ recipe, sheet }: Work): void {
  const { to, placketHooks } = recipe.attach;
  if (to !== "bodice-edge") {
    sheet.set("hooks.band", "max(2, round(attach.band.depth / attach.hookSpacing) + 1)");
    sheet.set("hooks.bandFirst", "attach.band.depth / (2 * hooks.band)");
  }
  if (placketHooks === "one") sheet.choose("hooks.placket", plain(1n), "one, at the placket's middle");
  else sheet.set("hooks.placket", "round(skirt.placket / attach.hookSpacing) + 1");
  if (sheet.get("hooks.placket").value.compare(1) > 0)
    sheet.set("hooks.placketApart", "skirt.placket / (hooks.placket - 1)");
  else sheet.set("hooks.placketFirst", "skirt.placket / 2");
  sheet.set("hooks.count", to === "bodice-edge" ? "hooks.placket" : "hooks.band + hooks.placket");
  if (to === "part-band")
    sheet.choose("hooks.edge", plain(EDGE_HOOKS), "one at the corner above the opening, one at centre front");
}

/** The band as cut, or nothing on a bodice edge; and the square for the piping. */
export function attachPieces({ recipe, sheet }: Pick<Work, "recipe" | "sheet">): readonly Wanted[] {
  const { to, band } = recipe.attach;
  const pieces: Wanted[] = [];
  if (to !== "bodice-edge") {
    const name = to === "part-band" ? "part band" : "waistband";
    const size = { width: sheet.get("band.depth"), length: sheet.get("band.length") };
    if (band.from === "one-piece") pieces.push({ name, ...size });
    else pieces.push({ name: `${name}, outside`, ...size }, { name: `${name}, inside`, ...size });
  }
  return [...pieces, ...pipingPieces({ sheet })];
}

/** What cannot be, and what is unusual, about an edge and its opening. */
function checkEdge({ recipe, sheet, say }: Work): void {
  const { to, opening } = recipe.attach;
  if (to === "part-band" && isZero(sheet.get("opening.fromFront"))) {
    say({
      code: "no-part-band",
      level: "error",
      path: "attach.opening",
      text: `a seam at centre front stands within ${printOnTape(NEAR, sheet.showing)} of the opening, so that the placket goes to it, and nothing is left for a part band`,
      hint: `put the opening more than ${printOnTape(NEAR, sheet.showing)} from the seam, or write to: bodice-edge with at: centre-front`,
    });
  }
  if (to === "bodice-edge" && opening.at !== "centre-front" && opening.at !== "centre-back") {
    say({
      code: "opening-off-bodice",
      level: "warning",
      path: "attach.opening",
      text: `on a bodice edge the ${recipe.garment} opens where the bodice does, and most bodices open at centre front or centre back`,
      hint: "if yours opens at centre front, take a part band: to: part-band, with an opening at front-left or front-right",
    });
  }
  if (to === "bodice-edge" && recipe.places.has("attach.band")) {
    say({
      code: "no-band",
      level: "note",
      path: "attach.band",
      text: "a bodice edge has no band: of band only the depth is used, for the tape of the fittings, and the turning, where the piping gives none",
    });
  }
}
